import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { referencePresent, referenceRows, whenAbsent } from '../testing/reference.ts'
import { EXPLANATION_RULES } from './explanations.ts'
import {
  clearableUnits,
  clearingBarrier,
  compareScans,
  type FaultComparison,
  type FaultLine,
  isAirbagFault,
  mayOfferClearing,
  type ReportedFault,
  type Scan,
  type ScanPhase,
  type UnitScan,
  type WorkEvent,
} from './index.ts'
import { LOST_COMMUNICATION, roleOf } from './roles.ts'
import { stateOfReports } from './status.ts'

/** `U0140-87=08` is a code with its status byte, `P0562` one without. */
const fault = (text: string, list?: ReportedFault['list']): ReportedFault => {
  const [code = '', status] = text.split('=')
  return {
    code,
    raw: '',
    status: status === undefined ? null : Number.parseInt(status, 16),
    ...(list === undefined ? {} : { list }),
  }
}
const unit = (
  name: string,
  faults: readonly (string | ReportedFault)[],
  time: string | null = null,
): UnitScan => ({
  unit: name,
  time,
  availability: null,
  faults: faults.map((each) => (typeof each === 'string' ? fault(each) : each)),
})
const scan = (phase: ScanPhase, ...units: readonly UnitScan[]): Scan => ({ phase, units })
const event = (kind: WorkEvent['kind'], name: string | null, time: string | null = null): WorkEvent => ({
  kind,
  unit: name,
  time,
  evidence: { code: 'noted', params: { words: `${kind} in line 7` } },
})
const only = (comparison: FaultComparison): FaultLine => {
  expect(comparison.faults).toHaveLength(1)
  return comparison.faults[0] as FaultLine
}
/** A fault of the brake unit about the body unit, absent before, stored after, with these events. */
const silence = (events: readonly WorkEvent[], status = '2E', code = 'U0140-87'): FaultLine =>
  only(
    compareScans(
      [scan('before', unit('brakes', [], '10')), scan('after', unit('brakes', [`${code}=${status}`], '90'))],
      {
        events,
      },
    ),
  )

describe('status bits', () => {
  test('FLT-02 FLT-03 all 256 status bytes follow the bit table of ISO 14229-1', () => {
    // Written from the meaning of the bits, apart from the source: does this byte remember a failure, has the test run?
    for (let status = 0; status < 256; status += 1) {
      const bits = [...status.toString(2).padStart(8, '0')].reverse().map((bit) => bit === '1')
      const [failed, failedCycle, pending, confirmed, notSinceClear, failedSinceClear, notCycle, lamp] = bits
      const state = stateOfReports('after', [{ code: 'P0001', raw: '', status }], null)
      const remembers = failed || failedCycle || pending || confirmed || failedSinceClear || lamp
      expect([status, state.present]).toEqual([status, remembers])
      expect(state.claims.includes('absent-but-untested')).toBe(!remembers && (notSinceClear || notCycle))
      expect(state.claims.includes('absent')).toBe(!remembers && !notSinceClear && !notCycle)
      expect(state.claims.includes('failing-now')).toBe(failed)
      expect(state.claims.includes('pending')).toBe(pending)
      expect(state.claims.includes('confirmed')).toBe(confirmed)
      expect(state.claims.includes('not-tested-since-clear')).toBe(notSinceClear)
      expect(state.claims.includes('not-tested-this-cycle')).toBe(notCycle)
    }
  })

  test.skipIf(!referencePresent)(
    `FLT-02 the bits stand where dtc_status_bits.tsv puts them${whenAbsent}`,
    () => {
      const claims: Readonly<Record<string, string>> = {
        testFailed: 'failing-now',
        testFailedThisOperationCycle: 'failed-this-cycle',
        pendingDTC: 'pending',
        confirmedDTC: 'confirmed',
        testNotCompletedSinceLastClear: 'not-tested-since-clear',
        testFailedSinceLastClear: 'failed-since-clear',
        testNotCompletedThisOperationCycle: 'not-tested-this-cycle',
        warningIndicatorRequested: 'warning-lamp',
      }
      const rows = referenceRows('dtc_status_bits.tsv')
      expect(rows).toHaveLength(8)
      for (const row of rows) {
        const status = Number.parseInt(row.mask_hex ?? '', 16)
        expect(stateOfReports('after', [{ code: 'P0001', raw: '', status }], null).claims).toContain(
          claims[row.name ?? ''],
        )
      }
    },
  )

  test('FLT-02 bits outside the availability mask say nothing', () => {
    const state = stateOfReports('after', [fault('P0001=80')], 0x7f)
    expect(state).toMatchObject({ present: false, claims: ['absent'] })
  })

  test('FLT-03 a record that only says its test has not run is no fault', () => {
    expect(compareScans([scan('before', unit('brakes', ['C0035-11=50']))]).faults).toEqual([])
  })

  test('FLT-04 no code right after clearing is absent but untested', () => {
    const scans = [scan('before', unit('brakes', ['C0035-11=08'])), scan('cleared', unit('brakes', []))]
    const line = only(compareScans(scans))
    expect(line.life.at(-1)?.claims).toEqual(['absent-but-untested'])
    expect([line.class, line.confidence]).toEqual(['there-before-gone', 0.5])
    const cleared = [scan('before', unit('brakes', ['C0035-11=08'])), scan('after', unit('brakes', []))]
    expect(only(compareScans(cleared)).life.at(-1)?.claims).toEqual(['absent'])
    expect(only(compareScans(cleared, { events: [event('cleared', null)] })).life.at(-1)?.claims).toEqual([
      'absent-but-untested',
    ])
  })
})

describe('classes', () => {
  const classOver = (...statuses: readonly (string | null)[]): string => {
    const phases: readonly ScanPhase[] = ['before', 'after', 'cleared', 'cycled']
    const scans = statuses.map((status, index) =>
      scan(phases[index] as ScanPhase, unit('brakes', status === null ? [] : [`C0035-11=${status}`])),
    )
    return only(compareScans(scans)).class
  }

  test('FLT-06 there before: still, gone, back', () => {
    expect(classOver('08', '08')).toBe('there-before-still')
    expect(classOver('08', '28', '50', '2F')).toBe('there-before-back')
    expect(classOver('08', null)).toBe('there-before-gone')
    expect(classOver('08', '08', '50', '50')).toBe('there-before-gone')
  })

  test('FLT-07 without an explanation a new fault is unexplained and wants attention', () => {
    expect(classOver(null, '08')).toBe('new-unexplained')
    expect(silence([]).needsAttention).toBe(true)
  })

  test('FLT-05 a unit not read in both is not comparable', () => {
    const late = compareScans([
      scan('before', unit('body', [])),
      scan('after', unit('brakes', ['C0035-11=08'])),
    ])
    expect(only(late)).toMatchObject({ class: 'not-comparable', needsAttention: true })
    expect(late.findings.map((finding) => finding.code)).toEqual([
      'unit-not-read-before',
      'unit-not-read-again',
    ])
    const early = compareScans([scan('before', unit('brakes', ['C0035-11=08']))])
    expect(only(early).class).toBe('not-comparable')
    expect(compareScans([scan('after', unit('brakes', ['C0035-11=08']))]).findings[0]?.code).toBe(
      'no-before-scan',
    )
  })

  test('FLT-01 a code without failure type is the same fault, another failure type is another', () => {
    const typed = compareScans([
      scan('before', unit('brakes', ['C0035'])),
      scan('after', unit('brakes', ['C0035-11=08'])),
    ])
    expect(only(typed)).toMatchObject({ code: 'C0035-11', class: 'there-before-still' })
    const other = compareScans([
      scan('before', unit('brakes', ['C0035-11=08'])),
      scan('after', unit('brakes', ['C0035-11=08', 'C0035-12=08'])),
    ])
    expect(other.faults.map((line) => [line.code, line.class])).toEqual([
      ['C0035-11', 'there-before-still'],
      ['C0035-12', 'new-unexplained'],
    ])
  })

  test('FLT-11 the permanent list makes a code permanent', () => {
    const permanent = fault('P0420', 'permanent')
    const both = compareScans([
      scan('before', unit('engine', [permanent])),
      scan('after', unit('engine', [permanent])),
    ])
    expect(only(both)).toMatchObject({ class: 'permanent', needsAttention: false })
    const fresh = compareScans([
      scan('before', unit('engine', [])),
      scan('after', unit('engine', [permanent])),
    ])
    expect(only(fresh)).toMatchObject({ class: 'permanent', needsAttention: true })
    expect(clearingBarrier(only(fresh))).toBe('permanent')
  })

  test('FLT-12 what was seen once before the work was there', () => {
    const scans = [
      scan('before', unit('brakes', ['C0035-11=08'])),
      scan('before', unit('brakes', [])),
      scan('after', unit('brakes', ['C0035-11=08'])),
    ]
    expect(only(compareScans(scans)).class).toBe('there-before-still')
    const cycled = [
      scan('before', unit('brakes', ['C0035-11=08'])),
      scan('cycled', unit('brakes', ['C0035-11=08'])),
    ]
    expect(only(compareScans([...cycled, scan('cycled', unit('brakes', []))])).class).toBe(
      'there-before-gone',
    )
  })

  test('FLT-15 a fault that is away but untested is named for a further scan', () => {
    const scans = [scan('before', unit('brakes', ['C0035-11=08'])), scan('cleared', unit('brakes', []))]
    expect(compareScans(scans).findings).toMatchObject([
      { code: 'cleared-not-retested', params: { unit: 'brakes', codes: 'C0035-11', since: 'cleared' } },
    ])
    const cycled = [...scans, scan('cycled', unit('brakes', []))]
    expect(compareScans(cycled).findings).toEqual([])
  })

  test('a code that cannot be read is compared as written and said so', () => {
    const scans = [scan('before', unit('brakes', ['12345'])), scan('after', unit('brakes', ['12345']))]
    expect(only(compareScans(scans)).class).toBe('there-before-still')
    expect(compareScans(scans).findings.map((finding) => finding.code)).toContain('fault-code-unreadable')
  })
})

describe('explanations', () => {
  test('FLT-07 FLT-10 a restart of the named unit explains its silence to others', () => {
    const line = silence([event('reset', 'body control', '50')])
    expect(line).toMatchObject({ class: 'raised-by-work', explanation: { rule: 'reset-silence' } })
    expect(line.evidence).toContainEqual({ code: 'noted', params: { words: 'reset in line 7' } })
    expect(silence([event('muted', null, '50')]).class).toBe('raised-by-work')
  })

  test('FLT-10 silence of another unit, or of one whose purpose is unsure, explains nothing', () => {
    expect(silence([event('reset', 'gateway', '50')]).class).toBe('new-unexplained')
    expect(silence([event('reset', 'unit 726', '50')]).class).toBe('new-unexplained')
    const told = compareScans(
      [scan('before', unit('brakes', [], '10')), scan('after', unit('brakes', ['U0140-87=2E'], '90'))],
      { events: [event('reset', 'unit 726', '50')], roles: { 'unit 726': 'body' } },
    )
    expect(only(told).class).toBe('raised-by-work')
    expect([roleOf('body brake unit'), roleOf('constructor', {}), roleOf('Airbag')]).toEqual([
      null,
      null,
      'restraints',
    ])
  })

  test('FLT-09 an event outside the time between the two readings explains nothing', () => {
    expect(silence([event('reset', 'body', '5')]).class).toBe('new-unexplained')
    expect(silence([event('reset', 'body', '95')]).class).toBe('new-unexplained')
  })

  test('FLT-09 a time not known, and not yet proven away, lower the confidence', () => {
    const known = silence([event('reset', 'body', '50')]).confidence
    const unknown = silence([event('reset', 'body')]).confidence
    expect(unknown).toBeLessThan(known)
    const away = only(
      compareScans(
        [
          scan('before', unit('brakes', [], '10')),
          scan('after', unit('brakes', ['U0140-87=2E'], '90')),
          scan('cleared', unit('brakes', [])),
          scan('cycled', unit('brakes', [])),
        ],
        { events: [event('reset', 'body', '50')] },
      ),
    )
    expect(away.confidence).toBeGreaterThan(known)
    expect([away.class, away.needsAttention]).toEqual(['raised-by-work', false])
    // Teaching alone, with no time and nothing cleared yet, is just sure enough; the sum of doubts must not pass 0.6.
    expect(silence([event('supply-low', null)]).class).toBe('new-unexplained')
  })

  test('FLT-08 never ours: failing now, back after clearing, untested before, other failure type before', () => {
    const events = [event('reset', 'body', '50')]
    expect(silence(events, '2F').class).toBe('new-unexplained')
    const before = (reported: readonly string[]): Scan => scan('before', unit('brakes', reported, '10'))
    const after = scan('after', unit('brakes', ['U0140-87=2E'], '90'))
    const back = [
      before([]),
      after,
      scan('cleared', unit('brakes', [])),
      scan('cycled', unit('brakes', ['U0140-87=2E'])),
    ]
    expect(only(compareScans(back, { events })).class).toBe('new-unexplained')
    expect(only(compareScans([before(['U0140-87=50']), after], { events })).class).toBe('new-unexplained')
    const other = compareScans([before(['U0140-00=08']), after], { events })
    expect(other.faults.map((line) => [line.code, line.class])).toContainEqual([
      'U0140-87',
      'new-unexplained',
    ])
  })

  test('FLT-07 key codes and supply codes have their rules', () => {
    const events = [event('key-refused', null, '50'), event('supply-low', null, '50')]
    expect(silence(events, '2E', 'P0513-00').explanation?.rule).toBe('key-refused')
    expect(silence(events, '2E', 'P0562-00').explanation?.rule).toBe('supply-low-supply-codes')
    expect(silence(events, '2E', 'C0035-00').class).toBe('new-unexplained')
  })

  test.skipIf(!referencePresent)(
    `FLT-10 each named unit agrees with the published titles (generic_dtcs.tsv)${whenAbsent}`,
    () => {
      const rows = referenceRows('generic_dtcs.tsv')
      const titleKey = Object.keys(rows[0] ?? {})[1] ?? ''
      const title = (code: string): string => rows.find((row) => row.code === code)?.[titleKey] ?? ''
      const words: Readonly<Record<string, RegExp>> = {
        engine: /ECM/,
        transmission: /TCM/,
        brakes: /Brake/,
        steering: /Steering/,
        body: /Body/,
        gateway: /Gateway/,
        restraints: /Restraints/,
        instruments: /Instrument/,
        immobiliser: /Immobilizer/,
        alarm: /Security/,
        remote: /Remote/,
      }
      for (const [code, role] of Object.entries(LOST_COMMUNICATION)) {
        expect([code, title(code)]).toEqual([code, expect.stringMatching(/^Lost Communication/)])
        expect([code, title(code)]).toEqual([code, expect.stringMatching(words[role] as RegExp)])
      }
      const fitting = (id: string): readonly string[] => {
        const rule = EXPLANATION_RULES.find((each) => each.id === id)
        return rows
          .map((row) => row.code ?? '')
          .filter((code) => rule?.codes instanceof RegExp && rule.codes.test(code))
      }
      for (const code of fitting('supply-low-supply-codes')) expect(title(code)).toMatch(/Voltage|Power/)
      for (const code of [...fitting('key-refused'), ...fitting('immobiliser-teaching')]) {
        expect(title(code)).toMatch(/Immobilizer/)
      }
      expect(fitting('supply-low-supply-codes').length).toBeGreaterThanOrEqual(4)
    },
  )
})

describe('airbag and clearing', () => {
  test('FLT-13 restraint codes and the airbag unit are recognised, a complaint about it is not', () => {
    expect(isAirbagFault('body', 'B0028-11')).toBe(true)
    expect(isAirbagFault('Airbag unit', 'U0140-00')).toBe(true)
    expect(isAirbagFault('unit 7', 'B1234', { 'unit 7': 'restraints' })).toBe(true)
    expect(isAirbagFault('body', 'U0151-00')).toBe(false)
    expect(isAirbagFault('body', 'B0128-11')).toBe(false)
  })

  test.skipIf(!referencePresent)(
    `FLT-13 the range B00xx holds restraint titles and B01xx none (generic_dtcs.tsv)${whenAbsent}`,
    () => {
      const rows = referenceRows('generic_dtcs.tsv')
      const titleKey = Object.keys(rows[0] ?? {})[1] ?? ''
      const restraint =
        /deploy|restraint|seat ?belt|occupant|air ?bag|passenger presence|seat|crash|roll|impact|passive|side curtain|pretension/i
      const inRange = rows.filter((row) => /^B00/.test(row.code ?? ''))
      const others = inRange.filter((row) => !restraint.test(row[titleKey] ?? ''))
      expect(inRange.length).toBeGreaterThan(100)
      expect(others.map((row) => `${row.code} ${row[titleKey]}`)).toEqual([])
      const beyond = rows.filter(
        (row) => /^B01/.test(row.code ?? '') && /deploy|restraint/i.test(row[titleKey] ?? ''),
      )
      expect(beyond).toEqual([])
    },
  )

  test('FLT-14 an airbag fault that was there before is never offered, nor is its unit', () => {
    const scans = [
      scan('before', unit('airbag', ['B0028-11=08'])),
      scan('after', unit('airbag', ['B0028-11=08', 'U0140-87=2E']), unit('brakes', ['C0035-11=08'])),
      scan('before', unit('brakes', [])),
    ]
    const comparison = compareScans(scans)
    const old = comparison.faults.find((line) => line.code === 'B0028-11') as FaultLine
    expect([mayOfferClearing(old), clearingBarrier(old)]).toEqual([false, 'airbag-there-before'])
    expect(clearableUnits(comparison)).toEqual(['brakes'])
    const unread = only(compareScans([scan('after', unit('airbag', ['B0028-11=08']))]))
    expect(clearingBarrier(unread)).toBe('airbag-not-read-before')
  })

  test('FLT-14 nothing is offered that the last scan does not show', () => {
    const gone = only(
      compareScans([scan('before', unit('brakes', ['C0035-11=08'])), scan('cleared', unit('brakes', []))]),
    )
    expect(clearingBarrier(gone)).toBe('nothing-to-clear')
  })
})

describe('two scans of one phase', () => {
  test.each(['before', 'after'] as const)(
    'FLT-02 a report without status stays, whatever status comes later (%s)',
    (phase) => {
      const typed = scan(phase, unit('body control', ['P0562']))
      const passed = scan(phase, unit('body control', ['P0562=00']))
      for (const scans of [
        [typed, passed],
        [passed, typed],
        [typed, passed, typed, passed],
      ])
        expect(only(compareScans(scans)).life).toMatchObject([{ phase, present: true }])
      const failed = scan(phase, unit('body control', ['P0562=08']))
      expect(compareScans([failed, passed]).faults).toEqual([])
    },
  )
})

describe('properties over random jobs', () => {
  const names = ['body control', 'brakes', 'airbag', 'immobiliser', 'unit 7']
  const codes = ['U0140-87', 'U0140-00', 'U0140', 'P0513-00', 'B0028-11', 'C0035-11', 'P0562', 'U0167-87']
  const anyFault = fc.record({
    code: fc.constantFrom(...codes),
    raw: fc.constant(''),
    status: fc.option(fc.nat({ max: 255 })),
  })
  const time = fc.option(fc.nat({ max: 100 }).map(String))
  const anyUnit = fc.record({
    unit: fc.constantFrom(...names),
    time,
    availability: fc.constantFrom(null, 0xff, 0x7f, 0x2f),
    faults: fc.uniqueArray(anyFault, { maxLength: 4, selector: (each) => each.code }),
  })
  const anyScan: fc.Arbitrary<Scan> = fc.record({
    phase: fc.constantFrom<ScanPhase>('before', 'after', 'cleared', 'cycled'),
    units: fc.uniqueArray(anyUnit, { maxLength: 4, selector: (each) => each.unit }),
  })
  const anyEvent: fc.Arbitrary<WorkEvent> = fc.record({
    kind: fc.constantFrom(
      'reset',
      'muted',
      'cleared',
      'supply-low',
      'battery-disconnected',
      'teaching',
      'key-refused',
    ),
    unit: fc.constantFrom(null, ...names),
    time,
    evidence: fc.constant({ code: 'noted' as const, params: { words: 'stated' } }),
  })
  const anyJob = fc.tuple(fc.array(anyScan, { maxLength: 5 }), fc.array(anyEvent, { maxLength: 4 }))

  test('FLT-07 FLT-08 ours always has an event, a unit read before without the code, and is not failing now', () => {
    fc.assert(
      fc.property(anyJob, ([scans, events]) => {
        for (const line of compareScans(scans, { events }).faults) {
          if (line.class !== 'raised-by-work') {
            expect(line.explanation).toBeNull()
            continue
          }
          const before = line.life.find((state) => state.phase === 'before')
          expect(before).toMatchObject({ present: false })
          expect(before?.claims).not.toContain('unit-not-read')
          expect(line.confidence).toBeGreaterThanOrEqual(0.6)
          expect(events.length).toBeGreaterThan(0)
          // Seen with other eyes: no before-scan of this unit lists the five characters with a failure bit.
          for (const each of scans.filter((one) => one.phase === 'before')) {
            for (const reading of each.units.filter((one) => one.unit === line.unit)) {
              const listed = reading.faults.filter((one) => one.code === line.code)
              expect(listed.every((one) => one.status !== null)).toBe(true)
            }
          }
        }
      }),
      { numRuns: 400 },
    )
  })

  test('FLT-07 taking every event away leaves nothing ours and changes no other class', () => {
    fc.assert(
      fc.property(anyJob, ([scans, events]) => {
        const quiet = events.filter((each) => each.kind === 'cleared')
        const withEvents = compareScans(scans, { events }).faults
        const without = compareScans(scans, { events: quiet }).faults
        expect(without.map((line) => line.class)).toEqual(
          withEvents.map((line) => (line.class === 'raised-by-work' ? 'new-unexplained' : line.class)),
        )
      }),
    )
  })

  test('FLT-14 no airbag fault present before is ever offered', () => {
    fc.assert(
      fc.property(anyJob, ([scans, events]) => {
        const comparison = compareScans(scans, { events })
        for (const line of comparison.faults) {
          const before = line.life.find((state) => state.phase === 'before')
          if (line.airbag && (before === undefined || before.present))
            expect(mayOfferClearing(line)).toBe(false)
          if (line.airbag) expect(line.needsAttention).toBe(true)
        }
        for (const name of clearableUnits(comparison)) {
          expect(comparison.faults.some((line) => line.unit === name && mayOfferClearing(line))).toBe(true)
        }
      }),
    )
  })

  test('FLT-01 every present report is in exactly one line of its unit', () => {
    fc.assert(
      fc.property(anyJob, ([scans]) => {
        const comparison = compareScans(scans)
        const lines = comparison.faults.map((line) => `${line.unit} ${line.code}`)
        expect(new Set(lines).size).toBe(lines.length)
        for (const each of scans.filter((one) => one.phase === 'before' || one.phase === 'after')) {
          for (const reading of each.units) {
            for (const reported of reading.faults.filter((one) => one.status === null)) {
              const base = reported.code.slice(0, 5)
              expect(lines.some((line) => line.startsWith(`${reading.unit} ${base}`))).toBe(true)
            }
          }
        }
      }),
    )
  })
})
