import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { stepped } from './stepped.ts'

describe('a step of a number field', () => {
  it('adds tenths of a volt to what is written, not to what binary fractions make of it', () => {
    expect(stepped(0.1, 0.2, 0, 60)).toBe(0.3)
    expect(stepped(12.45, 0.1, 0, 60)).toBe(12.55)
    expect(stepped(12.5, -0.1, 0, 60)).toBe(12.4)
  })

  it('starts an empty field at zero, or at the least it may hold', () => {
    expect(stepped(null, 1, 0, 99)).toBe(0)
    expect(stepped(null, 1, 1, 99)).toBe(1)
    expect(stepped(null, 5, -100, undefined)).toBe(0)
  })

  it('stays in the range, and a step back undoes a step', () => {
    expect(stepped(99, 1, 0, 99)).toBe(99)
    expect(stepped(0, -1, 0, 99)).toBe(0)
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 5_000 }), (hundredths) => {
        const value = hundredths / 100
        expect(stepped(stepped(value, 0.1, 0, 60), -0.1, 0, 60)).toBe(value)
      }),
    )
  })
})
