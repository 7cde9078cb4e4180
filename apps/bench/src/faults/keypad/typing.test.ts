import { dtcBytes } from '@shearline/bus'
import { describe, expect, it } from 'vitest'
import { keysAfter, wholeCode, withKey } from './typing.ts'

const typed = (keys: string) => [...keys].reduce(withKey, '')

describe('typing a code', () => {
  it('takes only what can follow: SAE J2012 letter, 0 to 3, hex digits', () => {
    expect(typed('P0513')).toBe('P0513')
    expect(typed('XP9B0513')).toBe('P0513')
    expect(keysAfter('P0513').length).toBe(16)
    expect(keysAfter('P051301')).toEqual([])
  })

  it('is whole with five signs or with seven, not between', () => {
    expect([typed('U014'), typed('U0140'), typed('U01408'), typed('U014087')].map(wholeCode)).toEqual([
      null,
      'U0140',
      null,
      'U0140-87',
    ])
  })

  it('makes codes that the bus can hold (ISO 15031-6 two bytes, three with the failure type)', () => {
    expect(dtcBytes(wholeCode('C3FFFAB') ?? '')).toHaveLength(3)
    expect(dtcBytes(wholeCode('B2A0F') ?? '')).toHaveLength(2)
  })
})
