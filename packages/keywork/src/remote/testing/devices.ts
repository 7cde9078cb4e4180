/** @module Random invented remotes and receivers, spread over what short-range senders do. */

import { Random } from './random.ts'
import type { Coding, Device, Foreign, Receiver } from './synthesize.ts'

/** Steps with the square of the ratio: as many short lengths as long ones. */
function logBetween(random: Random, low: number, high: number): number {
  return low * (high / low) ** random.next()
}

/** One of the codings in use for on-off keyed senders. */
function ookCoding(random: Random): Coding {
  const kind = random.pick(['pwm', 'pwm', 'pwm-gap', 'ppm', 'manchester', 'manchester', 'nrz'] as const)
  switch (kind) {
    case 'pwm': {
      const short = logBetween(random, 80, 700)
      const ratio = random.pick([2, 2.5, 3])
      return { kind, short, long: ratio * short, period: (ratio + 1) * short }
    }
    case 'pwm-gap': {
      const short = logBetween(random, 200, 700)
      return { kind, short, long: short * random.pick([2, 3]), gap: short * random.between(1, 2.2) }
    }
    case 'ppm': {
      const pulse = logBetween(random, 200, 900)
      const short = pulse * random.between(1.5, 4.5)
      return { kind, pulse, short, long: short * random.between(1.8, 2.2) }
    }
    case 'manchester':
      return { kind, half: logBetween(random, 48, 800) }
    case 'nrz':
      return { kind, symbol: logBetween(random, 60, 600) }
  }
}

/** An on-off keyed remote near `bandHz`. */
export function ookDevice(random: Random, bandHz: number): Device {
  const coding = ookCoding(random)
  const unit = shortest(coding)
  return {
    modulation: 'OOK',
    coding,
    carrierHz: bandHz + random.between(-60_000, 60_000),
    deviationHz: 0,
    bits: coding.kind === 'nrz' ? random.whole(48, 120) : random.whole(24, 80),
    repeats: random.whole(1, 5),
    pauseUs: random.between(8_000, 15_000),
    syncUs: random.chance(0.4) ? [unit * random.between(1, 8), unit * random.between(5, 10)] : null,
    preambleBits: random.pick([0, 0, 8, 16]),
    edgeUs: Math.min(unit / 6, random.between(4, 30)),
    chirpHz: random.chance(0.3) ? random.between(-20_000, 20_000) : 0,
    driftHz: random.between(-2500, 2500),
  }
}

/** A remote that shifts its frequency. The shift fits the recorded band of 250 kS/s. */
export function fskDevice(random: Random, bandHz: number): Device {
  const coding = random.pick(['manchester', 'nrz', 'manchester', 'nrz', 'pwm'] as const)
  const symbol = logBetween(random, 25, 600)
  const rate = 1e6 / symbol
  const deviationHz = Math.max(2000, Math.min(55_000, rate * logBetween(random, 0.45, 8)))
  return {
    modulation: '2-FSK',
    coding: fskCoding(random, coding, symbol),
    carrierHz: bandHz + random.between(-25_000, 25_000),
    deviationHz,
    bits: random.whole(40, 120),
    repeats: random.whole(1, 4),
    pauseUs: random.between(8_000, 40_000),
    syncUs: null,
    preambleBits: random.pick([16, 32]),
    edgeUs: random.between(0.02, 0.25) * symbol,
    chirpHz: 0,
    driftHz: random.between(-1500, 1500),
  }
}

function fskCoding(random: Random, kind: 'manchester' | 'nrz' | 'pwm', symbol: number): Coding {
  if (kind === 'manchester') return { kind, half: symbol }
  if (kind === 'nrz') return { kind, symbol }
  const ratio = random.pick([2, 2.5, 3])
  return { kind, short: symbol, long: ratio * symbol, period: (ratio + 1) * symbol }
}

/** Shortest length of a coding. */
export function shortest(coding: Coding): number {
  switch (coding.kind) {
    case 'pwm':
      return Math.min(coding.short, coding.period - coding.long)
    case 'pwm-gap':
      return Math.min(coding.short, coding.gap)
    case 'ppm':
      return Math.min(coding.pulse, coding.short)
    case 'manchester':
      return coding.half
    case 'nrz':
      return coding.symbol
  }
}

/** The same coding with every length times `factor`. */
export function stretchCoding(coding: Coding, factor: number): Coding {
  switch (coding.kind) {
    case 'pwm':
      return {
        ...coding,
        short: coding.short * factor,
        long: coding.long * factor,
        period: coding.period * factor,
      }
    case 'pwm-gap':
      return { ...coding, short: coding.short * factor, long: coding.long * factor, gap: coding.gap * factor }
    case 'ppm':
      return {
        ...coding,
        pulse: coding.pulse * factor,
        short: coding.short * factor,
        long: coding.long * factor,
      }
    case 'manchester':
      return { ...coding, half: coding.half * factor }
    case 'nrz':
      return { ...coding, symbol: coding.symbol * factor }
  }
}

/** A clean receiver: at least 10 dB over the recorded band with all that is in it, the sender well inside the band. */
export function cleanReceiver(random: Random, bandHz: number): Receiver {
  const sampleRateHz = random.pick([250_000, 250_000, 250_000, 1_000_000, 1_024_000, 2_048_000, 2_400_000])
  const pumpDb = random.chance(0.2) ? random.between(3, 10) : 0
  const snrDb = random.between(11, 35) + pumpDb
  const hot = snrDb - pumpDb > 16 && random.chance(0.5)
  return {
    sampleRateHz,
    centreHz: bandHz,
    format: random.pick(['cu8', 'cu8', 'cs8', 'cs16', 'cf32'] as const),
    snrDb,
    level: hot ? random.between(0.8, 2.5) : random.between(0.15, 0.8),
    offset: random.between(-0.02, 0.02),
    spurs: Array.from({ length: random.whole(0, 3) }, () => [
      random.between(-0.5, 0.5) * sampleRateHz,
      random.between(22, 40),
    ]),
    pumpDb,
    leadSeconds: random.between(0.03, 0.12),
    foreign: [],
  }
}

/** A weaker sender elsewhere in the band: heard, but not on top of `device`. */
export function foreignBeside(random: Random, device: Device, receiver: Receiver): Foreign {
  const other = ookDevice(random, receiver.centreHz)
  const away = random.between(0.25, 0.45) * receiver.sampleRateHz
  const side = device.carrierHz > receiver.centreHz ? -1 : 1
  return {
    device: { ...other, carrierHz: receiver.centreHz + side * away },
    delaySeconds: random.between(-0.02, 0.1),
    relativeDb: random.between(-18, -8),
  }
}

/** A sender on the same carrier, about as strong, over most of the press. */
export function foreignOnTop(random: Random, device: Device): Foreign {
  const other = ookDevice(random, device.carrierHz)
  return {
    device: { ...other, carrierHz: device.carrierHz + random.between(-4000, 4000), repeats: 5 },
    delaySeconds: random.between(0, 0.01),
    relativeDb: random.between(-3, 3),
  }
}

/** The bands recordings are made in. */
export const BANDS_HZ: readonly number[] = [315e6, 433.92e6, 868.3e6]

/** A fresh generator for one numbered case. */
export function caseRandom(seed: number, number: number): Random {
  return new Random(Math.imul(seed, 1_000_003) + Math.imul(number, 7919))
}
