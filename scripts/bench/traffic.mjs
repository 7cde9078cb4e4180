/** @module What 60 invented modules and a tester say on one bus: who speaks when, and with which bytes. */

import { Random } from './random.mjs'

const MODULES = 60
const MICROSECONDS_PER_BIT = 2 // 500 kbit/s
/** Bits of a classic frame without data (ISO 11898-1, 11 and 29 bits, with the gap after it) and the usual stuff bits. */
const OVERHEAD_BITS = { standard: 47, extended: 67 }
const STUFFING = 1.08

/** How many microseconds a frame holds the bus. */
export function frameMicroseconds(extended, length) {
  const bits = (extended ? OVERHEAD_BITS.extended : OVERHEAD_BITS.standard) + 8 * length
  return Math.round(bits * STUFFING * MICROSECONDS_PER_BIT)
}

/** Periods of the plain messages: every module sends two, some three. Together about 70 % of 500 kbit/s. */
const PERIODS_MILLISECONDS = [
  ...Array(9).fill(10),
  ...Array(26).fill(20),
  ...Array(12).fill(50),
  ...Array(38).fill(100),
  ...Array(20).fill(200),
  ...Array(16).fill(500),
  ...Array(15).fill(1000),
]

/** The plain messages, each ready to be sent at `due` (microseconds). One in eight has a 29-bit identifier. */
export function plainTraffic(random) {
  return PERIODS_MILLISECONDS.map((period, index) => {
    const extended = index % 8 === 7
    const length = index % 5 === 4 ? random.between(2, 8) : 8
    return {
      id: extended ? 0x0cf00000 + index * 0x101 : 0x080 + index * 11,
      extended,
      period: period * 1000,
      due: random.between(0, period * 1000),
      data: Uint8Array.from({ length: 8 }, () => random.between(0, 256)),
      length,
      count: 0,
    }
  })
}

/** The bytes of a plain message's next frame: a signal that creeps, one that jumps, a counter, a sum. */
export function nextPlain(message, random) {
  const { data, length } = message
  const jump = random.bits()
  message.count = (message.count + 1) & 15
  data[0] = (data[0] + (jump & 3)) & 0xff
  if (length > 4) {
    data[2] = (jump >>> 8) & 0xff
    data[3] = (jump >>> 16) & 0xff
  }
  data[length - 2] = (data[length - 2] & 0xf0) | message.count
  let sum = 0
  for (let at = 0; at < length - 1; at++) sum += data[at]
  data[length - 1] = sum & 0xff
}

/** Request and answer identifiers of a module: 48 with 11 bits, 12 with 29 (ISO 15765-2, normal fixed addressing). */
function addressOf(module) {
  if (module < 48) {
    const ask = 0x700 + ((module >> 2) << 4) + (module & 3)
    return { ask, answer: ask + 8, extended: false }
  }
  const target = 0x10 + module
  return { ask: 0x18da00f1 + target * 256, answer: 0x18daf100 + target, extended: true }
}

/** All identifiers that carry diagnostics, for programs that have to be told. */
export function diagnosticIds() {
  return Array.from({ length: MODULES }, (_, module) => addressOf(module)).flatMap(
    ({ ask, answer, extended }) => [
      { id: ask, extended },
      { id: answer, extended },
    ],
  )
}

/**
 * What a tester and one module say to each other, as messages with the pause before each in microseconds.
 * Services of ISO 14229-1; the bytes are invented.
 */
function talk(module, random) {
  const said = []
  const ask = (...bytes) => said.push({ asks: true, bytes, pause: random.between(900, 4000) })
  const answer = (...bytes) => said.push({ asks: false, bytes, pause: random.between(1500, 9000) })
  const noise = (count) => Array.from({ length: count }, () => random.between(0, 256))
  ask(0x10, 0x03)
  answer(0x50, 0x03, 0x00, 0x32, 0x01, 0xf4)
  ask(0x22, 0xf1, 0x90)
  answer(0x62, 0xf1, 0x90, ...Array.from('00X000000A0000000', (letter) => letter.charCodeAt(0)))
  ask(0x19, 0x02, 0xff)
  for (let wait = random.between(0, 3); wait > 0; wait--) answer(0x7f, 0x19, 0x78)
  const codes = random.between(0, 24)
  answer(0x59, 0x02, 0xff, ...Array.from({ length: codes }, () => [...noise(3), 0x2f]).flat())
  for (let read = 0; read < 6; read++) {
    const did = noise(2)
    ask(0x22, ...did)
    if (random.between(0, 4) === 0) answer(0x7f, 0x22, 0x31)
    else answer(0x62, ...did, ...noise(random.between(1, 60)))
  }
  ask(0x27, 0x01)
  answer(0x67, 0x01, ...noise(4))
  ask(0x27, 0x02, ...noise(4))
  answer(...(module % 3 === 0 ? [0x7f, 0x27, 0x35] : [0x67, 0x02]))
  if (module % 10 === 0) {
    ask(0x36, 0x01, ...noise(400))
    answer(0x7f, 0x36, 0x78)
    answer(0x76, 0x01)
  }
  ask(0x14, 0xff, 0xff, 0xff)
  answer(0x7f, 0x14, 0x78)
  answer(0x54)
  ask(0x11, 0x01)
  answer(0x51, 0x01)
  return said
}

/** The frames of a talk in their order, by ISO 15765-2: padded to eight bytes, flow control after a first frame. */
function framesOf(module, random, counts) {
  const { ask, answer, extended } = addressOf(module)
  const frames = []
  const put = (id, pause, bytes) =>
    frames.push({ id, extended, pause, data: Uint8Array.from({ length: 8 }, (_, at) => bytes[at] ?? 0x55) })
  for (const { asks, bytes, pause } of talk(module, random)) {
    const id = asks ? ask : answer
    counts.messages++
    if (bytes[0] === 0x7f) counts.negative++
    if (bytes[0] === 0x7f && bytes[2] === 0x78) counts.pending++
    if (bytes[0] === 0x59) counts.dtcRecords += (bytes.length - 3) / 4
    if (bytes.length <= 7) {
      put(id, pause, [bytes.length, ...bytes])
      continue
    }
    put(id, pause, [0x10 | (bytes.length >> 8), bytes.length & 0xff, ...bytes.slice(0, 6)])
    put(asks ? answer : ask, random.between(300, 1500), [0x30, 0x00, 0x00])
    for (let at = 6, sequence = 1; at < bytes.length; at += 7, sequence++)
      put(id, random.between(400, 1200), [0x20 | (sequence & 15), ...bytes.slice(at, at + 7)])
  }
  return frames
}

/** Sessions of a tester: every so often it talks to all modules, a few at the same time. */
export class Tester {
  #random
  #left = []
  #talking = 0
  /** What a decoder must find, of what was begun so far. */
  counts = { messages: 0, negative: 0, pending: 0, dtcRecords: 0 }
  /** When the next session begins, in microseconds. */
  due = 2_000_000

  constructor(seed) {
    this.#random = new Random(seed)
  }

  /** Begins a session: gives the talks that begin at once. */
  begin(now) {
    this.due = now + 180_000_000
    this.#left = Array.from({ length: MODULES }, (_, module) => module)
    return Array.from({ length: 4 - this.#talking }, () => this.next(now))
  }

  /** The next talk of this session, or `undefined`. */
  next(now) {
    const module = this.#left.shift()
    if (module === undefined) return undefined
    this.#talking++
    const frames = framesOf(module, this.#random, this.counts)
    return { frames, at: 0, due: now + frames[0].pause }
  }

  /** A talk is over: gives the one that follows it. */
  over(now) {
    this.#talking--
    return this.next(now)
  }
}
