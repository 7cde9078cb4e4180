/** @module Pairs of invented remotes with a known answer, measured and compared: how often the verdict is right. */

import { compareRemotes, type RemoteVerdict } from '../compare.ts'
import { IqReader } from '../iq-reader.ts'
import { measureRemote } from '../measure.ts'
import type { RemoteMeasurement } from '../types.ts'
import {
  BANDS_HZ,
  caseRandom,
  cleanReceiver,
  foreignBeside,
  fskDevice,
  ookDevice,
  stretchCoding,
} from './devices.ts'
import type { Random } from './random.ts'
import { type Device, pressSeconds, type Receiver, synthesize } from './synthesize.ts'

/** How the second remote of a pair differs from the first. */
export type PairKind = 'same' | 'timing' | 'carrier' | 'deviation' | 'modulation'

/** One pair after measuring. */
export interface PairResult {
  readonly number: number
  readonly kind: PairKind
  readonly verdict: RemoteVerdict
  readonly devices: readonly [Device, Device]
  readonly measurements: readonly [RemoteMeasurement, RemoteMeasurement]
}

const KINDS: readonly PairKind[] = ['same', 'same', 'timing', 'timing', 'carrier', 'modulation', 'deviation']

/** Records one press of a device with a receiver and measures it. */
export function measurePress(device: Device, receiver: Receiver, random: Random): RemoteMeasurement {
  const reader = new IqReader(receiver.format)
  reader.push(synthesize(device, receiver, random))
  const { sampleRateHz, centreHz } = receiver
  return measureRemote(reader.finish(), { sampleRateHz, centreHz }).measurement
}

/** A clean recording of at most `mostSamples`, one in seven with a further sender beside the remote. */
function measureClean(device: Device, mostSamples: number, random: Random): RemoteMeasurement {
  let receiver = cleanReceiver(random, Math.round(device.carrierHz / 1e5) * 1e5)
  let press = device
  if (pressSeconds(press) * receiver.sampleRateHz > mostSamples)
    receiver = { ...receiver, sampleRateHz: 250_000 }
  while (press.repeats > 1 && pressSeconds(press) * receiver.sampleRateHz > mostSamples)
    press = { ...press, repeats: press.repeats - 1 }
  if (random.chance(0.15)) receiver = { ...receiver, foreign: [foreignBeside(random, press, receiver)] }
  return measurePress(press, receiver, random)
}

/** Makes, measures and compares the pair of one number. The same seed and number give the same pair. */
export function runPair(seed: number, number: number, mostSamples: number): PairResult {
  const random = caseRandom(seed, number)
  const kind = random.pick(KINDS)
  const fsk = kind === 'deviation' || random.chance(0.4)
  const band = random.pick(BANDS_HZ)
  const first = fsk ? fskDevice(random, band) : ookDevice(random, band)
  const second = secondDevice(first, kind, band, random)
  const a = measureClean(first, mostSamples, random)
  const b = measureClean(second, mostSamples, random)
  return {
    number,
    kind,
    verdict: compareRemotes(a, b).verdict,
    devices: [first, second],
    measurements: [a, b],
  }
}

function secondDevice(first: Device, kind: PairKind, band: number, random: Random): Device {
  const like: Device = {
    ...first,
    carrierHz: first.carrierHz + random.between(-8000, 8000),
    driftHz: first.driftHz * random.between(0.5, 1.5),
  }
  const side = random.chance(0.5) ? 1 : -1
  switch (kind) {
    case 'same':
      return like
    case 'timing': {
      const factor = random.between(1.26, 2)
      return { ...like, coding: stretchCoding(first.coding, side > 0 ? factor : 1 / factor) }
    }
    case 'carrier': {
      const apart = first.modulation === '2-FSK' ? random.between(75e3, 300e3) : random.between(220e3, 600e3)
      return { ...like, carrierHz: first.carrierHz + side * apart }
    }
    case 'deviation':
      return { ...like, deviationHz: first.deviationHz * (first.deviationHz > 14_000 ? 0.5 : 2) }
    case 'modulation':
      return first.modulation === '2-FSK' ? ookDevice(random, band) : fskDevice(random, band)
  }
}

/** Share of pairs with each verdict, by kind. */
export type PairTable = Readonly<Record<PairKind, Readonly<Record<RemoteVerdict, number>>>>

/** Counts results. */
export function tabulate(results: readonly PairResult[]): PairTable {
  const table: Record<PairKind, Record<RemoteVerdict, number>> = {
    same: { same: 0, unsure: 0, different: 0 },
    timing: { same: 0, unsure: 0, different: 0 },
    carrier: { same: 0, unsure: 0, different: 0 },
    deviation: { same: 0, unsure: 0, different: 0 },
    modulation: { same: 0, unsure: 0, different: 0 },
  }
  for (const { kind, verdict } of results) table[kind][verdict] += 1
  return table
}

/** Modulation measured against modulation sent, over both recordings of all pairs. */
export function modulationCounts(results: readonly PairResult[]): {
  readonly right: number
  readonly unsure: number
  readonly wrong: number
} {
  let right = 0
  let unsure = 0
  let wrong = 0
  for (const { devices, measurements } of results) {
    for (const [at, measurement] of measurements.entries()) {
      const measured = measurement.sender?.modulation ?? 'unsure'
      if (measured === devices[at]?.modulation) right += 1
      else if (measured === 'unsure') unsure += 1
      else wrong += 1
    }
  }
  return { right, unsure, wrong }
}
