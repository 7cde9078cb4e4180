/**
 * @module The fault memory of one control unit, with the status byte as ISO 14229-1 describes it.
 *
 * Source: ISO 14229-1:2020 annex D (bit transitions, memory); names of the bits
 * `uds/…/dtc.rst` of mdabrowski1990/uds (MIT). Aging after 40 cycles: common practice, no source.
 */

import { dtcBytes } from '@shearline/bus'

const TEST_FAILED = 0x01
const FAILED_THIS_CYCLE = 0x02
const PENDING = 0x04
const CONFIRMED = 0x08
const NOT_TESTED_SINCE_CLEAR = 0x10
const FAILED_SINCE_CLEAR = 0x20
const NOT_TESTED_THIS_CYCLE = 0x40
const WARNING_LAMP = 0x80

const AGING_CYCLES = 40

/** What the unit tests for. */
export interface MonitorChoices {
  /** SAE J2012 text with failure type: `U0140-87`. */
  readonly code: string
  /** Cycles with a failure before the fault is confirmed; 1 when left out. */
  readonly confirmAfterCycles?: number
  readonly lamp?: boolean
  /** Kept by service 0A until its own test has passed (SAE J1979). */
  readonly permanent?: boolean
}

/** What was true when a fault was first stored. */
export interface Snapshot {
  readonly volts: number
  readonly seconds: number
}

/** One code and what its test has said so far. */
export interface StoredFault {
  readonly code: string
  readonly bytes: Uint8Array
  readonly status: number
  readonly snapshot: Snapshot | null
  readonly occurrences: number
  readonly agingCycles: number
  readonly permanent: boolean
}

interface Monitor {
  readonly code: string
  readonly bytes: Uint8Array
  readonly confirmAfterCycles: number
  readonly lamp: boolean
  readonly canBePermanent: boolean
  status: number
  failedCycles: number
  agingCycles: number
  occurrences: number
  snapshot: Snapshot | null
  permanent: boolean
}

/** The memory: monitors report to it, services read and clear it. */
export class FaultMemory {
  readonly #monitors = new Map<string, Monitor>()

  /** Adds a test. Throws `RangeError` for a code that is no SAE J2012 text with a failure type. */
  add(choices: MonitorChoices): void {
    const bytes = dtcBytes(choices.code)
    if (bytes?.length !== 3) throw new RangeError(`${choices.code}: write a code as U0140-87`)
    this.#monitors.set(choices.code, {
      code: choices.code,
      bytes,
      confirmAfterCycles: choices.confirmAfterCycles ?? 1,
      lamp: choices.lamp ?? false,
      canBePermanent: choices.permanent ?? false,
      // The state a unit leaves the works in: as after a clear.
      status: NOT_TESTED_SINCE_CLEAR | NOT_TESTED_THIS_CYCLE,
      failedCycles: 0,
      agingCycles: 0,
      occurrences: 0,
      snapshot: null,
      permanent: false,
    })
  }

  /** The test of a code has run and failed. Returns true when it had not failed just before. */
  failed(code: string, snapshot: Snapshot): boolean {
    const monitor = this.#monitor(code)
    const fresh = (monitor.status & TEST_FAILED) === 0
    if (fresh) monitor.occurrences = Math.min(255, monitor.occurrences + 1)
    if ((monitor.status & FAILED_THIS_CYCLE) === 0) monitor.failedCycles++
    monitor.snapshot ??= snapshot
    monitor.agingCycles = 0
    monitor.status |= TEST_FAILED | FAILED_THIS_CYCLE | PENDING | FAILED_SINCE_CLEAR
    monitor.status &= ~(NOT_TESTED_SINCE_CLEAR | NOT_TESTED_THIS_CYCLE)
    if (monitor.failedCycles >= monitor.confirmAfterCycles) {
      monitor.status |= CONFIRMED | (monitor.lamp ? WARNING_LAMP : 0)
      if (monitor.canBePermanent) monitor.permanent = true
    }
    return fresh
  }

  /** The test of a code has run and passed. */
  passed(code: string): void {
    const monitor = this.#monitor(code)
    monitor.status &= ~(TEST_FAILED | NOT_TESTED_SINCE_CLEAR | NOT_TESTED_THIS_CYCLE)
  }

  /** A new operation cycle begins: ignition off and on again. */
  newCycle(): void {
    for (const monitor of this.#monitors.values()) {
      const failed = (monitor.status & FAILED_THIS_CYCLE) !== 0
      const ran = (monitor.status & NOT_TESTED_THIS_CYCLE) === 0
      if (ran && !failed) {
        monitor.status &= ~(PENDING | WARNING_LAMP)
        monitor.failedCycles = 0
        if (monitor.permanent) monitor.permanent = false
        if ((monitor.status & CONFIRMED) !== 0 && ++monitor.agingCycles >= AGING_CYCLES) forget(monitor)
      }
      monitor.status &= ~FAILED_THIS_CYCLE
      monitor.status |= NOT_TESTED_THIS_CYCLE
    }
  }

  /** Service 14: forgets everything but what is permanent. */
  clear(): void {
    for (const monitor of this.#monitors.values()) {
      forget(monitor)
      monitor.status = NOT_TESTED_SINCE_CLEAR | NOT_TESTED_THIS_CYCLE
    }
  }

  /** Puts a fault there as an earlier day left it: confirmed, not failing now. */
  leaveFrom(code: string, snapshot: Snapshot): void {
    this.failed(code, snapshot)
    this.passed(code)
    const monitor = this.#monitor(code)
    monitor.status |= CONFIRMED
    monitor.status &= ~PENDING
  }

  /** Every code whose status has one of the bits of the mask. */
  byMask(mask: number): readonly StoredFault[] {
    return [...this.#monitors.values()].filter((monitor) => (monitor.status & mask) !== 0)
  }

  /** One code by its bytes; undefined when the unit does not test for it. */
  find(bytes: Uint8Array): StoredFault | undefined {
    return [...this.#monitors.values()].find((monitor) =>
      monitor.bytes.every((byte, at) => byte === bytes[at]),
    )
  }

  /** Codes on the list of service 0A. */
  permanentFaults(): readonly StoredFault[] {
    return [...this.#monitors.values()].filter((monitor) => monitor.permanent)
  }

  /** Every code the unit tests for. */
  all(): readonly StoredFault[] {
    return [...this.#monitors.values()]
  }

  has(code: string): boolean {
    return this.#monitors.has(code)
  }

  #monitor(code: string): Monitor {
    const monitor = this.#monitors.get(code)
    if (monitor === undefined) throw new RangeError(`this unit does not test for ${code}`)
    return monitor
  }
}

function forget(monitor: Monitor): void {
  monitor.status &= NOT_TESTED_THIS_CYCLE
  monitor.failedCycles = 0
  monitor.agingCycles = 0
  monitor.occurrences = 0
  monitor.snapshot = null
}
