import type { Finding } from '@shearline/bus'

/** When in the job a scan was taken. */
export type ScanPhase = 'before' | 'after' | 'cleared' | 'cycled'

/** One fault as a control unit reported it. */
export interface ReportedFault {
  /** SAE J2012 text with failure type where the unit gave three bytes: `U0140-87`, `P0513`. */
  readonly code: string
  /** The bytes as reported, upper-case hex. */
  readonly raw: string
  /** ISO 14229-1 status byte; null when the report carries none (OBD, typed). */
  readonly status: number | null
  /** Which OBD list it came from, when it did. */
  readonly list?: 'confirmed' | 'pending' | 'permanent'
}

/** All faults one control unit reported in one scan. An answered scan with no faults is an empty list. */
export interface UnitScan {
  readonly unit: string
  /** Seconds as decimal string as in the recording, or null when typed. */
  readonly time: string | null
  /** Status bits the unit supports (19 02 availability mask), null when not stated. */
  readonly availability: number | null
  readonly faults: readonly ReportedFault[]
}

export interface Scan {
  readonly phase: ScanPhase
  readonly units: readonly UnitScan[]
}

export type FaultClass =
  | 'there-before-still'
  | 'there-before-gone'
  | 'there-before-back'
  | 'raised-by-work'
  | 'new-unexplained'
  | 'permanent'
  | 'not-comparable'

/** What may honestly be claimed of a fault in one scan, from its ISO 14229-1 status bits. */
export interface FaultState {
  readonly phase: ScanPhase
  readonly present: boolean
  readonly status: number | null
  /** failed now, pending, confirmed, not re-tested since clear, not re-tested this cycle */
  readonly claims: readonly FaultClaim[]
}

/** One thing that may be said of a fault in one scan. */
export type FaultClaim =
  | 'failing-now'
  | 'failed-this-cycle'
  | 'pending'
  | 'confirmed'
  | 'failed-since-clear'
  | 'warning-lamp'
  | 'permanent'
  | 'not-tested-since-clear'
  | 'not-tested-this-cycle'
  | 'unit-not-read'
  | 'absent'
  | 'absent-but-untested'

/** What the work did to the car, as a recording shows it or a person states it. */
export type WorkEventKind =
  | 'reset'
  | 'muted'
  | 'cleared'
  | 'supply-low'
  | 'battery-disconnected'
  | 'teaching'
  | 'key-refused'

/** One thing that happened in the work. `unit` null: to the whole car. Times are on the scans' clock, or null. */
export interface WorkEvent {
  readonly kind: WorkEventKind
  readonly unit: string | null
  /** Seconds as decimal string on the same clock as the scans' times, or null when not known. */
  readonly time: string | null
  /** Where this is seen: a line of the recording, a supply log, a statement. */
  readonly evidence: string
}

/** What a control unit is for, so that a code that names a unit can be held against the unit that was touched. */
export type UnitRole =
  | 'engine'
  | 'transmission'
  | 'brakes'
  | 'steering'
  | 'body'
  | 'gateway'
  | 'restraints'
  | 'instruments'
  | 'immobiliser'
  | 'alarm'
  | 'remote'

/** Beside the scans: what the work did, and what units are for where their names do not say it. */
export interface CompareOptions {
  readonly events?: readonly WorkEvent[]
  readonly roles?: Readonly<Record<string, UnitRole>>
}

export type FaultFindingCode =
  | 'no-before-scan'
  | 'unit-not-read-before'
  | 'unit-not-read-again'
  | 'cleared-not-retested'
  | 'fault-code-unreadable'

/** The life line of one fault over the scans of a job. */
export interface FaultLine {
  readonly unit: string
  readonly code: string
  readonly class: FaultClass
  readonly explanation: { readonly rule: string; readonly text: string; readonly source: string } | null
  /** 0 to 1. */
  readonly confidence: number
  readonly evidence: readonly string[]
  /** Every event of the work that explains it well enough; empty unless the work raised it. */
  readonly candidates: readonly WorkEvent[]
  readonly life: readonly FaultState[]
  readonly airbag: boolean
  /** Wants a decision or an acknowledgement before handover. */
  readonly needsAttention: boolean
}

export interface FaultComparison {
  readonly faults: readonly FaultLine[]
  readonly unitsRead: Readonly<Record<ScanPhase, readonly string[]>>
  readonly findings: readonly Finding<FaultFindingCode>[]
}
