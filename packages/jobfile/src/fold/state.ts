import type { FaultComparison, FunctionGrid, GridKey, Scan, Tally } from '@shearline/keywork'
import type { ClockFinding } from '../chain/clock.ts'
import type { Body, Fact } from '../facts/index.ts'
import type { PolicyStanding } from '../policy/index.ts'
import type { Deletion, Due, Hold } from '../retention/index.ts'

/** The seven tumblers in the order they stand in the cylinder (product.md). */
export const tumblerNames = [
  'authority',
  'identity',
  'keys',
  'power',
  'teaching',
  'faults',
  'record',
] as const
export type TumblerName = (typeof tumblerNames)[number]

/** The stages of a job in the order of the day; chapters of the job page. */
export const chapterNames = [
  'call',
  'authority',
  'arrival',
  'plan',
  'backup',
  'prepare',
  'teach',
  'prove',
  'faults',
  'handover',
  'close',
] as const
export type ChapterName = (typeof chapterNames)[number]

/** One thing a tumbler still wants (low) or that contradicts itself (high). Words come from the catalogue by code. */
export interface Need {
  readonly code: NeedCode
  readonly params: Readonly<Record<string, string | number>>
  readonly chapter: ChapterName
  /** A contradiction that wants a decision with a reason, rather than something missing. */
  readonly conflict: boolean
}

export type NeedCode =
  | 'job-not-opened'
  | 'identity-document-missing'
  | 'entitlement-missing'
  | 'document-not-original'
  | 'document-not-matched'
  | 'work-refused'
  | 'work-held'
  | 'policy-question-open'
  | 'policy-answer-no'
  | 'site-question-open'
  | 'consent-absent-keys'
  | 'consent-no-check-before'
  | 'vin-missing'
  | 'vin-second-source'
  | 'vin-not-well-formed'
  | 'vin-sources-disagree'
  | 'blank-not-chosen'
  | 'blank-not-compared'
  | 'blank-does-not-fit'
  | 'keys-not-asked'
  | 'no-key-labelled'
  | 'count-before-missing'
  | 'count-after-missing'
  | 'difference-unexplained'
  | 'tests-before-open'
  | 'tests-after-open'
  | 'function-lost'
  | 'supply-floor-missing'
  | 'supply-at-rest-missing'
  | 'supply-during-missing'
  | 'supply-after-missing'
  | 'supply-below-floor'
  | 'rule-not-chosen'
  | 'rehearsal-not-read'
  | 'backup-not-proven'
  | 'backup-reads-differ'
  | 'session-not-opened'
  | 'session-not-closed'
  | 'key-not-taught'
  | 'break-off-open'
  | 'retest-after-break'
  | 'scan-before-missing'
  | 'scan-after-missing'
  | 'scan-cycled-missing'
  | 'fault-unexplained'
  | 'fault-from-work-remains'
  | 'unit-not-compared'
  | 'caution-not-read'
  | 'retention-not-set'
  | 'price-not-agreed'
  | 'not-sealed'
  | 'changed-since-seal'
  | 'chain-broken'

/** `low`: something is missing; `in-line`; `high`: evidence contradicts itself. Computed, never ticked by hand. */
export interface Tumbler {
  readonly name: TumblerName
  readonly state: 'low' | 'in-line' | 'high'
  /** Satisfied wants and all wants: the height of the pin, and "2 of 4" in words. */
  readonly done: number
  readonly of: number
  readonly needs: readonly Need[]
}

/** The single next action, computed: what to do, where it is done, which tumbler it moves. */
export interface NextStep {
  readonly code: NextCode
  readonly params: Readonly<Record<string, string | number>>
  readonly chapter: ChapterName
  readonly tumbler: TumblerName
}

/** Every need has its own step; four more close the job. */
export type NextCode = NeedCode | 'seal-the-document' | 'hand-over' | 'note-the-blank' | 'nothing-left'

/** A key as the job knows it, with the row the grid needs. */
export interface JobKey extends GridKey {
  readonly make: Body<'key-labelled'>['make']
  readonly colour: Body<'key-labelled'>['colour']
  readonly cloneOf: string | null
  readonly note: string | null
  /** How the car itself shows this key, where it does. */
  readonly shownAs: string | null
  readonly taught: boolean
}

export interface VinOnRecord {
  readonly source: Body<'vin-read'>['source']
  readonly vin: string
  readonly wellFormed: boolean
  readonly unit: string | null
  /** What in a picture it was read from; null: typed or from the bus, or recorded before this was kept. */
  readonly picture: 'letters' | 'code' | null
}

export interface SupplyReading {
  readonly at: string
  readonly volts: number
  readonly during: Body<'supply-read'>['during']
}

/** A sealed secret on record and every time it was opened. */
export interface SecretOnRecord {
  readonly what: string
  readonly blob: string
  readonly sealedAt: string
  readonly opened: readonly { readonly at: string; readonly by: string; readonly reason: string }[]
}

/** A job computed from its facts. Nothing in here is stored; folding the same facts gives the same state. */
export interface JobState {
  readonly job: string
  readonly opened: Body<'job-opened'> | null
  readonly openedAt: string | null
  readonly lastAt: string | null
  readonly factCount: number
  readonly call: Body<'call-taken'> | null
  /** The latest appointment and how it ended, if it did. */
  readonly appointment: {
    readonly made: Body<'appointment-made'>
    readonly ended: Body<'appointment-ended'> | null
  } | null
  readonly quote: Body<'quote-given'> | null
  readonly policyAnswers: readonly Body<'policy-answered'>[]
  /** The pack this job works by and what it asks; null when none was chosen, as in jobs opened before there were packs. */
  readonly policy: PolicyStanding | null
  readonly planAccepted: Body<'plan-accepted'> | null
  readonly steps: readonly Body<'step-done'>[]
  readonly photos: readonly (Body<'photo-attached'> & { readonly at: string })[]
  readonly signatures: readonly Body<'signature-drawn'>[]
  readonly handedOver: (Body<'vehicle-handed-over'> & { readonly at: string }) | null
  readonly secrets: readonly SecretOnRecord[]
  readonly authority: {
    readonly seen: readonly Body<'authority-seen'>[]
    readonly decision: Body<'authority-decided'> | null
    readonly consents: readonly Body<'consent-given'>[]
  }
  readonly vins: readonly VinOnRecord[]
  /** The VIN all sources agree on, or null. */
  readonly vin: string | null
  readonly blanks: readonly Body<'blank-chosen'>[]
  readonly absentKeys: readonly string[]
  readonly keys: readonly JobKey[]
  readonly tally: Tally
  readonly grid: FunctionGrid
  /** Whether the car's count was read (or found not to be shown) before and after. */
  readonly countRead: { readonly before: boolean; readonly after: boolean }
  readonly supply: {
    readonly setting: Body<'supply-set'> | null
    readonly readings: readonly SupplyReading[]
    readonly minimumVolts: number | null
  }
  readonly teaching: {
    readonly rule: Body<'rule-chosen'> | null
    readonly rehearsal: Body<'rehearsal-read'> | null
    readonly backup: Body<'backup-proven'> | null
    readonly backupWaived: string | null
    readonly sessionOpen: boolean
    readonly sessionClosed: boolean
    readonly taught: readonly string[]
    readonly carCount: number | null
    readonly breakOff: Body<'broke-off'> | null
    /** Instant of the break-off that is not mended yet. */
    readonly brokeAt: string | null
    /** Keys the last session took, in order, whatever became of them. */
    readonly shown: readonly string[]
    /** Instant of the last opening. */
    readonly openedAt: string | null
    /** Steps of the plan noted since the last opening, or since the break-off that followed it. */
    readonly stepsSince: readonly (Body<'step-done'> & { readonly at: string })[]
  }
  /** After a break-off: every key here that can start a car, and whether it was tried since the list was last touched. */
  readonly retest: readonly { readonly key: string; readonly done: boolean }[]
  readonly scans: readonly Scan[]
  readonly faults: FaultComparison
  readonly acknowledged: readonly Body<'fault-acknowledged'>[]
  readonly recordings: readonly (Body<'recording-attached'> & { readonly at: string })[]
  readonly cautionsRead: readonly string[]
  readonly cautionsWanted: readonly string[]
  readonly price: Body<'price-agreed'> | null
  readonly invoice: Body<'invoice-issued'> | null
  readonly warranty: Body<'warranty-given'> | null
  readonly retention: Body<'retention-set'> | null
  /** What was deleted, what is due (only when the fold was given the present instant), and what stops it. */
  readonly custody: {
    readonly deletions: readonly Deletion[]
    readonly due: readonly Due[]
    readonly holds: readonly Hold[]
    /** Facts whose content is gone; their place in the chain stays. */
    readonly erased: number
  }
  /** Clocks of devices that contradict the record. Fold order does not change for it. */
  readonly clocks: readonly ClockFinding[]
  readonly notes: readonly { readonly at: string; readonly by: string; readonly text: string }[]
  readonly seal: (Body<'document-sealed'> & { readonly at: string; readonly by: string }) | null
  readonly factsSinceSeal: number
  readonly chainBroken: boolean
  readonly corrections: readonly {
    readonly fact: string
    readonly action: string
    readonly reason: string
    readonly at: string
    readonly by: string
    /** Whether the fold follows it; why not, when it does not. The corrected fact stays on record in any case. */
    readonly stands: 'applied' | 'superseded' | 'fact-not-here' | 'cannot-be-corrected' | 'does-not-fit'
  }[]
  /** Facts of kinds this version does not know: kept and shown. */
  readonly unknown: readonly Fact[]
  /** Facts whose body does not fit their kind; they are kept but not folded. */
  readonly unreadable: readonly { readonly fact: Fact; readonly path: string; readonly what: string }[]
  readonly tumblers: readonly Tumbler[]
  readonly inLine: boolean
  readonly next: NextStep
}

/** What the board shows of a job. */
export interface JobSummary {
  readonly job: string
  readonly title: string
  readonly place: string
  readonly zone: string
  readonly demo: boolean
  readonly vehicle: string
  /** Last six characters of the VIN; empty when none is agreed. */
  readonly vinTail: string
  readonly openedAt: string
  readonly lastAt: string
  readonly tumblers: readonly Pick<Tumbler, 'name' | 'state' | 'done' | 'of'>[]
  readonly inLine: boolean
  readonly next: NextStep
}
