import type { Finding } from '@shearline/bus'
import type { ExplanationRuleId } from './explanations.ts'

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
  /** Request and response identifiers, or addresses, where the source tells them: `7E8`, `18DAF110`, `1010`. */
  readonly ids?: readonly string[]
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
  readonly evidence: Evidence
}

/** Something that speaks for a class, as a code and what fills its places; a catalogue says it. */
export interface Evidence {
  readonly code: /** In a recording: `recording`, `seconds` on its own clock, and `detail` in the standard's word. */
    | 'recorded'
    | 'recorded-detail'
    /** On record: `at` as instant. */
    | 'session-opened'
    | 'key-refused'
    /** The supply fell to `minimum` below `floor`, in volts. */
    | 'supply-fell'
    /** A person's own `words`. */
    | 'noted'
    /** Before the work the unit held the same code with another failure type. */
    | 'other-failure-type'
    /** In `phase` the unit reported the bytes `raw`. */
    | 'reported-as'
  readonly params: Readonly<Record<string, string | number>>
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
  /** What a person said of names that look alike. */
  readonly matches?: readonly UnitMatch[]
}

/** Whether two names mean one control unit, said by a person. */
export interface UnitMatch {
  readonly unit: string
  readonly other: string
  readonly same: boolean
}

export type FaultFindingCode =
  | 'no-before-scan'
  | 'unit-not-read-before'
  | 'unit-not-read-again'
  | 'cleared-not-retested'
  | 'fault-code-unreadable'
  | 'units-perhaps-one'

/** One finding of a comparison. A catalogue says what it is and what to do next, by code and `params`. */
export interface FaultFinding extends Pick<Finding<FaultFindingCode>, 'code' | 'severity' | 'where'> {
  readonly params: Readonly<Record<string, string>>
}

/** The life line of one fault over the scans of a job. */
export interface FaultLine {
  readonly unit: string
  readonly code: string
  readonly class: FaultClass
  /** The rule that explains it; a catalogue says why, and where the rule comes from. */
  readonly explanation: { readonly rule: ExplanationRuleId } | null
  /** 0 to 1. */
  readonly confidence: number
  /** Beside the claims of `life`. */
  readonly evidence: readonly Evidence[]
  /** Every event of the work that explains it well enough; empty unless the work raised it. */
  readonly candidates: readonly WorkEvent[]
  /** One state per moment that was scanned: all scans of a moment together. */
  readonly life: readonly FaultState[]
  /** One state per scan, in the order of the scans. */
  readonly byScan: readonly FaultState[]
  readonly airbag: boolean
  /** Wants a decision or an acknowledgement before handover. */
  readonly needsAttention: boolean
}

export interface FaultComparison {
  readonly faults: readonly FaultLine[]
  readonly unitsRead: Readonly<Record<ScanPhase, readonly string[]>>
  /** Every name and address of a unit, by the name used here. */
  readonly unitNames: Readonly<Record<string, readonly string[]>>
  readonly findings: readonly FaultFinding[]
}
