/** @module The blocks of pcapng that matter here: interface descriptions and packets (draft-ietf-opsawg-pcapng). */

import { read32 } from './pcap.ts'

/** One interface: its name, its link type, and the clock its time stamps count by. */
export interface Interface {
  readonly channel: string
  readonly linkType: number
  readonly snapshotLength: number
  /** Ticks of the time stamp in one second. */
  readonly ticksPerSecond: bigint
  readonly decimals: number
  readonly offsetSeconds: number
  /** Nanoseconds of one tick; `undefined` where that is no whole number. */
  readonly nanosecondsPerTick: number | undefined
  /** The last upper word of a time that was read: its whole seconds, and the ticks left over. */
  readonly base: { high: number; seconds: number; rest: number }
}

/** A time as its block states it: the upper and the lower 32 bits, unsigned. */
export interface Ticks {
  readonly high: number
  readonly low: number
}

/** A packet as its block holds it. */
export interface PacketFields {
  /** Number of the interface. */
  readonly index: number
  /** Time in ticks of the interface's clock; `undefined` when the block states none. */
  readonly ticks: Ticks | undefined
  /** Packet bytes with the padding and options after them. */
  readonly data: Uint8Array
  readonly captured: number
  readonly original: number
}

const OPTION_END = 0
const OPTION_NAME = 2
const OPTION_RESOLUTION = 9
const OPTION_OFFSET = 14
const NANOSECONDS_PER_SECOND = 1_000_000_000n

function read16(bytes: Uint8Array, at: number, littleEndian: boolean): number {
  const a = bytes[at] as number
  const b = bytes[at + 1] as number
  return littleEndian ? (b << 8) | a : (a << 8) | b
}

/** Reads an interface description, body without the trailing length. What is missing is taken as the format's default. */
export function readInterface(body: Uint8Array, littleEndian: boolean, index: number): Interface {
  let channel = `if${index}`
  let ticksPerSecond = 1_000_000n
  let decimals = 6
  let offsetSeconds = 0
  for (let at = 8; at + 4 <= body.length; ) {
    const code = read16(body, at, littleEndian)
    const size = read16(body, at + 2, littleEndian)
    if (code === OPTION_END || at + 4 + size > body.length) break
    const value = body.subarray(at + 4, at + 4 + size)
    if (code === OPTION_NAME) channel = nameFrom(value) || channel
    if (code === OPTION_RESOLUTION && size >= 1) {
      const resolution = value[0] as number
      const power = resolution & 0x7f
      const binary = (resolution & 0x80) !== 0
      ticksPerSecond = binary ? 1n << BigInt(power) : 10n ** BigInt(power)
      decimals = Math.min(9, binary ? Math.ceil(power * Math.log10(2)) : power)
    }
    if (code === OPTION_OFFSET && size >= 8) offsetSeconds = Number(readSigned64(value, littleEndian))
    at += 4 + Math.ceil(size / 4) * 4
  }
  return {
    channel,
    linkType: body.length >= 2 ? read16(body, 0, littleEndian) : 0,
    snapshotLength: body.length >= 8 ? read32(body, 4, littleEndian) : 0,
    ticksPerSecond,
    decimals,
    offsetSeconds,
    nanosecondsPerTick:
      NANOSECONDS_PER_SECOND % ticksPerSecond === 0n
        ? Number(NANOSECONDS_PER_SECOND / ticksPerSecond)
        : undefined,
    base: { high: -1, seconds: 0, rest: 0 },
  }
}

/** Reads an enhanced packet block, or the obsolete one, whose interface number has 16 bits; `undefined` when cut. */
export function readPacket(
  body: Uint8Array,
  littleEndian: boolean,
  obsolete: boolean,
): PacketFields | undefined {
  if (body.length < 20) return undefined
  return {
    index: obsolete ? read16(body, 0, littleEndian) : read32(body, 0, littleEndian),
    ticks: { high: read32(body, 4, littleEndian), low: read32(body, 8, littleEndian) },
    data: body.subarray(20),
    captured: read32(body, 12, littleEndian),
    original: read32(body, 16, littleEndian),
  }
}

/** Reads a simple packet block: no time stamp, always the first interface; `undefined` when cut. */
export function readSimplePacket(
  body: Uint8Array,
  littleEndian: boolean,
  snapshotLength: number,
): PacketFields | undefined {
  if (body.length < 4) return undefined
  const original = read32(body, 0, littleEndian)
  const captured = Math.min(original, snapshotLength === 0 ? original : snapshotLength, body.length - 4)
  return { index: 0, ticks: undefined, data: body.subarray(4), captured, original }
}

/** Nanoseconds of a second; a whole number of them per tick divides it. */
const NANOSECONDS = 1_000_000_000

/** Sets a time from ticks of an interface's clock, exact to the nanosecond. */
export function setTime(
  time: { seconds: number; nanoseconds: number; decimals: number },
  ticks: Ticks | undefined,
  from: Interface,
): void {
  time.decimals = from.decimals
  if (ticks === undefined) return
  if (from.nanosecondsPerTick === undefined) {
    setAnyTime(time, ticks, from)
    return
  }
  const rest = ticksOverSeconds(ticks.high, from) + ticks.low
  const perSecond = NANOSECONDS / from.nanosecondsPerTick
  const more = Math.floor(rest / perSecond)
  time.seconds = from.base.seconds + more + from.offsetSeconds
  time.nanoseconds = (rest - more * perSecond) * from.nanosecondsPerTick
}

/** Of an upper word's ticks those beyond whole seconds; the seconds are in the interface's base then. */
function ticksOverSeconds(high: number, { base, ticksPerSecond }: Interface): number {
  // The upper word changes every few seconds at most: only then is there long division.
  if (base.high !== high) {
    const upper = BigInt(high) << 32n
    base.high = high
    base.seconds = Number(upper / ticksPerSecond)
    base.rest = Number(upper % ticksPerSecond)
  }
  return base.rest
}

/** The most the lower word of a time can be in the same second, under the same upper word. */
export function lastOfSecond(high: number, low: number, from: Interface): number {
  if (from.nanosecondsPerTick === undefined) {
    const upper = BigInt(high) << 32n
    const next = ((upper | BigInt(low)) / from.ticksPerSecond + 1n) * from.ticksPerSecond
    return Math.min(Number(next - upper - 1n), 0xffff_ffff)
  }
  const over = ticksOverSeconds(high, from)
  const perSecond = NANOSECONDS / from.nanosecondsPerTick
  return Math.min((Math.floor((over + low) / perSecond) + 1) * perSecond - over - 1, 0xffff_ffff)
}

function setAnyTime(time: { seconds: number; nanoseconds: number }, ticks: Ticks, from: Interface): void {
  const all = (BigInt(ticks.high) << 32n) | BigInt(ticks.low)
  const seconds = all / from.ticksPerSecond
  const rest = all - seconds * from.ticksPerSecond
  time.seconds = Number(seconds) + from.offsetSeconds
  time.nanoseconds = Number((rest * NANOSECONDS_PER_SECOND) / from.ticksPerSecond)
}

/** An interface name: UTF-8 by the format, shown only where it is plain ASCII. */
function nameFrom(bytes: Uint8Array): string {
  let name = ''
  for (const byte of bytes) {
    if (byte === 0) break
    if (byte > 0x20 && byte < 0x7f) name += String.fromCharCode(byte)
  }
  return name
}

function readSigned64(bytes: Uint8Array, littleEndian: boolean): bigint {
  const low = BigInt(read32(bytes, littleEndian ? 0 : 4, littleEndian))
  const high = BigInt(read32(bytes, littleEndian ? 4 : 0, littleEndian))
  return BigInt.asIntN(64, (high << 32n) | low)
}
