/**
 * @module Recordings we write, read by three outside programs and by us: the same frames, the same messages.
 *
 * Sources of the expectations: Debian's tshark (Wireshark), scapy (`CandumpReader`, `rdpcap`, `ISOTPMessageBuilder`)
 * and python-can (`CanutilsLogReader`, and its writers), run here. Disagreements: README.md beside this file.
 */

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type CanFrame, candumpLine, PcapngWriter } from '@shearline/bus'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import {
  type Answer,
  pythonPresent,
  readWithPython,
  tsharkFrames,
  tsharkMessages,
  tsharkPresent,
  writeWithPython,
} from './programs.ts'
import { frameLine, framesOf, messagesOf, missing } from './reading.ts'
import { CLASSIC_IDS, traffic } from './traffic.ts'

const folder = mkdtempSync(join(tmpdir(), 'shearline-oracles-'))
const at = (name: string): string => join(folder, name)
const classic = traffic(11, { remote: true })
const fd = traffic(12, { fd: true })

function write(name: string, frames: readonly CanFrame[]): void {
  const writer = new PcapngWriter()
  writeFileSync(at(`${name}.log`), frames.map(candumpLine).join(''))
  writeFileSync(
    at(`${name}.pcapng`),
    [writer.header(), ...frames.map((one) => writer.frame(one))].reduce((a, b) => Buffer.concat([a, b])),
  )
}

beforeAll(() => {
  write('classic', classic)
  write('fd', fd)
})
afterAll(() => rmSync(folder, { recursive: true }))

describe('our own reading', () => {
  it.each([
    ['classic.log', classic],
    ['classic.pcapng', classic],
    ['fd.log', fd],
    ['fd.pcapng', fd],
  ] as const)('%s holds the frames that were written', (name, frames) => {
    expect(framesOf(at(name))).toEqual(frames.map(frameLine))
    expect(frames.length).toBeGreaterThan(400)
  })
})

describe.skipIf(!tsharkPresent)('tshark', () => {
  /** A short FD frame looks like a classic one in what tshark prints here. */
  const withoutShortFd = (line: string): string => line.replace(/ F (\S{0,16})$/, ' - $1')

  it.each(['classic.log', 'classic.pcapng', 'fd.log', 'fd.pcapng'])('sees the same frames in %s', (name) => {
    expect(tsharkFrames(at(name))).toEqual(framesOf(at(name)).map(withoutShortFd))
  })

  it('puts the same messages together, one segmented sender a run', () => {
    // Requests here are single frames, of which tshark loses none: they share a run.
    const runs = [[0x7e0, 0x7e1, 0x18da10f1], [0x7e8], [0x7e9], [0x18daf110]]
    const theirs = tsharkMessages(at('classic.pcapng'), runs).sort()
    const ours = messagesOf(at('classic.pcapng'))
    expect(ours.incomplete).toBe(0)
    expect(ours.lines.length).toBe(150)
    expect(ours.lines.sort()).toEqual(theirs)
    expect(messagesOf(at('classic.log')).lines.sort()).toEqual(theirs)
  })

  it('puts the same CAN FD messages together, single frames of more than 8 bytes too', () => {
    const ours = messagesOf(at('fd.pcapng'), [0x7e2, 0x7ea]).lines
    expect(tsharkMessages(at('fd.pcapng'), [[0x7e2], [0x7ea]]).sort()).toEqual(ours.sort())
    expect(ours).toHaveLength(50)
  })
})

describe.skipIf(!pythonPresent)('python-can and scapy', () => {
  let answers: Answer[] = []
  const answer = (index: number): Answer => answers[index] as Answer

  beforeAll(() => {
    write('plain', traffic(13))
    writeWithPython(at('fd.log'), [at('again.log'), at('again.csv')])
    answers = readWithPython([
      { file: at('classic.log'), by: 'python-can' },
      { file: at('fd.log'), by: 'python-can' },
      { file: at('plain.log'), by: 'scapy log', ids: CLASSIC_IDS },
      { file: at('plain.pcapng'), by: 'scapy capture', ids: CLASSIC_IDS },
      { file: at('fd.log'), by: 'scapy log', ids: [0x7e2, 0x7ea] },
      { file: at('fd.pcapng'), by: 'scapy capture', ids: [0x7e2, 0x7ea] },
      { file: at('classic.log'), by: 'scapy log' },
    ])
  })

  it('python-can sees the same frames in candump text, remote and CAN FD frames too', () => {
    expect([answer(0).error, answer(1).error]).toEqual([null, null])
    expect(answer(0).frames).toEqual(framesOf(at('classic.log')))
    expect(answer(1).frames).toEqual(framesOf(at('fd.log')))
  })

  it('what python-can writes as candump text and as a table is read back as it was', () => {
    const frames = framesOf(at('fd.log'))
    expect(framesOf(at('again.log'))).toEqual(frames)
    // The table keeps no mark of CAN FD; frames of up to eight bytes come back as classic ones.
    expect(framesOf(at('again.csv'))).toEqual(frames.map((line) => line.replace(/ F (\S{0,16})$/, ' - $1')))
  })

  it('scapy sees the same frames in candump text and in pcapng, and the same messages', () => {
    const ours = messagesOf(at('plain.log')).lines.sort()
    expect(ours.length).toBe(150)
    for (const index of [2, 3]) {
      expect(answer(index).error).toBeNull()
      expect(answer(index).frames).toEqual(framesOf(at('plain.log')))
      expect([...answer(index).messages].sort()).toEqual(ours)
    }
  })

  it('scapy sees the same CAN FD frames and their messages, but for those of one frame', () => {
    const short = (line: string): string => line.replace(/ F (\S{0,16})$/, ' - $1')
    const ours = messagesOf(at('fd.log'), [0x7e2, 0x7ea]).lines
    // ISO 15765-2:2016 single frames of more than 8 bytes: 00, then the length. scapy 2.5.0 reads them as empty.
    const inOneFrame = ours.filter((line) => {
      const bytes = (line.split(' ')[2] ?? '').length / 2
      return bytes > 7 && bytes <= 62
    })
    expect(inOneFrame.length).toBeGreaterThan(0)
    for (const index of [4, 5]) {
      expect(answer(index).error).toBeNull()
      expect(answer(index).frames).toEqual(framesOf(at('fd.log')).map(short))
      expect(missing(ours, answer(index).messages)).toEqual(inOneFrame)
      expect(missing(answer(index).messages, ours)).toEqual(
        inOneFrame.map((line) => line.replace(/\S+$/, '')),
      )
    }
  })

  it('scapy stops at the first remote frame of candump text, which we and python-can read', () => {
    const { error, frames } = answer(6)
    expect(error).toMatch(/Error/)
    expect(frames.length).toBeLessThan(classic.length)
    expect(missing(frames, framesOf(at('classic.log')))).toEqual([])
  })
})
