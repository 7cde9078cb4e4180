/** @module Are two remotes of the same radio family? */

import type { DurationCluster } from './durations.ts'
import { limitParams } from './limits.ts'
import { timingDifference } from './timing.ts'
import type { LimitCode, RemoteMeasurement, SenderMeasurement } from './types.ts'

/** `same`: nothing measured speaks against one family. `unsure`: the recordings do not decide. */
export type RemoteVerdict = 'same' | 'different' | 'unsure'

/** What was compared or what stood in the way. */
export type ReasonCode =
  | LimitCode
  | 'modulation'
  | 'modulation-unknown'
  | 'carrier'
  | 'carrier-unknown'
  | 'carrier-drifted'
  | 'timing'
  | 'timing-part'
  | 'deviation'
  | 'symbol-rate'
  | 'other-sender-matches'

/** One reason: which way it points, and its numbers for the sentence. `side` names the recording it is about. */
export interface RemoteReason {
  readonly code: ReasonCode
  readonly points: RemoteVerdict
  readonly side: 'both' | 'original' | 'new'
  readonly params: Readonly<Record<string, string | number>>
}

export interface RemoteComparison {
  readonly verdict: RemoteVerdict
  readonly reasons: readonly RemoteReason[]
}

/** Up to the first number: same. Up to the second: unsure. Beyond: different. */
export type Tolerance = readonly [same: number, unsure: number]

/**
 * First tolerances, from a plain estimator tuned on 325 recordings of one receiver; almost all of its same-device pairs
 * are one unit on one day (common practice, no source). Hertz, or shares of the larger value.
 */
export const TOLERANCES: Readonly<
  Record<'ookCarrierHz' | 'ookTiming' | 'fskCarrierHz' | 'fskDeviation' | 'fskSymbolRate', Tolerance>
> = {
  ookCarrierHz: [100_000, 200_000],
  ookTiming: [0.1, 0.16],
  fskCarrierHz: [30_000, 60_000],
  fskDeviation: [0.2, 0.4],
  fskSymbolRate: [0.035, 0.08],
}

/**
 * A carrier this far off within the tolerance still is worth a word: a narrow receiver in the car hears such a remote
 * from near only, as if its cell were flat. Share of the tolerance (common practice, no source).
 */
const DRIFTED_SHARE = 0.35

/** Compares the remotes of two recordings. Limits of either recording force `unsure`. */
export function compareRemotes(original: RemoteMeasurement, fresh: RemoteMeasurement): RemoteComparison {
  const reasons: RemoteReason[] = [...limitReasons(original, 'original'), ...limitReasons(fresh, 'new')]
  const a = original.sender
  const b = fresh.sender
  if (a === null || b === null) return { verdict: 'unsure', reasons }
  const forced = reasons.length > 0
  const compared = compareSenders(a, b)
  reasons.push(...compared)
  let verdict: RemoteVerdict = forced ? 'unsure' : verdictOf(compared)
  if (verdict === 'different' && anotherMatches(original, fresh)) {
    verdict = 'unsure'
    reasons.push({ code: 'other-sender-matches', points: 'unsure', side: 'both', params: {} })
  }
  return { verdict, reasons }
}

function limitReasons(measurement: RemoteMeasurement, side: 'original' | 'new'): readonly RemoteReason[] {
  return measurement.limits.map((code) => ({
    code,
    points: 'unsure',
    side,
    params: limitParams(measurement.sender, code),
  }))
}

function verdictOf(reasons: readonly RemoteReason[]): RemoteVerdict {
  if (reasons.some((reason) => reason.points === 'different')) return 'different'
  return reasons.some((reason) => reason.points === 'unsure') ? 'unsure' : 'same'
}

/** A weaker sender of one recording fits the other recording's: then the strongest may not have been the remote. */
function anotherMatches(original: RemoteMeasurement, fresh: RemoteMeasurement): boolean {
  const matches = (one: SenderMeasurement | null, others: readonly SenderMeasurement[]): boolean =>
    one !== null && others.some((other) => verdictOf(compareSenders(one, other)) === 'same')
  return matches(original.sender, fresh.others) || matches(fresh.sender, original.others)
}

/** Every reason that two senders give, whichever way it points. */
function compareSenders(a: SenderMeasurement, b: SenderMeasurement): readonly RemoteReason[] {
  const modulation = compareModulation(a, b)
  const fsk = a.modulation === '2-FSK' || b.modulation === '2-FSK'
  const carrier = compareCarrier(a, b, fsk ? TOLERANCES.fskCarrierHz : TOLERANCES.ookCarrierHz)
  if (modulation.points !== 'same') return [modulation, ...carrier]
  return a.modulation === '2-FSK'
    ? [modulation, ...carrier, ...compareShift(a, b)]
    : [modulation, ...carrier, compareTiming(a, b, TOLERANCES.ookTiming)]
}

function compareModulation(a: SenderMeasurement, b: SenderMeasurement): RemoteReason {
  const params = { original: a.modulation, new: b.modulation }
  if (a.modulation === 'unsure' || b.modulation === 'unsure')
    return { code: 'modulation-unknown', points: 'unsure', side: 'both', params }
  return {
    code: 'modulation',
    points: a.modulation === b.modulation ? 'same' : 'different',
    side: 'both',
    params,
  }
}

function compareCarrier(a: SenderMeasurement, b: SenderMeasurement, tolerance: Tolerance): RemoteReason[] {
  if (a.carrierHz === null || b.carrierHz === null)
    return [{ code: 'carrier-unknown', points: 'unsure', side: 'both', params: {} }]
  const differenceHz = b.carrierHz - a.carrierHz
  const params = { originalHz: a.carrierHz, newHz: b.carrierHz, differenceHz }
  const points = judge(Math.abs(differenceHz), tolerance)
  const reasons: RemoteReason[] = [{ code: 'carrier', points, side: 'both', params }]
  if (points === 'same' && Math.abs(differenceHz) > DRIFTED_SHARE * tolerance[0])
    reasons.push({ code: 'carrier-drifted', points: 'same', side: 'new', params })
  return reasons
}

function judge(value: number, [same, unsure]: Tolerance): RemoteVerdict {
  return value <= same ? 'same' : value <= unsure ? 'unsure' : 'different'
}

function shareApart(a: number, b: number): number {
  return Math.abs(a - b) / Math.max(a, b)
}

function compareShift(a: SenderMeasurement, b: SenderMeasurement): RemoteReason[] {
  const deviation = shareApart(a.deviationHz ?? 0, b.deviationHz ?? 0)
  const reasons: RemoteReason[] = [
    {
      code: 'deviation',
      points: judge(deviation, TOLERANCES.fskDeviation),
      side: 'both',
      params: { originalHz: a.deviationHz ?? 0, newHz: b.deviationHz ?? 0, percent: percent(deviation) },
    },
  ]
  // Pulse widths on no common grid have no symbol rate; the widths themselves are compared.
  if (a.symbolRate === null || b.symbolRate === null)
    return [...reasons, compareTiming(a, b, TOLERANCES.fskSymbolRate)]
  const rate = shareApart(a.symbolRate, b.symbolRate)
  reasons.push({
    code: 'symbol-rate',
    points: judge(rate, TOLERANCES.fskSymbolRate),
    side: 'both',
    params: { original: a.symbolRate, new: b.symbolRate, percent: percent(rate) },
  })
  return reasons
}

function compareTiming(a: SenderMeasurement, b: SenderMeasurement, tolerance: Tolerance): RemoteReason {
  const { difference, unmatched } = timingDifference(a, b)
  const params = {
    originalUs: words(a.pulses),
    newUs: words(b.pulses),
    percent: percent(difference),
  }
  // The share is that of the lengths that have a counterpart: it does not say why these differ.
  if (unmatched === 'both')
    return { code: 'timing', points: 'different', side: 'both', params: { ...params, unmatched } }
  const points = judge(difference, tolerance)
  if (unmatched !== null && points !== 'different')
    return { code: 'timing-part', points: 'unsure', side: unmatched, params }
  return { code: 'timing', points, side: 'both', params }
}

function words(clusters: readonly DurationCluster[]): string {
  return clusters.map((cluster) => Math.round(cluster.us)).join(' / ')
}

function percent(share: number): number {
  return Number.isFinite(share) ? Math.round(1000 * share) / 10 : 100
}
