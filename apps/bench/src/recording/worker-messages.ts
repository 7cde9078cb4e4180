import type { CaptureFormatName, Finding } from '@shearline/bus'
import type { IntakeFact } from '@shearline/jobfile'
import type { ScanPhase } from '@shearline/keywork'
import type { Table } from './columns/columns.ts'
import type { Strip } from './strip.ts'

/** Which scan a recording is, or null when it is only to be kept. */
export type Which = ScanPhase | 'keep'
export const whiches = ['before', 'after', 'cleared', 'cycled', 'keep'] as const satisfies readonly Which[]

/** What the page asks of the worker. `columns` are a person's own, in the words of `ReaderOptions.columns`. */
export type Ask =
  | { readonly what: 'hash'; readonly file: File }
  | { readonly what: 'look'; readonly file: File }
  | {
      readonly what: 'decode'
      readonly file: File
      readonly columns: Readonly<Record<string, string>> | null
    }

/** How far decoding has come. */
export interface Progress {
  readonly bytes: number
  readonly frames: number
  readonly messages: number
}

/** What the first bytes of a file tell. */
export interface Looked {
  readonly format: CaptureFormatName | 'unknown'
  readonly reason: string
  /** The beginning of a table, when it is one. */
  readonly table: Table | null
}

/** What a decoded recording came to, ready to be shown and recorded. */
export interface Decoded {
  /** What is kept of it: its messages, redacted, one a line. */
  readonly kept: { readonly blob: Blob; readonly sha256: string; readonly name: string }
  readonly name: string
  readonly bytes: number
  readonly format: CaptureFormatName | 'unknown'
  /** Why it was recognised as that format, or why not. */
  readonly reason: string
  readonly frames: number
  readonly messages: number
  readonly incomplete: number
  readonly negative: number
  readonly units: readonly string[]
  readonly vins: readonly { readonly vin: string; readonly unit: string }[]
  readonly notVins: readonly { readonly text: string; readonly unit: string }[]
  readonly scannedUnits: number
  readonly faults: number
  readonly findings: readonly Finding[]
  /** Findings beyond those listed. */
  readonly moreFindings: number
  /** Findings that mean that something was left out, listed or not. */
  readonly leftOut: number
  readonly strip: Strip
  /** The facts to record, by what the recording is said to be. */
  readonly facts: Readonly<Record<Which, readonly IntakeFact[]>>
}

/** What the worker answers. */
export type Answer =
  | ({ readonly what: 'progress' } & Progress)
  | { readonly what: 'decoded'; readonly decoded: Decoded }
  | { readonly what: 'looked'; readonly looked: Looked }
  | { readonly what: 'hashed'; readonly sha256: string }
  | { readonly what: 'failed'; readonly why: string }
