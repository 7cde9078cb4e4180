import { renderToStaticMarkup } from 'react-dom/server'
import { afterEach, expect, it } from 'vitest'
import { activate } from '../../words/index.ts'
import { StrandPicture } from './StrandPicture.tsx'

afterEach(() => activate('en', {}))

/** Where the small ring of "not reported" and the large disc of "reported" stand, pixels from the left. */
function places(language: 'en' | 'ar'): { absent: number; present: number } {
  activate(language, {})
  const drawn = renderToStaticMarkup(<StrandPicture nodes={['absent', 'present']} />)
  const at = (radius: string) => Number(new RegExp(`cx="(\\d+)" cy="\\d+" r="${radius}"`).exec(drawn)?.[1])
  return { absent: at('6'), present: at('8.5') }
}

it.each([
  ['en', 35, 105],
  ['ar', 105, 35],
] as const)(
  'a fault that came with the work comes later in the reading direction of %s',
  (language, first, then) => {
    expect(places(language)).toEqual({ absent: first, present: then })
  },
)
