import { describe, expect, it } from 'vitest'
import { minorOf, money, size, volts } from './amounts.ts'

describe('amounts as people read them', () => {
  it('shows a voltage as it was read: one decimal at least, never a rounded second one', () => {
    expect(volts(12)).toBe('12.0\u00a0V')
    expect(volts(12.45)).toBe('12.45\u00a0V')
  })

  it('keeps money in whole minor units of its currency (ISO 4217: JPY has none, BHD three)', () => {
    expect(minorOf(145.1, 'EUR')).toBe(14510)
    expect(minorOf(145, 'JPY')).toBe(145)
    expect(minorOf(1.234, 'BHD')).toBe(1234)
    expect(money(14510, 'EUR')).toBe('€145.10')
  })

  it('says sizes in the units of the day', () => {
    expect(size(1)).toBe('1 byte')
    expect(size(73_800)).toBe('73.8 kB')
    expect(size(2_900_000)).toBe('2.9 MB')
  })
})
