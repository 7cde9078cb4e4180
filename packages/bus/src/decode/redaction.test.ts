/**
 * @module No secret leaves the package unasked. What is secret is our own rule (README.md); services are those of
 * ISO 14229-1 and ISO 14230-3.
 */

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { CanFrame } from '../frame/index.ts'
import { segment } from '../isotp/segment.ts'
import { messageLine } from '../message/json.ts'
import { redactedHex, secretRanges } from '../redaction/index.ts'
import { scansOf } from '../scan/index.ts'
import { resetsAndClears } from '../timeline/index.ts'
import { vinsOf } from '../vin/index.ts'
import { decodeFrames, decodeLines, frame, short } from './testing/decode.ts'

const bytes = (hex: string): Uint8Array => Uint8Array.from(Buffer.from(hex, 'hex'))
const shown = (hex: string): string => redactedHex(bytes(hex), secretRanges(bytes(hex)))

describe('what is hidden', () => {
  it.each([
    ['2701', '2701'],
    ['6701a1b2c3d4', '6701xxxxxxxx'],
    ['2702a1b2c3d4', '2702xxxxxxxx'],
    ['6702', '6702'],
    ['2901000102', '2901xxxxxx'],
    ['690112', '6901xx'],
    ['2ef190a1b2', '2ef190xxxx'],
    ['6ef190', '6ef190'],
    ['340044a1b2', '34xxxxxxxx'],
    ['7420a1b2', '74xxxxxx'],
    ['35a1', '35xx'],
    ['3601a1b2', '3601xxxx'],
    ['7601a1', '7601xx'],
    ['37a1b2', '37xxxx'],
    ['77a1', '77xx'],
    ['84a1b2', '84xxxx'],
    ['c4a1', 'c4xx'],
    ['3b90a1', '3b90xx'],
    ['3d12a1', '3d12xx'],
    ['7f2735', '7f2735'],
    ['62f190a1', '62f190a1'],
    ['', ''],
  ])('%s is shown as %s', (hex, expected) => {
    expect(shown(hex)).toBe(expected)
  })
})

/** The request identifiers whose data is secret. */
const SECRET_SERVICES = [0x27, 0x29, 0x2e, 0x34, 0x35, 0x36, 0x37, 0x3b, 0x3d, 0x84] as const

describe('a decoded recording', () => {
  it('hides seed and key, and shows them when raw is asked for', () => {
    const lines = [
      '(1.0) can0 7E0#0227015555555555',
      '(1.1) can0 7E8#066701A1B2C3D4AA',
      '(1.2) can0 7E0#062702E5F60718AA',
      '(1.3) can0 7E8#026702AAAAAAAAAA',
    ]
    expect(decodeLines(lines).messages.map(short)).toEqual([
      '1.0 7E0 2701',
      '1.1 7E8 6701xxxxxxxx',
      '1.2 7E0 2702xxxxxxxx',
      '1.3 7E8 6702',
    ])
    expect(decodeLines(lines, { raw: true }).messages.map(short)[1]).toBe('1.1 7E8 6701a1b2c3d4')
  })

  it('hides the secret of a transfer that was broken off', () => {
    const { messages } = decodeLines(['(1.0) can0 7E0#10142702A1A2A3A4', '(1.1) can0 7E0#22A5A6A7A8A9AAAB'])
    expect(messages.map(short)).toEqual(['1.0 7E0 2702xxxxxxxx !sequence-missing'])
    expect(messages[0]?.payload).toEqual(bytes('270200000000'))
  })

  it('PROPERTY no secret byte is in any answer, whole or damaged, in any order', () => {
    // Everything else in these recordings is below 0x90, so a byte of 0xF7 can only be a secret.
    const SECRET = 0xf7
    const secretMessage = fc
      .tuple(
        fc.constantFrom(...SECRET_SERVICES),
        fc.boolean(),
        fc.integer({ min: 0, max: 0x7f }),
        fc.nat({ max: 90 }),
      )
      .map(([service, answer, second, count]) => {
        const head = [answer ? service | 0x40 : service, second, 0x11]
        const first = Uint8Array.from([...head, ...new Array<number>(count).fill(SECRET)])
        return first
      })
    const open = fc.constantFrom(
      bytes('1003'),
      bytes('3e00'),
      bytes('7f2735'),
      bytes('1101'),
      bytes('5902ff01020308'),
    )
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.oneof(secretMessage, open), fc.constantFrom(0x7e0, 0x7e8, 0x700, 0x18da10f1)), {
          minLength: 1,
          maxLength: 12,
        }),
        fc.array(fc.nat({ max: 400 }), { maxLength: 6 }),
        (messages, damage) => {
          const frames: CanFrame[] = []
          for (const [payload, id] of messages) {
            for (const data of segment(payload, { padding: 0x00 }))
              frames.push({ ...frame(frames.length, id, ''), data })
          }
          // Lost, doubled and swapped frames.
          for (const [index, where] of damage.entries()) {
            const place = where % frames.length
            const copy = frames[place] as CanFrame
            if (index % 2 === 0 && frames.length > 1) frames.splice(place, 1)
            else frames.splice((where * 7) % frames.length, 0, copy)
          }
          const answer = decodeFrames(frames)
          const said = JSON.stringify([
            answer.messages.map(messageLine),
            answer.findings,
            answer.summary,
            scansOf(answer.messages),
            vinsOf(answer.messages),
            resetsAndClears(answer.messages),
          ]).toLowerCase()
          expect(said).not.toMatch(/f7f7|\b247\b/)
          for (const message of answer.messages) {
            const hidden = message.payload.filter((_, at) =>
              message.redacted.some((r) => at >= r.from && at < r.to),
            )
            expect(hidden.every((byte) => byte === 0)).toBe(true)
            // Identifiers and counters may be any byte below 0x90; the secret byte is never among what is shown.
            expect([...message.payload]).not.toContain(SECRET)
          }
        },
      ),
      { numRuns: 500 },
    )
  })
})
