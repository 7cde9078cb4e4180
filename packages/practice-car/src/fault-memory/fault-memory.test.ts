import { describe, expect, it } from 'vitest'
import { FaultMemory } from './index.ts'

/** Bit transitions: ISO 14229-1:2020 annex D (memory); names and masks: dtc_status_bits.tsv of the reference tables. */
const at = { volts: 12.1, seconds: 3 }

function memory(
  choices: { confirmAfterCycles?: number; lamp?: boolean; permanent?: boolean } = {},
): FaultMemory {
  const made = new FaultMemory()
  made.add({ code: 'P0420-00', ...choices })
  return made
}

const status = (made: FaultMemory): number => made.all()[0]?.status ?? -1

describe('the status byte of a practice unit', () => {
  it('says after a clear that the test has run neither since the clear nor in this cycle', () => {
    const made = memory()
    made.failed('P0420-00', at)
    made.clear()
    expect(status(made)).toBe(0x50)
  })

  it('sets failed, this cycle, pending, since clear at the first failure and takes the not-tested bits away', () => {
    const made = memory({ confirmAfterCycles: 2 })
    made.failed('P0420-00', at)
    expect(status(made)).toBe(0x27)
  })

  it('confirms at once where one failure is enough, and lights the lamp when it has one', () => {
    const made = memory({ lamp: true })
    made.failed('P0420-00', at)
    expect(status(made)).toBe(0xaf)
  })

  it('confirms in the second cycle with a failure where two are needed', () => {
    const made = memory({ confirmAfterCycles: 2 })
    made.failed('P0420-00', at)
    made.failed('P0420-00', at)
    expect(status(made) & 0x08).toBe(0)
    made.newCycle()
    expect(status(made)).toBe(0x65)
    made.failed('P0420-00', at)
    expect(status(made) & 0x08).toBe(0x08)
  })

  it('keeps confirmed, pending and since clear when the test passes, and drops only what fails now', () => {
    const made = memory()
    made.failed('P0420-00', at)
    made.passed('P0420-00')
    expect(status(made)).toBe(0x2e)
  })

  it('drops pending at the end of a cycle in which the test ran and passed', () => {
    const made = memory()
    made.failed('P0420-00', at)
    made.passed('P0420-00')
    made.newCycle()
    expect(status(made) & 0x04).toBe(0x04)
    made.passed('P0420-00')
    made.newCycle()
    expect(status(made)).toBe(0x68)
  })

  it('forgets a confirmed fault after forty cycles that passed', () => {
    const made = memory()
    made.failed('P0420-00', at)
    made.newCycle()
    for (let cycle = 0; cycle < 40; cycle++) {
      expect(status(made) & 0x08).toBe(0x08)
      made.passed('P0420-00')
      made.newCycle()
    }
    expect(status(made) & 0x08).toBe(0)
  })

  it('keeps a permanent code through a clear, until its own test has passed for a cycle (SAE J1979)', () => {
    const made = memory({ permanent: true })
    made.failed('P0420-00', at)
    made.clear()
    expect(made.permanentFaults()).toHaveLength(1)
    made.newCycle()
    expect(made.permanentFaults()).toHaveLength(1)
    made.passed('P0420-00')
    made.newCycle()
    expect(made.permanentFaults()).toHaveLength(0)
  })

  it('keeps the first snapshot and counts occurrences, not repeated looks at the same failure', () => {
    const made = memory()
    made.failed('P0420-00', at)
    made.failed('P0420-00', { volts: 9, seconds: 9 })
    made.passed('P0420-00')
    made.failed('P0420-00', { volts: 9, seconds: 12 })
    expect(made.all()[0]).toMatchObject({ occurrences: 2, snapshot: at })
  })

  it('refuses a code without failure type', () => {
    expect(() => new FaultMemory().add({ code: 'P0420' })).toThrow('write a code as U0140-87')
  })
})
