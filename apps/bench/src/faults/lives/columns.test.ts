import { compareScans, type Scan, type ScanPhase } from '@shearline/keywork'
import { describe, expect, it } from 'vitest'
import { hasChanged, momentColumns, scanColumns, stateIn } from './columns.ts'

const scan = (phase: ScanPhase, codes: readonly string[] | null): Scan => ({
  phase,
  units:
    codes === null
      ? []
      : [
          {
            unit: 'Engine',
            time: null,
            availability: null,
            faults: codes.map((code) => ({ code, raw: '', status: null })),
          },
        ],
})
const scans = [
  scan('before', ['P0420']),
  scan('before', []),
  scan('after', ['P0420', 'P0562']),
  scan('after', null),
  scan('before', ['P0420']),
  scan('cycled', ['P0420']),
]
const taken = scans.map(({ phase }) => phase)
const { faults } = compareScans(scans)

describe('columns of the picture', () => {
  it('are the moments, each with all of its scans, or every scan in its moment', () => {
    expect(momentColumns(taken).map(({ key }) => key)).toEqual(['before', 'after', 'cycled'])
    expect(scanColumns(taken).map(({ scan: place }) => place)).toEqual([0, 1, 4, 2, 3, 5])
  })

  it('show what that one scan said, where a moment says what any of its scans said', () => {
    const [old] = faults
    const present = (columns: ReturnType<typeof scanColumns>) =>
      columns.map((column) => old !== undefined && stateIn(old, column)?.present)
    expect(present(momentColumns(taken))).toEqual([true, true, true])
    expect(present(scanColumns(taken))).toEqual([true, false, true, true, false, true])
  })

  it('know a fault that changed, and take a unit that was not read for no change', () => {
    expect(faults.map((line) => [line.code, hasChanged(line)])).toEqual([
      ['P0420', true],
      ['P0562', true],
    ])
    const [still] = compareScans([scan('before', ['P0420']), scan('after', null)]).faults
    expect(still !== undefined && hasChanged(still)).toBe(false)
  })
})
