/** @module On-off keying: pulses, gaps and the carrier inside the pulses. */

import type { Channel } from './channel.ts'
import type { Run } from './envelope.ts'

/** Frequency and strength of one run. */
export interface RunTone {
  readonly hertz: number
  readonly weight: number
  /** 0 noise ... 1 one steady tone. */
  readonly coherence: number
}

/**
 * Mean phase advance over the middle of a span (values `from` to `to`, `edge` left out at both ends, at most a
 * quarter of it). Unlike the most frequent value it is not pulled aside by clipping.
 */
export function toneOf(channel: Channel, from: number, to: number, edge: number): RunTone {
  const out = Math.min(edge, (to - from) / 4)
  const first = Math.max(1, Math.ceil(from + out))
  const last = Math.min(channel.samples - 1, Math.floor(to - out))
  let re = 0
  let im = 0
  let all = 0
  for (let at = first; at <= last; at += 1) {
    const i = channel.z[2 * at] as number
    const q = channel.z[2 * at + 1] as number
    const i0 = channel.z[2 * at - 2] as number
    const q0 = channel.z[2 * at - 1] as number
    re += i * i0 + q * q0
    im += q * i0 - i * q0
    all += i * i + q * q
  }
  const weight = Math.hypot(re, im)
  return {
    hertz: (Math.atan2(im, re) * channel.rateHz) / (2 * Math.PI),
    weight,
    coherence: all > 0 ? weight / all : 0,
  }
}

/** Pulses and gaps of one stretch in microseconds, and the tones in them (from the channel's middle). */
export interface OnOffRuns {
  readonly pulsesUs: readonly number[]
  readonly gapsUs: readonly number[]
  readonly pulseTones: readonly RunTone[]
  readonly carrierHz: number
  /** Tone heard in the gaps: a second transmitter tone when it is coherent. */
  readonly gapTone: RunTone
}

/** Measures runs that are up as pulses, what lies between as gaps. */
export function onOffRuns(channel: Channel, runs: readonly Run[], edge: number): OnOffRuns {
  const us = 1e6 / channel.rateHz
  const pulseTones = runs.map((run) => toneOf(channel, run.from, run.to, edge))
  const gaps = runs.slice(1).map((run, at) => ({ from: (runs[at] as Run).to, to: run.from }))
  const gapTones = gaps
    .filter((gap) => gap.to - gap.from > 4 * edge)
    .map((gap) => toneOf(channel, gap.from, gap.to, edge))
  return {
    pulsesUs: runs.map((run) => (run.to - run.from) * us),
    gapsUs: gaps.map((gap) => (gap.to - gap.from) * us),
    pulseTones,
    carrierHz: meanTone(pulseTones).hertz,
    gapTone: meanTone(gapTones),
  }
}

/** Mean of tones by their weight. */
export function meanTone(tones: readonly RunTone[]): RunTone {
  let hertz = 0
  let weight = 0
  let coherence = 0
  for (const tone of tones) {
    hertz += tone.hertz * tone.weight
    coherence += tone.coherence * tone.weight
    weight += tone.weight
  }
  if (weight <= 0) return { hertz: 0, weight: 0, coherence: 0 }
  return { hertz: hertz / weight, weight, coherence: coherence / weight }
}
