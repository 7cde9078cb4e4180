/** @module What is going on in one unit: its open session, silence, closed code memory and security. */

import type { RecordedTime } from '../frame/index.ts'
import type { OpenEntry, SpanEnd } from './entry.ts'
import type { Supply } from './supply.ts'

/** The states that last until something ends them. */
export const STATES = ['session', 'muted', 'codes-off', 'security-opened'] as const

/** A state that lasts. */
export type State = (typeof STATES)[number]

/** A unit, known by the identifier of its answers; or an identifier that asks and that nobody answers. */
export interface Unit {
  readonly id: string
  readonly channel: string
  readonly first: RecordedTime
  last: RecordedTime
  /** Identifiers whose requests it answered. */
  readonly askedBy: Set<string>
  requests: number
  answers: number
  refusals: number
  /** Last request to it or answer of it: S3 runs from here. */
  lastTouched: RecordedTime
  readonly open: Map<State, OpenEntry>
  transfer: OpenEntry | undefined
  /** Refusals and broken messages told once each. */
  readonly repeated: Map<string, OpenEntry>
  supply: Supply | undefined
}

/** A unit of which nothing has been heard before. */
export function newUnit(id: string, channel: string, time: RecordedTime): Unit {
  return {
    id,
    channel,
    first: time,
    last: time,
    askedBy: new Set(),
    requests: 0,
    answers: 0,
    refusals: 0,
    lastTouched: time,
    open: new Map(),
    transfer: undefined,
    repeated: new Map(),
    supply: undefined,
  }
}

/** Closes one lasting state. */
export function close(unit: Unit, state: State, time: RecordedTime, endedBy: SpanEnd): void {
  const entry = unit.open.get(state)
  if (entry === undefined) return
  entry.to = time
  entry.endedBy = endedBy
  unit.open.delete(state)
}

/** Closes all that a session's end or a reset ends (ISO 14229-1: the default session restores all of it). */
export function closeAll(unit: Unit, time: RecordedTime, endedBy: SpanEnd): void {
  close(unit, 'session', time, endedBy)
  const others = endedBy === 'reset' || endedBy === 'time-out' || endedBy === 'recording-end'
  for (const state of STATES) close(unit, state, time, others ? endedBy : 'session-end')
}
