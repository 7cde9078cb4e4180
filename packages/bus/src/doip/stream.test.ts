import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { DoipStream, type Mark, type StreamedMessage } from './index.ts'
import { diagnostic, doip, hex, joined } from './testing/build.ts'

function markOf(packet: number): Mark {
  return { time: { seconds: packet, nanoseconds: 0, decimals: 0 }, where: { byteOffset: packet } }
}

function listen(fromStart: boolean) {
  const messages: StreamedMessage[] = []
  const unreadable: { count: number; reason: string; packet: number }[] = []
  const stream = new DoipStream(
    {
      message: (message) => messages.push(message),
      unreadable: (count, reason, mark) =>
        unreadable.push({ count, reason, packet: mark.where.byteOffset ?? -1 }),
    },
    fromStart,
  )
  return { stream, messages, unreadable }
}

function feed(stream: DoipStream, bytes: Uint8Array, packet: number): void {
  stream.feed(bytes, 0, bytes.length, markOf(packet))
}

describe('a DoIP stream (framing: ISO 13400-2 generic header)', () => {
  const first = diagnostic(0x0e80, 0x4010, [0x10, 0x03])
  const second = doip(0x8002, [0x40, 0x10, 0x0e, 0x80, 0x00])

  it('finds several messages in one piece and one message in several pieces', () => {
    const { stream, messages, unreadable } = listen(true)
    feed(stream, joined([first, second, first.subarray(0, 5)]), 1)
    feed(stream, first.subarray(5, 10), 2)
    feed(stream, first.subarray(10), 3)
    stream.end()
    expect(messages.map((message) => [message.type, hex(message.payload), message.complete])).toEqual([
      [0x8001, '0e8040101003', true],
      [0x8002, '40100e8000', true],
      [0x8001, '0e8040101003', true],
    ])
    expect(messages[2]?.first.where.byteOffset).toBe(1)
    expect(messages[2]?.last.where.byteOffset).toBe(3)
    expect(unreadable).toEqual([])
  })

  it('goes on at the end of a broken message when the gap lies inside it', () => {
    const { stream, messages, unreadable } = listen(true)
    const long = diagnostic(0x0e80, 0x4010, [0x36, 0x01, ...new Array(40).fill(0xaa)])
    feed(stream, long.subarray(0, 20), 1)
    stream.gap(10)
    feed(stream, joined([long.subarray(30), second]), 2)
    stream.end()
    expect(messages.map((message) => [message.payload.length, message.claimed, message.complete])).toEqual([
      [12, 46, false],
      [5, 5, true],
    ])
    expect(unreadable).toEqual([])
  })

  it('finds the next sure header when the gap goes beyond the broken message', () => {
    const { stream, messages, unreadable } = listen(true)
    feed(stream, first.subarray(0, 12), 1)
    stream.gap(100)
    feed(stream, joined([Uint8Array.of(1, 2, 3), second]), 2)
    stream.end()
    expect(messages.map((message) => message.complete)).toEqual([false, true])
    expect(unreadable).toEqual([{ count: 3, reason: 'bytes before it are missing', packet: 2 }])
  })

  it('tells bytes that are no message, and reads the message after them', () => {
    const { stream, messages, unreadable } = listen(true)
    feed(stream, joined([first, Uint8Array.of(0, 0, 2, 0xfd, 0x80), second]), 7)
    stream.end()
    expect(messages).toHaveLength(2)
    expect(unreadable).toEqual([
      { count: 5, reason: 'version and inverse version do not belong together', packet: 7 },
    ])
  })

  it('begins in the middle of a message when the recording does', () => {
    const { stream, messages, unreadable } = listen(false)
    feed(stream, joined([first.subarray(9), second]), 1)
    stream.end()
    expect(messages.map((message) => message.type)).toEqual([0x8002])
    expect(unreadable[0]?.count).toBe(first.length - 9)
  })

  it('tells a message cut by the end of the recording with what arrived', () => {
    const { stream, messages } = listen(true)
    feed(stream, first.subarray(0, 13), 4)
    stream.end()
    expect(messages.map((message) => [hex(message.payload), message.complete])).toEqual([
      ['0e80401010', false],
    ])
  })

  it('takes a claim of 4 GiB for a broken header and holds no memory for it', () => {
    const { stream, messages, unreadable } = listen(true)
    const huge = Uint8Array.of(2, 0xfd, 0x80, 1, 0xff, 0xff, 0xff, 0xff)
    feed(stream, joined([huge, second]), 1)
    stream.end()
    expect(messages.map((message) => message.type)).toEqual([0x8002])
    expect(unreadable[0]?.count).toBe(8)
    expect(stream.held).toBe(0)
  })

  it('holds no more memory than bytes arrived, whatever a header claims', () => {
    const { stream } = listen(true)
    feed(stream, Uint8Array.of(2, 0xfd, 0x80, 1, 0x00, 0xff, 0xff, 0xff, 1, 2, 3), 1)
    expect(stream.held).toBeLessThanOrEqual(2048)
  })

  it('gives the same messages however the stream is cut into pieces', () => {
    fc.assert(
      fc.property(
        fc.array(fc.uint8Array({ minLength: 1, maxLength: 60 }), { minLength: 1, maxLength: 12 }),
        fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 1, maxLength: 20 }),
        (payloads, cuts) => {
          const whole = joined(payloads.map((payload) => diagnostic(0x0e80, 0x1001, payload)))
          const { stream, messages, unreadable } = listen(true)
          let at = 0
          for (let index = 0; at < whole.length; index += 1) {
            const to = Math.min(whole.length, at + (cuts[index % cuts.length] ?? 1))
            stream.feed(whole, at, to, markOf(index))
            at = to
          }
          stream.end()
          expect(messages.map((message) => hex(message.payload.subarray(4)))).toEqual(payloads.map(hex))
          expect(messages.every((message) => message.complete)).toBe(true)
          expect(unreadable).toEqual([])
        },
      ),
    )
  })

  it('accounts for every byte of any input and never throws', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.oneof(
            fc.uint8Array({ maxLength: 40 }),
            fc.constant(doip(0x0007, [])),
            fc.uint8Array({ minLength: 1, maxLength: 30 }).map((data) => diagnostic(1, 2, data)),
          ),
          { maxLength: 10 },
        ),
        (pieces) => {
          const { stream, messages, unreadable } = listen(true)
          for (const [index, piece] of pieces.entries()) feed(stream, piece, index)
          stream.end()
          const inMessages = messages.reduce((sum, message) => sum + 8 + message.payload.length, 0)
          const left = unreadable.reduce((sum, entry) => sum + entry.count, 0)
          expect(inMessages + left).toBe(pieces.reduce((sum, piece) => sum + piece.length, 0))
        },
      ),
    )
  })
})
