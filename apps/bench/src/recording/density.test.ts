import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { Density } from './density.ts'

/** Seconds as recordings tell them, to the microsecond. */
const recorded = fc.integer({ min: -5e9, max: 2e11 }).map((microseconds) => microseconds / 1e6)

describe('the density of a recording', () => {
  it('counts every message in the slice that counting anew with the final width gives', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ seconds: recorded, refused: fc.boolean() }), { minLength: 1, maxLength: 400 }),
        (messages) => {
          const density = new Density()
          for (const { seconds, refused } of messages) density.add(seconds, refused)
          const { first, width, total, refused } = density.counts()
          expect(total.length).toBeLessThanOrEqual(1024)
          const anew = total.map(() => [0, 0])
          for (const message of messages) {
            const slice = anew[Math.floor(message.seconds / width) - first]
            if (slice === undefined) throw new Error('a message fell outside the slices')
            slice[0] = (slice[0] ?? 0) + 1
            if (message.refused) slice[1] = (slice[1] ?? 0) + 1
          }
          expect(total).toEqual(anew.map(([count]) => count))
          expect(refused).toEqual(anew.map(([, count]) => count))
        },
      ),
    )
  })

  it('keeps slices under a thousandth of an hour-long recording', () => {
    const density = new Density()
    for (let second = 0; second < 3600; second++) density.add(second, false)
    const { width, total } = density.counts()
    expect(width).toBe(4)
    expect(total.reduce((sum, count) => sum + count)).toBe(3600)
  })
})
