/**
 * @module Our writer and reader against tshark: both read a generated capture, and must see the same frames and messages.
 *
 * Source of the expectation: Debian's tshark, run here (`-T fields`, ISO 15765 dissector, one pass per identifier
 * because version 4.0 loses messages when several identifiers are in transfer at once). Skipped where tshark is absent.
 */

import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { candumpLine } from '../candump/write.ts'
import { decodeBytes } from '../decode/testing/decode.ts'
import { type CanFrame, formatTime } from '../frame/index.ts'
import { continueToSend, segment } from '../isotp/segment.ts'
import { PcapngWriter } from './write.ts'

const tshark = spawnSync('tshark', ['--version'], { encoding: 'utf8' })
const present = tshark.status === 0
if (!present) console.warn('skipped: tshark is not installed, so captures are not compared with it')

/** The same walk of numbers in every run (a linear congruential generator, constants of Numerical Recipes). */
function walk(seed: number): (below: number) => number {
  let state = seed
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return Math.floor((state / 2 ** 32) * below)
  }
}

/** Plain traffic on two buses, and between it requests and answers of several units, segmented ones interleaved. */
function generate(): CanFrame[] {
  const next = walk(7)
  const frames: CanFrame[] = []
  let clock = 1_700_000_000_000_000
  const put = (id: number, extended: boolean, data: Uint8Array, channel = 'can0'): void => {
    clock += 150 + next(400)
    frames.push({
      time: { seconds: Math.floor(clock / 1e6), nanoseconds: (clock % 1e6) * 1000, decimals: 9 },
      channel,
      id,
      extended,
      fd: false,
      remote: false,
      error: false,
      data,
      where: {},
    })
  }
  const bytes = (count: number): Uint8Array => Uint8Array.from({ length: count }, () => next(256))
  for (let round = 0; round < 60; round++) {
    for (let plain = 0; plain < 5; plain++) put(0x80 + next(0x200), false, bytes(8))
    put(0x0cf00400, true, bytes(8), 'can1')
    const units = [0x7e8, 0x7e9, 0x7ea].slice(0, 1 + next(3))
    const answers = units.map((id) => {
      const payload = Uint8Array.from([0x62, 0xf1, 0x90 + next(16), ...bytes(next(60))])
      put(
        id - 8,
        false,
        segment(Uint8Array.from([0x22, 0xf1, payload[2] as number]), { padding: 0x55 })[0] as Uint8Array,
      )
      return { id, queue: segment(payload, { padding: 0xaa }) }
    })
    while (answers.some(({ queue }) => queue.length > 0)) {
      const open = answers.filter(({ queue }) => queue.length > 0)
      const { id, queue } = open[next(open.length)] as (typeof answers)[number]
      const data = queue.shift() as Uint8Array
      put(id, false, data)
      if ((data[0] as number) >> 4 === 1) put(id - 8, false, continueToSend(0, 0, { padding: 0x55 }))
    }
    const long = Uint8Array.from([0x59, 0x02, 0xff, ...bytes(4 * next(40))])
    put(0x18da10f1, true, Uint8Array.of(3, 0x19, 2, 0xff))
    for (const data of segment(long, { padding: 0xcc })) put(0x18daf110, true, data)
  }
  return frames
}

describe.skipIf(!present)(
  'a generated capture, written as pcapng and as candump text',
  { timeout: 120_000 },
  () => {
    const folder = mkdtempSync(join(tmpdir(), 'bus-'))
    const path = join(folder, 'generated.pcapng')
    const frames = generate()
    const writer = new PcapngWriter()
    const capture = Buffer.concat([writer.header(), ...frames.map((frame) => writer.frame(frame))])

    beforeAll(() => writeFileSync(path, capture))
    afterAll(() => rmSync(folder, { recursive: true }))

    const fields = (args: readonly string[], names: readonly string[]): string[][] =>
      execFileSync(
        'tshark',
        ['-r', path, ...args, '-T', 'fields', ...names.flatMap((name) => ['-e', name])],
        {
          encoding: 'utf8',
          maxBuffer: 1 << 28,
          stdio: ['ignore', 'pipe', 'ignore'],
        },
      )
        .split('\n')
        .filter((line) => line !== '')
        .map((line) => line.split('\t'))

    it('tshark reads the frames that were written: time, interface, identifier, data', () => {
      const seen = fields(
        ['-d', 'can.subdissector,data'],
        ['frame.time_epoch', 'frame.interface_name', 'can.id', 'can.flags.xtd', 'data.data'],
      )
      expect(seen).toHaveLength(frames.length)
      expect(seen).toEqual(
        frames.map((frame) => [
          formatTime(frame.time),
          frame.channel,
          String(frame.id),
          frame.extended ? '1' : '0',
          Buffer.from(frame.data).toString('hex'),
        ]),
      )
    })

    it('both reassemble the same messages', () => {
      const ids = ['7E0', '7E1', '7E2', '7E8', '7E9', '7EA', '18DA10F1', '18DAF110']
      const theirs: string[] = []
      for (const id of ids) {
        const option = id.length > 3 ? 'iso15765.can.extended_ids' : 'iso15765.can.ids'
        const rows = fields(
          [
            '-o',
            `${option}:0x${id}`,
            '-d',
            'iso15765.subdissector,data',
            '-Y',
            'iso15765',
            '-E',
            'occurrence=l',
          ],
          ['frame.time_epoch', 'iso15765.message_type', 'iso15765.reassembled.length', 'data.data'],
        )
        for (const [time, type, length, data] of rows) {
          if (type === '0x00' || (type === '0x02' && length !== '')) theirs.push(`${time} ${id} ${data}`)
        }
      }
      const { messages, summary } = decodeBytes(capture, {}, [65_536])
      const ours = messages.map(
        (message) =>
          `${formatTime(message.time)} ${message.id} ${Buffer.from(message.payload).toString('hex')}`,
      )
      expect(summary.incomplete).toBe(0)
      expect(theirs.length).toBeGreaterThan(250)
      expect(ours.sort()).toEqual(theirs.sort())
    })

    it('the text form holds the same messages', () => {
      const text = new TextEncoder().encode(frames.map(candumpLine).join(''))
      const shown = (bytes: Uint8Array): string[] =>
        decodeBytes(bytes).messages.map(
          (m) => `${formatTime(m.time)} ${m.channel} ${m.id} ${m.payload.join()}`,
        )
      expect(shown(text)).toEqual(shown(capture))
    })
  },
)
