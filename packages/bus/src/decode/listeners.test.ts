/**
 * @module What a decoder tells does not hang on who listens: messages as JSON text are those that are told as objects,
 * and who only wants the counts gets the same ones, though bytes and times are then made of nothing.
 */

import { readdirSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Finding } from '../finding/index.ts'
import type { CanFrame } from '../frame/index.ts'
import { segment } from '../isotp/segment.ts'
import { type MessageLine, messageLine } from '../message/json.ts'
import { sharedBytes, sharedPresent, sharedUrl } from '../testing/shared.ts'
import { MESSAGE_FIELDS, type MessageField } from './cells.ts'
import { type DecodeOptions, decodeCapture } from './decode-capture.ts'
import { type DecodeChoices, Decoder } from './decoder.ts'
import { decodeBytes, decodeFrames } from './testing/decode.ts'

const files = sharedPresent ? readdirSync(sharedUrl('captures/files/')) : []

function decodeTexts(bytes: Uint8Array, options: DecodeOptions) {
  const lines: string[] = []
  const findings: Finding[] = []
  const decoding = decodeCapture({
    ...options,
    line: (json) => lines.push(json),
    finding: (finding) => findings.push(finding),
  })
  decoding.push(bytes)
  return { ...decoding.end(), lines, findings }
}

/** All fields, read from the line of JSON. */
function plainCells(line: MessageLine): string {
  const cells: Record<MessageField, string | undefined> = {
    time: line.time,
    startTime: line.startTime,
    channel: line.channel,
    id: line.id,
    protocol: line.protocol,
    service: line.service,
    name: line.name,
    kind: line.kind,
    subFunction: line.subFunction?.name,
    did: line.dids?.map(({ did }) => did).join(' '),
    nrc: line.nrc?.code,
    dtc: line.dtcs?.map(({ code }) => code).join(' '),
    vin: line.vin,
    length: `${line.length}`,
    complete: `${line.complete}`,
    payload: line.payload,
  }
  return MESSAGE_FIELDS.map((field) => cells[field] ?? '').join('\t')
}

describe.each(files)('%s', (name) => {
  const bytes = new Uint8Array(sharedBytes(`captures/files/${name}`))

  it.each([false, true])('is told as text as it is told as objects (raw: %s)', (raw) => {
    const { messages, findings, summary } = decodeBytes(bytes, { raw })
    const texts = decodeTexts(bytes, { raw })
    expect(texts.lines).toEqual(messages.map((message) => JSON.stringify(messageLine(message))))
    expect(texts.findings).toEqual(findings)
    expect(texts.summary).toEqual(summary)
  })

  it.each([false, true])('is told as cells as it is told as objects (raw: %s)', (raw) => {
    const { messages } = decodeBytes(bytes, { raw })
    const texts = decodeTexts(bytes, { raw, fields: MESSAGE_FIELDS })
    expect(texts.lines).toEqual(messages.map((message) => plainCells(messageLine(message))))
  })

  it('is counted as it is told', () => {
    const { findings, summary } = decodeBytes(bytes)
    const alone: Finding[] = []
    const decoding = decodeCapture({ finding: (finding) => alone.push(finding) })
    decoding.push(bytes)
    expect(decoding.end().summary).toEqual(summary)
    expect(alone).toEqual(findings)
  })
})

/** Requests, answers and noise of any bytes, whole or with frames left out, with pauses now and then. */
const frames = fc
  .array(
    fc.record({
      asks: fc.boolean(),
      payload: fc.oneof(
        fc.uint8Array({ minLength: 1, maxLength: 40 }),
        fc.uint8Array({ minLength: 1200, maxLength: 1300 }),
        fc
          .tuple(fc.constantFrom(0x59, 0x62, 0x7f, 0x19, 0x22, 0x27, 0x67), fc.uint8Array({ maxLength: 12 }))
          .map(([first, rest]) => Uint8Array.from([first, ...rest])),
      ),
      lost: fc.option(fc.nat({ max: 8 }), { freq: 4, nil: undefined }),
      pause: fc.constantFrom(1, 7, 900, 1500),
      place: fc.constantFrom<CanFrame['where']>(
        {},
        { line: 7 },
        { byteOffset: 900 },
        { line: 8, byteOffset: 9 },
      ),
      channel: fc.constantFrom('can0', 'a "b" \\ \u00e9'),
    }),
    { minLength: 1, maxLength: 30 },
  )
  .map((said): CanFrame[] => {
    let milliseconds = 0
    return said.flatMap(({ asks, payload, lost, pause, place, channel }) =>
      segment(payload)
        .filter((_, index) => index !== lost)
        .map((data) => {
          milliseconds += pause
          return {
            time: {
              seconds: Math.floor(milliseconds / 1000),
              nanoseconds: (milliseconds % 1000) * 1_000_000,
              decimals: pause === 7 ? 3 : 9,
            },
            channel,
            id: asks ? 0x7e0 : 0x7e8,
            extended: false,
            fd: false,
            remote: false,
            error: false,
            ...(pause === 900 ? { direction: 'received' as const } : {}),
            data,
            where: place,
          }
        }),
    )
  })

function decodeAlone(recorded: readonly CanFrame[], choices: DecodeChoices, withTexts: boolean) {
  const lines: string[] = []
  const findings: Finding[] = []
  const decoder = new Decoder(
    {
      finding: (finding) => findings.push(finding),
      ...(withTexts ? { line: (json: string) => lines.push(json) } : {}),
    },
    choices,
  )
  for (const frame of recorded) decoder.frame(frame)
  decoder.end()
  return { lines, findings, summary: decoder.summary }
}

describe('any messages', () => {
  it('PROPERTY are told as text and counted as they are told as objects, however many wait', () => {
    fc.assert(
      fc.property(frames, fc.boolean(), fc.constantFrom(0, 3, 16_384), (recorded, raw, lookAhead) => {
        const choices = {
          raw,
          lookAhead,
          ids: [
            { id: 0x7e0, extended: false },
            { id: 0x7e8, extended: false },
          ],
        }
        const { messages, findings, summary } = decodeFrames(recorded, choices)
        const lines = messages.map((message) => JSON.stringify(messageLine(message)))
        expect(decodeAlone(recorded, choices, true)).toEqual({ lines, findings, summary })
        expect(decodeAlone(recorded, choices, false)).toEqual({ lines: [], findings, summary })
      }),
      { numRuns: 200 },
    )
  })

  it('are what they were told as when the next one is told', () => {
    const recorded = [1, 2, 3, 4].flatMap((first) =>
      segment(Uint8Array.from({ length: 20 }, (_, index) => first * 16 + index)).map((data, index) => ({
        time: { seconds: first, nanoseconds: index, decimals: 9 },
        channel: 'can0',
        id: 0x7e8,
        extended: false,
        fd: false,
        remote: false,
        error: false,
        data,
        where: { line: first * 10 + index },
      })),
    )
    const { messages } = decodeFrames(recorded, { lookAhead: 0 })
    expect(
      messages.map(({ payload, time, startTime, where }) => [payload[0], time, startTime, where]),
    ).toEqual(
      [1, 2, 3, 4].map((first) => [
        first * 16,
        { seconds: first, nanoseconds: 2, decimals: 9 },
        { seconds: first, nanoseconds: 0, decimals: 9 },
        { line: first * 10 + 2 },
      ]),
    )
  })
})
