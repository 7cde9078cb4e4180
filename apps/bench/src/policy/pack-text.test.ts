import { neutralRetention, shippedPacks } from '@shearline/jobfile'
import { BAND_ROWS } from '@shearline/keywork'
import { describe, expect, it } from 'vitest'
import { packTextWords } from '../words/en/pack-texts.ts'
import { packLabelWords, packText } from './pack-text.ts'

/** Every text of ours in the shipped data, wherever it stands. */
function textsOf(value: unknown): readonly string[] {
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([name, part]) =>
    ['name', 'source', 'what'].includes(name) && typeof part === 'string' ? [part] : textsOf(part),
  )
}

const bands = BAND_ROWS.map(({ what, source, basis }) => (basis === 'memory' ? { what } : { what, source }))
const shipped = new Set(
  [...textsOf(shippedPacks), ...textsOf(neutralRetention), ...textsOf(bands)]
    .concat(shippedPacks.map((pack) => pack.region))
    .filter((text) => text !== ''),
)
/** A paragraph's number, and the names of two kinds of modulation, read the same everywhere. */
const citation = /^47 CFR [\d.()a-z]+$|^FSK$/

describe('what comes with the program as data', () => {
  it('has words in every language for each text of ours', () => {
    expect(shipped.size).toBeGreaterThan(40)
    const known = new Set<string>(Object.values(packTextWords))
    expect([...shipped].filter((text) => !known.has(text) && !citation.test(text))).toEqual([])
  })

  it('has no words for what is not in it', () => {
    expect(Object.values(packTextWords).filter((text) => !shipped.has(text))).toEqual([])
  })

  it('leaves what a firm wrote as it wrote it', () => {
    expect(packText('our own rule of 2026')).toBe('our own rule of 2026')
    expect(packLabelWords('Our rules, Coast, 2026-01-01')).toBe('Our rules, Coast, 2026-01-01')
  })

  it('names a shipped pack as the record does', () => {
    expect(packLabelWords('neutral default, any, 2026-11-01')).toBe('neutral default, any, 2026-11-01')
  })
})
