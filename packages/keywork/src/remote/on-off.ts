/** @module Measures one channel as on-off keyed. */

import { type OnOffRuns, onOffRuns } from './amplitude-keying.ts'
import { type Channel, channelGain, noiseShare } from './channel.ts'
import { type Envelope, meanSquare, type Run } from './envelope.ts'
import { type ChannelFacts, type KeyedStretch, spanSeconds } from './keyed.ts'

const LEAST_PULSES = 6
/** Level up over level down. */
const LEAST_CONTRAST = 2

/** Measures pulses and gaps; `unsure` with too few of them, too little contrast, or a second tone in the gaps. */
export function measureOnOff(
  channel: Channel,
  envelope: Envelope,
  runs: readonly Run[],
  edge: number,
  base: ChannelFacts,
): KeyedStretch {
  const measured = onOffRuns(channel, runs, edge)
  const gain = Math.max(0.1, channelGain(channel, measured.carrierHz))
  const contrast = envelope.up / Math.max(1e-9, envelope.down)
  const keyed =
    runs.length >= LEAST_PULSES &&
    contrast >= LEAST_CONTRAST &&
    !secondTone(channel, envelope, measured, base)
  return {
    ...base,
    modulation: keyed ? 'OOK' : 'unsure',
    carrierHz: channel.offsetHz + measured.carrierHz,
    tonesHz: null,
    pulsesUs: measured.pulsesUs,
    gapsUs: measured.gapsUs,
    jitterUs: (0.5 * 1e6) / channel.rateHz,
    power: meanSquare(envelope.amplitude, runs, edge) / gain,
    noiseShare: noiseShare(channel) / gain,
    spans: runs.map((run, index) => ({
      ...spanSeconds(channel, run),
      carrierHz: channel.offsetHz + (measured.pulseTones[index]?.hertz ?? measured.carrierHz),
      weight: measured.pulseTones[index]?.weight ?? 0,
    })),
  }
}

/** A steady tone elsewhere in the gaps, clearly above the quiet around: one tone of two may be half out of the band. */
function secondTone(channel: Channel, envelope: Envelope, measured: OnOffRuns, base: ChannelFacts): boolean {
  const quiet = Math.sqrt((base.bandNoise ?? 0) * noiseShare(channel))
  const { gapTone } = measured
  return (
    base.bandNoise !== null &&
    envelope.down > 3 * quiet &&
    envelope.down > 0.12 * envelope.up &&
    gapTone.coherence > 0.8 &&
    Math.abs(gapTone.hertz - measured.carrierHz) > 2500
  )
}
