import type { TimelineEntry } from '@shearline/bus'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { outline, scaleFor } from './geometry.ts'
import { worthKeeping } from './lowest.ts'
import { recordedVolts } from './recording-volts.ts'
import { beganAt, sinceBeginning } from './session.ts'

describe('the lowest reading of a meter', () => {
  it('is on record to a step at any moment, with few facts', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 9000, max: 14000 }), { minLength: 1, maxLength: 400 }),
        (milli) => {
          let kept: number | null = null
          let facts = 0
          let lowest = Number.POSITIVE_INFINITY
          for (const each of milli) {
            const volts = each / 1000
            lowest = Math.min(lowest, volts)
            if (worthKeeping(kept, volts, 12)) {
              kept = volts
              facts += 1
            }
            expect((kept ?? 0) - lowest).toBeLessThan(0.2)
            if (lowest < 12) expect(kept).toBeLessThan(12)
          }
          // 14 V down to 12 V in fifths and on to 9 V in tenths, and one for crossing the floor.
          expect(facts).toBeLessThanOrEqual(1 + 10 + 1 + 30)
        },
      ),
    )
  })
})

describe('the session', () => {
  const readings = [
    { at: '2026-11-25T08:00:00.000Z', volts: 12.5, during: 'rest' },
    { at: '2026-11-25T09:00:00.000Z', volts: 12.1, during: 'session' },
    { at: '2026-11-25T10:06:00.000Z', volts: 12.3, during: 'session' },
  ] as const

  it('begins when it was last opened; readings of an earlier one are left out', () => {
    const began = beganAt([{ at: '2026-11-25T10:00:00.000Z' }], readings)
    expect(sinceBeginning(readings, began)).toEqual([{ minutes: 6, volts: 12.3 }])
  })

  it('begins with its first reading where no opening is on record', () => {
    expect(sinceBeginning(readings, beganAt([], readings)).map(({ minutes }) => minutes)).toEqual([0, 66])
    expect(sinceBeginning(readings, beganAt([], []))).toEqual([])
  })
})

describe('the supply in a recording', () => {
  const entry = (unit: string, from: string, to: string, low: number, high: number): TimelineEntry => ({
    from,
    to,
    channel: '',
    unit,
    what: 'supply-voltage',
    detail: '',
    volts: { low, high },
  })
  const strip = (entries: readonly TimelineEntry[]) => ({
    start: '100.0',
    from: 0,
    to: 600,
    messages: 10,
    density: { counts: [], refused: [], seconds: 1 } as never,
    entries,
    leftOut: 0,
  })

  it('is that of the unit that told it most often, in minutes from the first message', () => {
    const told = recordedVolts(
      strip([
        entry('7E8', '100.0', '220.0', 12.4, 12.6),
        entry('7EA', '150.0', '150.0', 9, 9),
        entry('7E8', '400.0', '400.0', 12.1, 12.1),
      ]),
    )
    expect(told).toEqual({
      readings: [
        { minutes: 0, volts: 12.6 },
        { minutes: 2, volts: 12.4 },
        { minutes: 5, volts: 12.1 },
      ],
      lowestVolts: 12.1,
    })
  })

  it('is nothing where no unit told it', () => {
    expect(recordedVolts(strip([]))).toBeNull()
  })
})

describe('the picture', () => {
  const limits = { floorVolts: 12, floorSource: '', targetVolts: 13.6, targetSource: '', stopVolts: 11.5 }

  it('is not squeezed by a battery run flat, and keeps every point inside', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 16, noNaN: true }),
        fc.double({ min: 0, max: 500, noNaN: true }),
        (volts, minutes) => {
          const scale = scaleFor(limits, [{ low: 0, mid: 11, high: 12.4 }], [{ volts }], 300)
          expect(scale.lowVolts).toBeGreaterThanOrEqual(10.5)
          expect(scale.y(volts)).toBeGreaterThanOrEqual(14)
          expect(scale.y(volts)).toBeLessThanOrEqual(172)
          expect(scale.x(minutes)).toBeLessThanOrEqual(293)
        },
      ),
    )
  })

  it('draws a band there along its high side and back along its low one', () => {
    const scale = scaleFor(limits, [], [], 10)
    const points = outline(scale, [
      { minutes: 0, low: 12, mid: 12.3, high: 12.5 },
      { minutes: 10, low: 11.8, mid: 12.1, high: 12.4 },
    ]).split(' ')
    expect(points).toHaveLength(4)
    expect(points[0]).toBe(`${scale.x(0)},${scale.y(12.5)}`)
    expect(points[3]).toBe(`${scale.x(0)},${scale.y(12)}`)
  })
})
