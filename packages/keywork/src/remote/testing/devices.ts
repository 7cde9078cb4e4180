/** @module Random invented remotes and receivers, spread over what short-range senders do. */

import { Random } from './random.ts'
import type { Coding, Device, Receiver } from './synthesize.ts'

/** Steps with the square of the ratio: as many short lengths as long ones. */
function logBetween(random: Random, low: number, high: number): number {
  return low * (high / low) ** random.next()
}

/** One of the codings in use for on-off keyed senders. */
export function ookCoding(random: Random): Coding {
  const kind = random.pick(['pwm', 'pwm-gap', 'ppm', 'manchester', 'pwm', 'manchester'] as const)
  switch (kind) {
    case 'pwm': {
      const short = logBetween(random, 120, 700)
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
      return { kind, half: logBetween(random, 90, 800) }
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
    bits: random.whole(24, 80),
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
  const manchester = random.chance(0.5)
  const symbol = logBetween(random, 50, 500)
  const rate = 1e6 / symbol
  const deviationHz = Math.max(2000, Math.min(50_000, rate * logBetween(random, 0.7, 8)))
  return {
    modulation: '2-FSK',
    coding: manchester ? { kind: 'manchester', half: symbol } : { kind: 'nrz', symbol },
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

/** A clean receiver: at least 10 dB, the band's centre within reach, seldom anything else on the air. */
export function cleanReceiver(random: Random, bandHz: number): Receiver {
  const sampleRateHz = random.pick([250_000, 250_000, 250_000, 1_000_000, 1_024_000, 2_048_000, 2_400_000])
  const hot = random.chance(0.5)
  return {
    sampleRateHz,
    centreHz: bandHz,
    format: random.pick(['cu8', 'cu8', 'cs8', 'cs16', 'cf32'] as const),
    snrDb: random.between(10, 35),
    level: hot ? random.between(0.8, 2.5) : random.between(0.15, 0.8),
    offset: random.between(-0.02, 0.02),
    spurs: Array.from({ length: random.whole(0, 3) }, () => [
      random.between(-0.5, 0.5) * sampleRateHz,
      random.between(18, 40),
    ]),
    pumpDb: random.chance(0.2) ? random.between(3, 10) : 0,
    leadSeconds: random.between(0.03, 0.12),
    foreign: [],
  }
}

/** The bands recordings are made in. */
export const BANDS_HZ: readonly number[] = [315e6, 433.92e6, 868.3e6]

/** A fresh generator for one numbered case. */
export function caseRandom(seed: number, number: number): Random {
  return new Random(Math.imul(seed, 1_000_003) + Math.imul(number, 7919))
}
