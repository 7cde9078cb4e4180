import { describe, expect, it } from 'vitest'
import { decimalMark, withMark } from './decimal-mark.ts'

describe('the sign before the decimals', () => {
  it('is the one the language writes (Unicode CLDR, as the runtime holds it)', () => {
    expect(['en-GB', 'de-DE', 'pl', 'fr-FR'].map(decimalMark)).toEqual(['.', ',', ',', ','])
  })

  it('is taken from whichever key was there', () => {
    expect([withMark(',', '.'), withMark('.', ','), withMark('12,6', '.'), withMark('350.50', ',')]).toEqual([
      '.',
      ',',
      '12.6',
      '350,50',
    ])
  })

  it('stays as typed where it cannot be told from a sign between thousands', () => {
    expect([withMark('1.234,50', '.'), withMark('126', ','), withMark('', '.')]).toEqual([
      '1.234,50',
      '126',
      '',
    ])
  })
})
