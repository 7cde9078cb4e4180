import { compileMessageOrThrow } from '@lingui/message-utils/compileMessage'
import { describe, expect, it } from 'vitest'
import { en } from './en.ts'
import { t } from './index.ts'

const sources = import.meta.glob<string>(['../**/*.{ts,tsx}', '!../**/*.test.ts', '!./en/**'], {
  query: '?raw',
  import: 'default',
  eager: true,
})
const text = Object.values(sources).join('\n')
const keys = Object.keys(en)

/** Keys written out, as `t('board.new')` or as a word key in a table. */
const written = [...text.matchAll(/'([a-z][a-z-]*(?:\.[A-Za-z-]+)*)'/g)].map((match) => match[1] ?? '')
/** Keys put together, as in t(`colour.${name}`): what stands before and after the part that varies. */
const patterns = [...text.matchAll(/`([a-z-]+(?:\.[A-Za-z-]+)*\.)\$\{[^}`]+\}((?:\.[a-z]+)*)`/g)].map(
  (match) => [match[1] ?? '', match[2] ?? ''] as const,
)

describe('the words of the bench', () => {
  it('finds its own source, so that the other tests look at something', () => {
    expect(Object.keys(sources).length).toBeGreaterThan(60)
    expect(keys.length).toBeGreaterThan(300)
  })

  it('has every key the source asks for by name', () => {
    const asked = [...text.matchAll(/\bt\(\s*'([^']+)'/g)].map((match) => match[1] ?? '')
    expect(asked.length).toBeGreaterThan(200)
    expect(asked.filter((key) => !keys.includes(key))).toEqual([])
  })

  it('has at least one key for every key the source puts together', () => {
    const asked = [...text.matchAll(/\bt\(\s*`([^`$]+)\$\{[^}]+\}([^`$]*)`/g)]
    expect(asked.length).toBeGreaterThan(15)
    const missing = asked.filter(
      ([, start = '', end = '']) => !keys.some((key) => key.startsWith(start) && key.endsWith(end)),
    )
    expect(missing.map((match) => match[0])).toEqual([])
  })

  it('has no key that nothing asks for', () => {
    const used = new Set(written)
    const unused = keys.filter(
      (key) => !used.has(key) && !patterns.some(([start, end]) => key.startsWith(start) && key.endsWith(end)),
    )
    expect(unused).toEqual([])
  })

  it('is ICU message format throughout (messageformat syntax as of CLDR)', () => {
    for (const [key, message] of Object.entries(en)) {
      expect(() => compileMessageOrThrow(message), key).not.toThrow()
    }
  })

  it('says numbers of things in the plural the language wants', () => {
    expect(t('board.day', { open: 1, ready: 0 })).toBe('1 job open')
    expect(t('board.day', { open: 3, ready: 2 })).toBe('3 jobs open, 2 in line')
    expect(t('standing.low', { done: 2, of: 5 })).toBe('low, 2 of 5')
  })
})
