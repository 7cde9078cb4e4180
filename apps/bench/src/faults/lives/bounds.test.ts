import type { Fact } from '@shearline/jobfile'
import { compareScans, type Scan } from '@shearline/keywork'
import { describe, expect, it } from 'vitest'
import { boundsOf, instantOf } from './bounds.ts'

const unit = (time: string | null, ...codes: readonly string[]) => ({
  unit: 'Engine',
  time,
  availability: null,
  faults: codes.map((code) => ({ code, raw: '', status: null })),
})
const kept = (id: string, at: string, body: object, kind = 'scan-attached') =>
  ({ id, at, kind, v: 1, body }) as unknown as Fact

const bounds = (scans: readonly Scan[], facts: readonly Fact[]) => {
  const [line] = compareScans(scans).faults
  return line === undefined ? null : boundsOf(line, facts)
}

const wrong = '6f9619ff-8b86-4d01-b42d-00c04fc964ff'

describe('when a fault can have been set', () => {
  // 1764065040 s after 1970 is 10:04 UTC on 25 November 2025 (POSIX time).
  const before: Scan = { phase: 'before', units: [unit('1764065040.5')] }
  const after: Scan = { phase: 'after', units: [unit(null, 'P0513')] }

  it('is between the last scan without it, by the recording, and the first with it, by when it was kept', () => {
    expect(
      bounds(
        [before, after],
        [
          kept('empty', '2025-11-25T10:50:00.000Z', { phase: 'after', units: [unit(null)] }),
          kept('one', '2025-11-25T10:30:00.000Z', before),
          kept('two', '2025-11-25T11:00:00.000Z', after),
          kept('late', '2025-11-25T12:00:00.000Z', after),
          kept(wrong, '2025-11-25T10:40:00.000Z', after),
          kept(
            'undo',
            '2025-11-25T10:41:00.000Z',
            { fact: wrong, action: 'withdrawn', reason: 'other car' },
            'corrected',
          ),
        ],
      ),
    ).toEqual({
      without: { phase: 'before', at: '2025-11-25T10:04:00.500Z' },
      with: { phase: 'after', at: '2025-11-25T11:00:00.000Z' },
      untested: false,
    })
  })

  it('has no earlier bound when the unit was not read before', () => {
    const elsewhere: Scan = { phase: 'before', units: [{ ...unit(null), unit: 'Brakes' }] }
    expect(bounds([elsewhere, after], [kept('two', '2025-11-25T11:00:00.000Z', after)])).toEqual({
      without: null,
      with: { phase: 'after', at: '2025-11-25T11:00:00.000Z' },
      untested: false,
    })
  })

  it('takes no time of day from a clock that counts from power-up', () => {
    expect([instantOf('12.5'), instantOf(null), instantOf('1e300')]).toEqual([null, null, null])
  })
})
