import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { firstWait, longestWait, waitBefore } from './backoff.ts'

describe('the wait before the next try to send', () => {
  it('doubles from a second and never exceeds a minute', () => {
    expect(waitBefore(0, 1)).toBe(firstWait)
    expect(waitBefore(3, 1)).toBe(8 * firstWait)
    expect(waitBefore(50, 1)).toBe(longestWait)
  })

  it('is spread, so that devices that lost one network do not return in one moment', () => {
    fc.assert(
      fc.property(fc.nat(100), fc.double({ min: 0, max: 1, noNaN: true }), (tries, chance) => {
        const wait = waitBefore(tries, chance)
        expect(wait).toBeGreaterThanOrEqual(waitBefore(tries, 0))
        expect(wait).toBeLessThanOrEqual(waitBefore(tries, 1))
        expect(wait).toBeGreaterThan(0)
      }),
    )
    expect(waitBefore(5, 1) / waitBefore(5, 0)).toBeCloseTo(4, 1)
  })
})
