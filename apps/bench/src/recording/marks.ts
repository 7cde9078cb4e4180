/** @module What a strip marks, and in which shape: the same shapes on the canvas, in the legend and in the small strip. */
import type { TimelineEntry, TimelineWhat } from '@shearline/bus'
import { secondsAfter } from './kept-message.ts'
import type { Strip } from './strip.ts'

/** Kinds of marks, in the order of the legend. */
export const markKinds = ['reset', 'cleared', 'muted', 'unlocked', 'written', 'routine'] as const
export type MarkKind = (typeof markKinds)[number]

/** Outlines around 0 0, about 18 wide. */
export const markShapes: Readonly<Record<MarkKind, string>> = {
  reset: 'M0 -9 7 0 0 9 -7 0Z',
  cleared: 'M-6 -6 6 6M6 -6-6 6',
  muted: 'M-7 -3H7V3H-7Z',
  unlocked: 'M-6 0A6 6 0 1 1 6 0A6 6 0 1 1 -6 0',
  written: 'M-6 -7H6V7H-6ZM-6 0H6',
  routine: 'M-6 -7 7 0-6 7Z',
}

/** Sessions, refusals, gaps and the supply have their own place in the picture; the rest is no event. */
const kindOf: Readonly<Record<TimelineWhat, MarkKind | null>> = {
  addressed: null,
  session: null,
  'supply-voltage': null,
  refused: null,
  'security-refused': null,
  incomplete: null,
  'read-out': null,
  authentication: 'unlocked',
  'security-opened': 'unlocked',
  reset: 'reset',
  cleared: 'cleared',
  muted: 'muted',
  'codes-off': 'muted',
  written: 'written',
  routine: 'routine',
  gap: null,
}

/** A mark on the strip; seconds count from the strip's start. */
export interface Mark {
  readonly kind: MarkKind
  readonly from: number
  readonly to: number
  readonly unit: string
  readonly detail: string
}

/** An open session of one unit. */
export interface Band {
  readonly unit: string
  readonly from: number
  readonly to: number
  readonly detail: string
}

/** Supply volts one unit told within a stretch of time. */
export interface SupplyStretch {
  readonly unit: string
  readonly from: number
  readonly to: number
  readonly low: number
  readonly high: number
}

/** Sessions that share one lane of the picture. */
export interface Lane {
  readonly units: readonly string[]
  readonly bands: readonly Band[]
}

/** What a strip shows beside its density. */
export interface StripMarks {
  readonly marks: readonly Mark[]
  readonly lanes: readonly Lane[]
  readonly supply: readonly SupplyStretch[]
  /** Stretches without a message. */
  readonly gaps: readonly { readonly from: number; readonly to: number }[]
  /** Refusals told once per unit and reason, with their number. */
  readonly refusals: readonly (TimelineEntry & { readonly fromSeconds: number; readonly toSeconds: number })[]
}

/** More lanes than these would leave no room for the density. */
export const mostLanes = 5

/** Sorts a strip's entries into what is drawn. */
export function marksOf(strip: Strip): StripMarks {
  const seconds = (time: string): number => secondsAfter(strip.start, time)
  const marks: Mark[] = []
  const bands: Band[] = []
  const supply: SupplyStretch[] = []
  const gaps: StripMarks['gaps'][number][] = []
  const refusals: StripMarks['refusals'][number][] = []
  for (const entry of strip.entries) {
    const { unit, detail, what } = entry
    const from = seconds(entry.from)
    const to = seconds(entry.to)
    const kind = kindOf[what]
    if (kind !== null) marks.push({ kind, from, to, unit, detail })
    else if (what === 'gap') gaps.push({ from, to })
    else if (what === 'session') bands.push({ unit, from, to, detail })
    else if (what === 'supply-voltage' && entry.volts !== undefined)
      supply.push({ unit, from, to, low: entry.volts.low, high: entry.volts.high })
    else if (what === 'refused' || what === 'security-refused')
      refusals.push({ ...entry, fromSeconds: from, toSeconds: to })
  }
  return { marks, lanes: lanesOf(bands), supply, gaps, refusals }
}

/** One lane per unit, or neighbouring units together where there are more than fit. */
function lanesOf(bands: readonly Band[]): Lane[] {
  const units = [...new Set(bands.map((band) => band.unit))].sort()
  const perLane = Math.max(1, Math.ceil(units.length / mostLanes))
  const lanes: Lane[] = []
  for (let first = 0; first < units.length; first += perLane) {
    const group = units.slice(first, first + perLane)
    lanes.push({ units: group, bands: bands.filter((band) => group.includes(band.unit)) })
  }
  return lanes
}
