/**
 * @module Frames and messages with any content, through the decoder: every service of every dialect, cut at every
 * length, transfers broken in every way. Nothing throws, and what is said is plain, finite data without secrets.
 */

import {
  type CanFrame,
  candumpLine,
  continueToSend,
  type DecodeChoices,
  Decoder,
  dtcBytes,
  dtcText,
  type Finding,
  type Message,
  messageLine,
  resetsAndClears,
  scansOf,
  segment,
  vinsOf,
} from '@shearline/bus'
import { describe, expect, it } from 'vitest'
import { type Draw, drawing, oneOf } from './draw.ts'
import { examine, showsSecret } from './examine.ts'
import { SECRET } from './recordings.ts'

const IDS = [0x7df, 0x7e0, 0x7e8, 0x7e9, 0x730, 0x738, 0x241, 0x18da10f1, 0x18daf110, 0x18db33f1, 0x18cd10f1]

function frameOf(number: number, id: number, data: Uint8Array): CanFrame {
  return {
    time: { seconds: 1 + Math.floor(number / 500), nanoseconds: (number % 500) * 2e6, decimals: 6 },
    channel: 'can0',
    id,
    extended: id > 0x7ff,
    fd: data.length > 8,
    remote: false,
    error: false,
    data,
    where: { line: number + 1 },
  }
}

function decode(
  frames: Iterable<CanFrame>,
  choices: DecodeChoices = {},
): { messages: Message[]; findings: Finding[] } {
  const messages: Message[] = []
  const findings: Finding[] = []
  const decoder = new Decoder(
    { message: (one) => messages.push(one), finding: (one) => findings.push(one) },
    choices,
  )
  for (const frame of frames) decoder.frame(frame)
  decoder.end()
  return { messages, findings }
}

/** What a line may hold: text, finite numbers, yes, no and nothing. */
function isPlain(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value)
  if (typeof value === 'string' || typeof value === 'boolean' || value === undefined) return true
  if (typeof value !== 'object') return false
  if (value === null) return true
  return Object.values(value).every(isPlain)
}

/** A message whose first bytes say something known, and whose rest is anything. */
function anyMessage(draw: Draw): Uint8Array {
  const service =
    draw(4) === 0
      ? draw(256)
      : oneOf(
          draw,
          [
            0x10, 0x19, 0x59, 0x22, 0x62, 0x01, 0x41, 0x09, 0x49, 0x1a, 0x5a, 0x18, 0x58, 0x14, 0x31, 0x71,
            0x2c, 0x2f, 0x85, 0x28, 0x87, 0x83, 0x86, 0x7f, 0x06, 0x46,
          ],
        )
  const length = oneOf(draw, [0, 1, 2, 3, 4, 5, 6, 7, 9, 17, 19, 40, 120])
  const rest = Array.from({ length }, (_, at) => (at < 2 && draw(2) === 0 ? draw(0x20) : draw(256)))
  return Uint8Array.of(service, ...rest)
}

describe('messages of any content', () => {
  const asking = { id: 0x7e0, extended: false }
  const answering = { id: 0x7e8, extended: false }

  it('every first two bytes with nothing and with something behind them', () => {
    for (let first = 0; first < 256; first++) {
      const said: CanFrame[] = []
      for (let second = 0; second < 256; second++) {
        const tail = [[], [0xff], [0xf1, 0x90, 0x00], [1, 2, 3, 4, 5]][second & 3] as number[]
        for (const id of [0x7e0, 0x7e8]) {
          for (const data of segment(Uint8Array.of(first, second, ...tail, ...(second & 4 ? tail : []))))
            said.push(frameOf(said.length, id, data))
        }
      }
      const { messages } = decode(said, { ids: [asking, answering] })
      expect(messages.length).toBeGreaterThanOrEqual(512)
      for (const message of messages) {
        const line = messageLine(message)
        if (!isPlain(line)) expect.fail(JSON.stringify(line))
      }
    }
  })

  it('random messages, whole and cut short, between any senders', () => {
    for (let round = 0; round < 120; round++) {
      const draw = drawing(7000 + round)
      const frames: CanFrame[] = []
      for (let count = 0; count < 60; count++) {
        const id = oneOf(draw, IDS)
        for (const data of segment(anyMessage(draw), draw(3) === 0 ? { padding: 0x55 } : {}))
          frames.push(frameOf(frames.length, id, data))
      }
      const { messages, findings } = decode(frames)
      const what = { round, messages: messages.map(messageLine), findings }
      if (!isPlain(what)) expect.fail(`round ${round}: ${JSON.stringify(what).slice(0, 500)}`)
      const read = [scansOf(messages), vinsOf(messages), resetsAndClears(messages)]
      if (!isPlain(read)) expect.fail(`round ${round}: ${JSON.stringify(read).slice(0, 2000)}`)
      for (const message of messages) {
        for (const dtc of message.dtcs ?? []) {
          if (dtc.raw.length === 6)
            expect([round, dtcText(dtcBytes(dtc.code) ?? new Uint8Array(0))]).toEqual([round, dtc.code])
        }
      }
    }
  })
})

describe('transfers broken in every way', () => {
  /** Frames of a few transfers of secrets and open messages, then lost, doubled, swapped, changed in their first byte. */
  function broken(draw: Draw): CanFrame[] {
    const queues: { id: number; frames: Uint8Array[] }[] = []
    for (let count = 0; count < 6; count++) {
      const id = oneOf(draw, IDS)
      const length = oneOf(draw, [3, 5, 9, 30, 200])
      const service = oneOf(draw, [0x27, 0x67, 0x2e, 0x36, 0x34, 0x84, 0x29, 0x3d, 0x3b, 0x76])
      const body = Array.from({ length }, (_, at) => SECRET[at & 3] as number)
      queues.push({ id, frames: segment(Uint8Array.of(service, 1, 2, ...body), { padding: 0 }) })
      queues.push({ id: oneOf(draw, IDS), frames: segment(Uint8Array.of(0x22, 0x11, 0x12), { padding: 0 }) })
    }
    const frames: CanFrame[] = []
    while (queues.some((queue) => queue.frames.length > 0)) {
      const queue = oneOf(
        draw,
        queues.filter((one) => one.frames.length > 0),
      )
      const data = queue.frames.shift() as Uint8Array
      const fate = draw(30)
      if (fate === 0) continue
      if (fate === 1) queue.frames.unshift(data.slice())
      if (fate === 2) queue.frames.reverse()
      if (fate === 3) data[0] = draw(0x40)
      frames.push(frameOf(frames.length, queue.id, fate === 4 ? data.subarray(0, draw(8)) : data))
      if ((data[0] as number) >> 4 === 1)
        frames.push(frameOf(frames.length, oneOf(draw, IDS), continueToSend(draw(4), draw(256))))
    }
    return frames
  }

  it('show no secret in findings, and none in messages whose first byte is known to be secret', () => {
    for (let round = 0; round < 250; round++) {
      const frames = broken(drawing(9000 + round))
      const { messages, findings } = decode(frames)
      if (showsSecret(JSON.stringify(findings))) expect.fail(`round ${round}: ${JSON.stringify(findings)}`)
      // A frame of a broken transfer may stand alone as a message with another first byte: then it is none of ours.
      const raw = decode(frames, { raw: true }).messages
      expect([round, messages.length]).toEqual([round, raw.length])
    }
  })

  it('are the same whether they come as frames or as text', () => {
    for (let round = 0; round < 60; round++) {
      const frames = broken(drawing(9000 + round))
      const text = new TextEncoder().encode(frames.map(candumpLine).join(''))
      const read = examine(text, 61)
      const { messages } = decode(frames)
      expect([round, read.messages.map((one) => messageLine(one).payload)]).toEqual([
        round,
        messages.map((one) => messageLine(one).payload),
      ])
    }
  })
})
