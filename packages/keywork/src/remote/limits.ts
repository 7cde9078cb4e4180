/** @module What keeps a measurement from deciding anything. */

import { countClipped } from './clipping.ts'
import type { MeasuringContext } from './sender-measurement.ts'
import { looksMixed, type SenderTiming } from './sender-timing.ts'
import { type Sender, spansOf } from './senders.ts'
import type { LimitCode, SenderMeasurement } from './types.ts'

/** A carrier further from the centre than this share of the sample rate is at the filter's edge. */
export const OFF_CENTRE_SHARE = 0.38
/** The outer tone of a frequency shift may lie this far out before it leaves the band. */
const TONE_OFF_CENTRE_SHARE = 0.42
/** Below this the measurement decides nothing. */
export const LEAST_SNR_DB = 6
/** Share of clipped values while up beyond which level and timing are guesses. */
export const MOST_CLIPPED = 0.9
/** Quiet that is clipped too leaves no room for a signal. */
const MOST_QUIET_CLIPPED = 0.1
/** A further sender with this share of the strongest's weight could be the remote as well. */
const RIVAL_WEIGHT = 0.5
const FEW_SPANS = 6

/** Collects the limits of the strongest sender. `overlapped`: another keyed sender lies over it. */
export function limitsOf(
  context: MeasuringContext,
  main: Sender,
  timing: SenderTiming,
  measured: SenderMeasurement,
  others: readonly Sender[],
  overlapped: boolean,
): readonly LimitCode[] {
  const rate = context.setting.sampleRateHz
  const limits: LimitCode[] = []
  if (measured.snrDb < LEAST_SNR_DB) limits.push('weak')
  const tone = Math.max(0, ...(measured.tonesHz ?? []).map(Math.abs))
  if (Math.abs(measured.carrierOffsetHz) > OFF_CENTRE_SHARE * rate || tone > TONE_OFF_CENTRE_SHARE * rate)
    limits.push('off-centre')
  if (measured.clippedShare > MOST_CLIPPED || quietClipped(context) > MOST_QUIET_CLIPPED)
    limits.push('clipped')
  if (overlapped || (main.modulation === 'OOK' && looksMixed(timing))) limits.push('foreign-on-top')
  const weight = main.weight * overdrive(measured.clippedShare) ** 2
  if (others.some((other) => other.weight > RIVAL_WEIGHT * weight)) limits.push('several-senders')
  if (main.modulation === 'unsure' && spansOf(main).length < FEW_SPANS) limits.push('few-pulses')
  return limits
}

/** What clipping keeps of a strong carrier: a square wave's first harmonic over its height. */
const SQUARE_HARMONIC = 4 / Math.PI

/** How much larger a clipped carrier's amplitude was than what is left of it, from the share of clipped values. */
function overdrive(clippedShare: number): number {
  const amplitude = 1 / Math.max(0.05, Math.sin((Math.PI / 2) * (1 - clippedShare)))
  return Math.max(1, amplitude / SQUARE_HARMONIC)
}

const QUIET_FRAMES_LOOKED_AT = 64

function quietClipped({ iq, rails, quiet, map }: MeasuringContext): number {
  if (rails === null) return 0
  let clipped = 0
  let values = 0
  let looked = 0
  for (let frame = 0; frame < map.frames && looked < QUIET_FRAMES_LOOKED_AT; frame += 1) {
    if (quiet.frames[frame] !== 1) continue
    const start = map.frameStart[frame] as number
    const counted = countClipped(iq.blocks, rails, start, start + map.bins)
    clipped += counted.clipped
    values += counted.values
    looked += 1
  }
  return values === 0 ? 0 : clipped / values
}

/** The number behind a limit, for its sentence. */
export function limitParams(
  sender: SenderMeasurement | null,
  code: LimitCode,
): Readonly<Record<string, number>> {
  if (sender === null) return {}
  if (code === 'weak') return { snrDb: sender.snrDb }
  if (code === 'off-centre') return { offsetHz: sender.carrierOffsetHz }
  if (code === 'clipped') return { percent: Math.round(100 * sender.clippedShare) }
  return {}
}
