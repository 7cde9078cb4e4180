import { languages } from '@shearline/jobfile'
import { describe, expect, it } from 'vitest'
import { slipsAgainstEnglish } from '../../../../packages/jobfile/src/words/testing/translations.ts'
import { en } from './en.ts'
import { everyLanguage, firstSpoken, ownNames } from './languages.ts'

/** Every file of words on disk, by path: `./de.ts` exports `de`. */
const files = import.meta.glob<Readonly<Record<string, Readonly<Record<string, string>>>>>(['./??.ts'], {
  eager: true,
})
const tongues = Object.keys(files)
  .map((path) => path.slice(2, 4))
  .filter((one) => one !== 'en')

describe('the translations of the verify page', () => {
  it('are as many as the engine’s, each with words and a name', () => {
    expect(['en', ...tongues].toSorted()).toEqual([...languages].toSorted())
    expect(Object.keys(everyLanguage)).toEqual([...languages])
    expect(Object.keys(ownNames)).toEqual([...languages])
  })

  it.each(tongues)('%s says what the English words say', (language) => {
    const own = files[`./${language}.ts`]?.[language] ?? {}
    expect(slipsAgainstEnglish(language, en, own)).toEqual([])
  })

  it('begin with the first language of the browser that the page speaks', () => {
    expect(firstSpoken(['nl-NL', 'ar-EG', 'de'])).toBe('ar')
    expect(firstSpoken(['de-AT'])).toBe('de')
    expect(firstSpoken(['nl', 'pt-BR'])).toBe('en')
    expect(firstSpoken([])).toBe('en')
  })
})
