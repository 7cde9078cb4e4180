import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { complaints, leastCauses, leastCover } from './causes.ts'
import { compareScans } from './compare-scans.ts'
import type { Scan, WorkEvent } from './types.ts'

const scan = (phase: Scan['phase'], time: string, reported: Record<string, readonly string[]>): Scan => ({
  phase,
  units: Object.entries(reported).map(([unit, codes]) => ({
    unit,
    time,
    availability: null,
    faults: codes.map((code) => ({ code, raw: '', status: 0x2e })),
  })),
})
const event = (kind: WorkEvent['kind'], unit: string | null, time: string): WorkEvent => ({
  kind,
  unit,
  time,
  evidence: { code: 'noted', params: { words: `${kind} ${unit ?? ''}`.trim() } },
})

/** Tries every subset, smallest first: slow and plain. */
function bruteForce(lists: readonly (readonly number[])[], numbers: number): number {
  const wanted = lists.filter((list) => list.length > 0)
  let least = numbers
  for (let set = 0; set < 1 << numbers; set++) {
    if (wanted.every((list) => list.some((number) => (set >> number) & 1))) {
      let size = 0
      for (let left = set; left > 0; left &= left - 1) size++
      least = Math.min(least, size)
    }
  }
  return least
}

describe('the least causes', () => {
  it('are as few as trying every subset finds, and meet every list', () => {
    fc.assert(
      fc.property(
        fc
          .integer({ min: 1, max: 10 })
          .chain((numbers) =>
            fc.tuple(
              fc.constant(numbers),
              fc.array(fc.uniqueArray(fc.nat({ max: numbers - 1 }), { maxLength: 5 }), { maxLength: 12 }),
            ),
          ),
        ([numbers, lists]) => {
          const { chosen, provenLeast } = leastCover(lists)
          expect(provenLeast).toBe(true)
          expect(lists.every((list) => list.length === 0 || list.some((each) => chosen.includes(each)))).toBe(
            true,
          )
          expect(chosen.length).toBe(bruteForce(lists, numbers))
        },
      ),
      { numRuns: 600 },
    )
  })

  it('are one restart where one restart explains every complaint, though another event fits one of them', () => {
    const scans = [
      scan('before', '10', { brakes: [], engine: [], steering: [] }),
      scan('after', '90', { brakes: ['U0140-87'], engine: ['U0140-87', 'P0513-00'], steering: ['U0140-87'] }),
    ]
    const events = [
      event('muted', 'body', '40'),
      event('reset', 'body', '50'),
      event('key-refused', null, '60'),
    ]
    const comparison = compareScans(scans, { events })
    const { causes, provenLeast } = leastCauses(comparison, { events })
    expect(provenLeast).toBe(true)
    expect(causes.map((cause) => [cause.event.kind, cause.explains.length])).toEqual([
      ['muted', 3],
      ['key-refused', 1],
    ])
  })

  it('are none where the work raised nothing', () => {
    const comparison = compareScans([scan('before', '1', { brakes: ['C0035-11'] })])
    expect(leastCauses(comparison, {})).toEqual({ causes: [], provenLeast: true })
  })
})

describe('who complains about whom', () => {
  it('names the unit that is missed where its purpose is known', () => {
    const comparison = compareScans([
      scan('before', '1', { body: [], brakes: ['U0140-87', 'U0100-87', 'C0035-11'] }),
    ])
    expect(complaints(comparison)).toMatchObject([
      { from: 'brakes', about: 'body', aboutUnit: 'body', code: 'U0140-87' },
      { from: 'brakes', about: 'engine', aboutUnit: null, code: 'U0100-87' },
    ])
  })
})
