/** @module Invented senders and recordings of them: every parameter is known, so that measurements can be counted. */

import type { SampleFormat } from '../sample-format.ts'
import type { Random } from './random.ts'

/** How bits become pulses. Lengths in microseconds. */
export type Coding =
  | { readonly kind: 'pwm'; readonly short: number; readonly long: number; readonly period: number }
  | { readonly kind: 'pwm-gap'; readonly short: number; readonly long: number; readonly gap: number }
  | { readonly kind: 'ppm'; readonly pulse: number; readonly short: number; readonly long: number }
  | { readonly kind: 'manchester'; readonly half: number }
  | { readonly kind: 'nrz'; readonly symbol: number }

/** One kind of remote. Two units of it differ by their carrier only. */
export interface Device {
  readonly modulation: 'OOK' | '2-FSK'
  readonly coding: Coding
  readonly carrierHz: number
  /** 2-FSK only. */
  readonly deviationHz: number
  readonly bits: number
  readonly repeats: number
  readonly pauseUs: number
  readonly syncUs: readonly [number, number] | null
  readonly preambleBits: number
  /** Rise and fall of the transmitter, or of its frequency. */
  readonly edgeUs: number
  /** Carrier off by this at the start of each pulse, settling in `edgeUs` * 2. */
  readonly chirpHz: number
  readonly driftHz: number
  /** OOK: how far the carrier goes down in the gaps of a burst, decibels. Infinite unless given. */
  readonly extinctionDb?: number
}

/** How a recording is made. */
export interface Receiver {
  readonly sampleRateHz: number
  readonly centreHz: number
  readonly format: SampleFormat
  /** Power while up over the noise in the recorded band. */
  readonly snrDb: number
  /** Signal amplitude over full scale: above 1 it clips. */
  readonly level: number
  /** Constant part over full scale. */
  readonly offset: number
  /** Steady tones of the receiver: frequency from the centre and decibels below the signal. */
  readonly spurs: readonly (readonly [number, number])[]
  /** Noise before the press louder by this: gain that comes down with the signal. */
  readonly pumpDb: number
  readonly leadSeconds: number
  readonly foreign: readonly Foreign[]
  /** Gain at the upper end of the band over the gain at its middle, decibels. */
  readonly tiltDb?: number
}

/** A further sender: its press starts `delaySeconds` after the first one's. */
export interface Foreign {
  readonly device: Device
  readonly delaySeconds: number
  readonly relativeDb: number
}

interface Keying {
  /** Level or tone from each instant on, seconds. */
  readonly at: number[]
  readonly up: boolean[]
  /** Whether the carrier is on at all. */
  readonly on: boolean[]
  length: number
}

/** Levels of one press with fresh random content. */
function keyPress(device: Device, random: Random): Keying {
  const keying: Keying = { at: [], up: [], on: [], length: 0 }
  const add = (up: boolean, us: number, on: boolean = true): void => {
    keying.at.push(keying.length)
    keying.up.push(up)
    keying.on.push(on)
    keying.length += us / 1e6
  }
  const content = Array.from({ length: device.bits }, () => random.chance(0.5))
  const preamble = Array.from({ length: device.preambleBits }, (_, at) => at % 2 === 0)
  for (let repeat = 0; repeat < device.repeats; repeat += 1) {
    if (repeat > 0) add(false, device.pauseUs, false)
    if (device.syncUs !== null) {
      add(true, device.syncUs[0])
      add(false, device.syncUs[1], device.modulation === '2-FSK')
    }
    for (const bit of [...preamble, ...content]) addBit(device.coding, bit, add)
    if (device.coding.kind === 'ppm') add(true, device.coding.pulse)
  }
  add(false, 1, false)
  return keying
}

function addBit(coding: Coding, bit: boolean, add: (up: boolean, us: number) => void): void {
  switch (coding.kind) {
    case 'pwm': {
      const pulse = bit ? coding.long : coding.short
      add(true, pulse)
      add(false, coding.period - pulse)
      break
    }
    case 'pwm-gap':
      add(true, bit ? coding.long : coding.short)
      add(false, coding.gap)
      break
    case 'ppm':
      add(true, coding.pulse)
      add(false, bit ? coding.long : coding.short)
      break
    case 'manchester':
      add(bit, coding.half)
      add(!bit, coding.half)
      break
    case 'nrz':
      add(bit, coding.symbol)
      break
  }
}

/** Adds one press to I, Q floats: amplitude `level`, starting at `startSeconds`. */
function addPress(
  out: Float32Array,
  device: Device,
  receiver: Pick<Receiver, 'sampleRateHz' | 'centreHz' | 'tiltDb'>,
  startSeconds: number,
  level: number,
  random: Random,
): number {
  const keying = keyPress(device, random)
  const rate = receiver.sampleRateHz
  const fsk = device.modulation === '2-FSK'
  const offset = device.carrierHz - receiver.centreHz
  const rest = 10 ** (-(device.extinctionDb ?? Infinity) / 20)
  const tilt = receiver.tiltDb ?? 0
  const samples = out.length / 2
  // Edges follow the keyed level through two equal first-order lags.
  const lag = 1 - Math.exp(-1 / (rate * Math.max(1e-7, (device.edgeUs * 1e-6) / 3)))
  const chirpLag = 1 - Math.exp(-1 / (rate * Math.max(1e-7, device.edgeUs * 2e-6)))
  let phase = 2 * Math.PI * random.next()
  let index = 0
  let first = 0
  let envelope = 0
  let shiftFirst = 0
  let shift = 0
  let chirp = 0
  const from = Math.max(0, Math.floor(startSeconds * rate))
  const end = Math.min(samples, Math.ceil((startSeconds + keying.length) * rate) + Math.ceil(rate * 4e-4))
  for (let at = from; at < end; at += 1) {
    const time = at / rate - startSeconds
    while (index + 1 < keying.at.length && (keying.at[index + 1] as number) <= time) index += 1
    const up = keying.up[index] === true
    const inBurst = time >= 0 && keying.on[index] === true
    const on = inBurst && (fsk || up)
    const goal = on ? 1 : inBurst ? rest : 0
    // Within the sample in which the key changes, the level changes in part.
    first += lag * (goal - first)
    envelope += lag * (first - envelope)
    shiftFirst += lag * ((up ? 1 : -1) - shiftFirst)
    shift += lag * (shiftFirst - shift)
    chirp += on ? chirpLag * (0 - chirp) : 0.5 * (device.chirpHz - chirp)
    const drift = device.driftHz * (time / keying.length - 0.5)
    const hertz = offset + drift + chirp + (fsk ? device.deviationHz * shift : 0)
    phase += (2 * Math.PI * hertz) / rate
    if (phase > 1e5) phase %= 2 * Math.PI
    const size = level * envelope * 10 ** ((tilt * hertz) / rate / 10)
    out[2 * at] = (out[2 * at] as number) + size * Math.cos(phase)
    out[2 * at + 1] = (out[2 * at + 1] as number) + size * Math.sin(phase)
  }
  return startSeconds + keying.length
}

/** How long one press of a device lasts at most. */
export function pressSeconds(device: Device): number {
  const { coding } = device
  const bit =
    coding.kind === 'pwm'
      ? coding.period
      : coding.kind === 'pwm-gap'
        ? coding.long + coding.gap
        : coding.kind === 'ppm'
          ? coding.pulse + coding.long
          : coding.kind === 'manchester'
            ? 2 * coding.half
            : coding.symbol
  const sync = device.syncUs === null ? 0 : device.syncUs[0] + device.syncUs[1]
  return (device.repeats * ((device.bits + device.preambleBits) * bit + sync + device.pauseUs)) / 1e6
}

/** One recording of a press, as a file's bytes and as exact floats before they were stored. */
export function synthesize(device: Device, receiver: Receiver, random: Random): Uint8Array {
  const rate = receiver.sampleRateHz
  const seconds = 2 * receiver.leadSeconds + pressSeconds(device)
  const samples = Math.ceil(seconds * rate)
  const out = new Float32Array(2 * samples)
  const end = addPress(out, device, receiver, receiver.leadSeconds, receiver.level, random)
  for (const foreign of receiver.foreign) {
    const level = receiver.level * 10 ** (foreign.relativeDb / 20)
    addPress(out, foreign.device, receiver, receiver.leadSeconds + foreign.delaySeconds, level, random)
  }
  const sigma = (receiver.level * 10 ** (-receiver.snrDb / 20)) / Math.SQRT2
  const loud = 10 ** (receiver.pumpDb / 20)
  for (let at = 0; at < samples; at += 1) {
    const time = at / rate
    const noise = time < receiver.leadSeconds || time > end + 0.05 ? sigma * loud : sigma
    let i = (out[2 * at] as number) + noise * random.normal() + receiver.offset
    let q = (out[2 * at + 1] as number) + noise * random.normal() - 0.7 * receiver.offset
    for (const [hertz, below] of receiver.spurs) {
      const size = receiver.level * 10 ** (-below / 20)
      i += size * Math.cos(2 * Math.PI * hertz * time)
      q += size * Math.sin(2 * Math.PI * hertz * time)
    }
    out[2 * at] = i
    out[2 * at + 1] = q
  }
  return storeAs(out, receiver.format)
}

/** Floats of full scale one as a file's bytes, little-endian; values beyond full scale are cut off. */
export function storeAs(values: Float32Array, format: SampleFormat): Uint8Array {
  const clamp = (value: number, low: number, high: number): number => Math.max(low, Math.min(high, value))
  switch (format) {
    case 'cu8':
      return Uint8Array.from(values, (value) => clamp(Math.round(value * 127.5 + 127.5), 0, 255))
    case 'cs8':
      return new Uint8Array(
        Int8Array.from(values, (value) => clamp(Math.round(value * 128), -128, 127)).buffer,
      )
    case 'cs16':
      return new Uint8Array(
        Int16Array.from(values, (value) => clamp(Math.round(value * 32768), -32768, 32767)).buffer,
      )
    case 'cf32':
      return new Uint8Array(values.slice().buffer)
    case 'cs16be':
    case 'cf32be': {
      const bytes = storeAs(values, format === 'cs16be' ? 'cs16' : 'cf32')
      const width = format === 'cs16be' ? 2 : 4
      for (let at = 0; at < bytes.length; at += width) bytes.subarray(at, at + width).reverse()
      return bytes
    }
  }
}
