/** @module One line of the timeline, as data for a picture. */

import type { RecordedTime } from '../frame/index.ts'

/** What a line of the timeline tells. Spans: addressed, session, muted, codes-off, security-opened, gap, transfers. */
export type TimelineWhat =
  | 'addressed'
  | 'session'
  | 'muted'
  | 'codes-off'
  | 'security-opened'
  | 'security-refused'
  | 'authentication'
  | 'reset'
  | 'cleared'
  | 'written'
  | 'read-out'
  | 'routine'
  | 'refused'
  | 'incomplete'
  | 'supply-voltage'
  | 'gap'

/**
 * Why a span ended. `time-out`: nothing was asked for S3 (5 s), so the unit fell back by itself (ISO 14229-2); nothing
 * on the wire says so. `recording-end`: it was still open.
 */
export type SpanEnd = 'asked' | 'replaced' | 'session-end' | 'reset' | 'time-out' | 'recording-end'

/** One line. `from` and `to` are seconds as decimal strings, as in the recording; equal for a point in time. */
export interface TimelineEntry {
  readonly from: string
  readonly to: string
  readonly channel: string
  /** Identifier of the unit's answers; of the request when nobody was to answer (`proof: 'asked'`); empty for a gap. */
  readonly unit: string
  readonly what: TimelineWhat
  /** The standard's word for it: session, reset type, identifier, refusal. Never content that was written. */
  readonly detail: string
  /** Whether the unit confirmed it, or it was only asked for with the answer suppressed. */
  readonly proof: 'answered' | 'asked'
  readonly endedBy?: SpanEnd
  /** How often, where equal things are told once. */
  readonly times?: number
  /** Lowest and highest supply voltage in the span. */
  readonly volts?: { readonly low: number; readonly high: number }
  /** Messages of an addressed unit. */
  readonly counts?: { readonly requests: number; readonly answers: number; readonly refusals: number }
}

/** A line while it is being made. */
export interface OpenEntry {
  readonly from: RecordedTime
  to: RecordedTime
  readonly channel: string
  readonly unit: string
  readonly what: TimelineWhat
  readonly detail: string
  readonly proof: 'answered' | 'asked'
  endedBy?: SpanEnd
  times?: number
  volts?: { low: number; high: number }
  counts?: { requests: number; answers: number; refusals: number }
}
