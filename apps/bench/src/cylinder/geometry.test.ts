import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bladePath, jointOffset, leastLow, lowest, wellCentre } from './geometry.ts'

const low = (done: number, of: number) => jointOffset({ state: 'low', done, of })

describe('the joint of a tumbler', () => {
  it('lies on the line only when the tumbler is in line', () => {
    expect(jointOffset({ state: 'in-line', done: 4, of: 4 })).toBe(0)
    fc.assert(
      fc.property(fc.nat(40), fc.integer({ min: 1, max: 40 }), (done, of) => {
        expect(low(done, of)).toBeGreaterThan(0)
        expect(jointOffset({ state: 'high', done, of })).toBeLessThan(0)
      }),
    )
  })

  it('hangs less the more is done, and never so little that it looks in line', () => {
    expect(low(0, 5)).toBe(lowest)
    expect(low(5, 5)).toBe(leastLow)
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), fc.nat(39), (of, done) => {
        expect(low(done + 1, of)).toBeLessThanOrEqual(low(done, of))
      }),
    )
  })

  it('hangs at its lowest when nothing is asked for yet', () => {
    expect(low(0, 0)).toBe(lowest)
  })
})

describe('the blade under the pins', () => {
  it('carries every pin: its edge passes under each well at the depth of that pin', () => {
    const offsets = [0, 0, 58, 16, -30, 20, 40]
    const path = bladePath(offsets)
    offsets.forEach((offset, index) => {
      expect(path).toContain(`L${wellCentre(index) - 14} ${272 + offset}H${wellCentre(index) + 14}`)
    })
  })
})
