/** @module The short forms that a command prints and a page shows: numbers and sentences. */

import type { ReasonCode, RemoteReason } from './compare.ts'
import { findingOf } from './findings.ts'
import type { Modulation } from './keyed.ts'
import type { LimitCode, RemoteMeasurement } from './types.ts'

/** One measurement in plain numbers. null: not measured, or not defined for this modulation. */
export interface RemoteSummary {
  readonly carrierHz: number | null
  readonly carrierOffsetHz: number | null
  readonly modulation: Modulation
  readonly deviationHz: number | null
  readonly symbolRate: number | null
  /** Usual lengths, most frequent first. */
  readonly pulsesUs: readonly number[]
  readonly gapsUs: readonly number[]
  readonly snrDb: number | null
  readonly driftHz: number | null
  readonly occupiedBandwidthHz: number | null
  readonly burstSeconds: number | null
  readonly bursts: number
  readonly repeats: number
  readonly clippedShare: number
  readonly otherSenders: number
  readonly limits: readonly LimitCode[]
}

/** The fields of `shearline remote --json` for one recording. */
export function summariseRemote(measurement: RemoteMeasurement): RemoteSummary {
  const sender = measurement.sender
  return {
    carrierHz: sender?.carrierHz ?? null,
    carrierOffsetHz: sender?.carrierOffsetHz ?? null,
    modulation: sender?.modulation ?? 'unsure',
    deviationHz: sender?.deviationHz ?? null,
    symbolRate: sender?.symbolRate ?? null,
    pulsesUs: sender?.pulses.map((cluster) => cluster.us) ?? [],
    gapsUs: sender?.gaps.map((cluster) => cluster.us) ?? [],
    snrDb: sender?.snrDb ?? null,
    driftHz: sender?.driftHz ?? null,
    occupiedBandwidthHz: sender?.occupiedBandwidthHz ?? null,
    burstSeconds: sender?.bursts.seconds ?? null,
    bursts: sender?.bursts.count ?? 0,
    repeats: sender?.bursts.repeats ?? 0,
    clippedShare: sender?.clippedShare ?? 0,
    otherSenders: measurement.others.length,
    limits: measurement.limits,
  }
}

type Params = RemoteReason['params']

const SIDES: Readonly<Record<RemoteReason['side'], string>> = {
  both: 'Both recordings',
  original: 'Original',
  new: 'New remote',
}

const COMPARED: Readonly<Record<Exclude<ReasonCode, LimitCode>, (params: Params) => string>> = {
  modulation: (p) =>
    p.original === p.new
      ? `Both are keyed by ${p.original}.`
      : `The original is keyed by ${p.original}, the new one by ${p.new}.`,
  'modulation-unknown': (p) => `How it is keyed is not clear (original ${p.original}, new ${p.new}).`,
  carrier: (p) => `The carriers are ${kilohertz(Math.abs(Number(p.differenceHz)))} apart.`,
  'carrier-unknown': () => 'A centre frequency is not known, so the carriers cannot be compared.',
  'carrier-drifted': (p) =>
    `The new carrier is off by ${kilohertz(Number(p.differenceHz))}: a narrow receiver may hear it from near only, even with a fresh cell.`,
  timing: (p) =>
    p.unmatched === 'both'
      ? `Each has pulse lengths that the other has not (original ${p.originalUs} us, new ${p.newUs} us).`
      : `Pulse and gap lengths differ by ${p.percent} % (original ${p.originalUs} us, new ${p.newUs} us).`,
  'timing-part': (p) =>
    `Only a part of the lengths can be compared (original ${p.originalUs} us, new ${p.newUs} us).`,
  deviation: (p) => `The deviations differ by ${p.percent} %.`,
  'symbol-rate': (p) =>
    `The symbol rates differ by ${p.percent} % (original ${p.original}, new ${p.new} a second).`,
  'other-sender-matches': () => 'A weaker sender in one recording matches the other recording.',
}

/** One reason as an English sentence; a page translates by code and params. */
export function describeReason(reason: RemoteReason): string {
  const compared = (COMPARED as Partial<Record<ReasonCode, (params: Params) => string>>)[reason.code]
  if (compared !== undefined) return compared(reason.params)
  return `${SIDES[reason.side]}: ${findingOf(reason.code as LimitCode, reason.params).what}`
}

function kilohertz(hertz: number): string {
  return `${Math.round(hertz / 100) / 10} kHz`
}
