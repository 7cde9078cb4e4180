/**
 * @module Small sound recordings of every format that is read, to be damaged. All are made in code: by the project's
 * own writers where it has one, else by the builders of the packages' tests.
 *
 * Each holds a key session whose secret bytes are `SECRET` over and over, so that any of them in an output shows.
 */

import { gzipSync } from 'node:zlib'
import { type CanFrame, candumpLine, continueToSend, PcapngWriter, segment } from '@shearline/bus'
import { recordingAfter } from '@shearline/jobfile/demo'
import { diagnostic, doip } from '../../packages/bus/src/doip/testing/build.ts'
import { pcapFile, tcp, udp } from '../../packages/bus/src/ethernet/testing/packets.ts'
import * as mdf from '../../packages/bus/src/mdf/testing/build.ts'
import { frameChannels, HEAD_BYTES, record, recordHead } from '../../packages/bus/src/mdf/testing/frames.ts'
import * as cap from '../../packages/bus/src/pcap/testing/build.ts'

/** The secret: four bytes that stand nowhere else in the recordings. */
export const SECRET: readonly number[] = [0xf7, 0xe5, 0xd3, 0xb9]

const secret = (count: number): number[] => Array.from({ length: count }, (_, at) => SECRET[at & 3] as number)

/** What is said in every recording: sender, message. The last five share time on the bus. */
const SAID: readonly (readonly [id: number, payload: readonly number[]])[] = [
  [0x7df, [0x09, 0x02]],
  [0x7e8, [0x49, 0x02, 0x01, ...Buffer.from('1M8GDM9AXKP042788')]],
  [0x730, [0x10, 0x03]],
  [0x738, [0x50, 0x03, 0x00, 0x32, 0x01, 0x14]],
  [0x730, [0x27, 0x01]],
  [0x738, [0x67, 0x01, ...secret(4)]],
  [0x730, [0x27, 0x02, ...secret(16)]],
  [0x738, [0x7f, 0x27, 0x78]],
  [0x738, [0x67, 0x02]],
  [0x730, [0x2e, 0xf1, 0x12, ...secret(20)]],
  [0x738, [0x6e, 0xf1, 0x12]],
  [0x730, [0x34, ...secret(9)]],
  [0x738, [0x74, ...secret(3)]],
  [0x730, [0x36, 0x01, ...secret(40)]],
  [0x738, [0x76, 0x01]],
  [0x730, [0x19, 0x02, 0x7f]],
  [0x738, [0x59, 0x02, 0x7f, 0x05, 0x13, 0x00, 0x09, 0x41, 0x40, 0x07, 0x2a]],
  [0x18da10f1, [0x22, 0x1c, 0x90]],
  [0x18daf110, [0x62, 0x1c, 0x90, 0x31, 0x32, 0x33]],
  [0x7e0, [0x18, 0x00, 0x7f, 0x00]],
  [0x7e8, [0x58, 0x01, 0x05, 0x13, 0x08]],
  [0x7e0, [0x01, 0x0c]],
  [0x7e8, [0x41, 0x0c, 0x1a, 0x28]],
]

function answering(id: number): number {
  if (id > 0x7ff) return (id & 0x1fff0000) | ((id & 0xff) << 8) | ((id >> 8) & 0xff)
  return id & 8 ? id - 8 : id + 8
}

/** The messages above as frames, flow control and plain traffic between them. */
function frames(choices: { readonly fd?: boolean } = {}): CanFrame[] {
  const made: CanFrame[] = []
  const put = (id: number, data: Uint8Array, more: Partial<CanFrame> = {}): void => {
    const at = 1_000_000 + made.length * 2_000
    made.push({
      time: { seconds: 1_700_000_000 + Math.floor(at / 1e6), nanoseconds: (at % 1e6) * 1000, decimals: 6 },
      channel: 'can0',
      id,
      extended: id > 0x7ff,
      fd: choices.fd === true && id !== 0x123,
      remote: false,
      error: false,
      data,
      where: {},
      ...more,
    })
  }
  for (const [index, [id, payload]] of SAID.entries()) {
    const cut = segment(Uint8Array.from(payload), {
      padding: 0x55,
      ...(choices.fd === true ? { frameBytes: 16 as const } : {}),
    })
    for (const [place, data] of cut.entries()) {
      put(id, data)
      if (place === 0 && cut.length > 1) put(answering(id), continueToSend(0, 0, { padding: 0x55 }))
    }
    if (index % 4 === 0) put(0x123, Uint8Array.of(index, 1, 2, 3, 4, 5, 6, 7))
  }
  put(0x124, new Uint8Array(0), { remote: true, channel: 'can1' })
  put(4, new Uint8Array(8), { error: true })
  return made
}

const text = (words: string): Uint8Array => new TextEncoder().encode(words)

function joined(parts: readonly Uint8Array[]): Uint8Array {
  return new Uint8Array(Buffer.concat(parts))
}

function hex(bytes: Uint8Array, between = ''): string {
  return Array.from(bytes, (byte) => byte.toString(16).toUpperCase().padStart(2, '0')).join(between)
}

function pcapng(list: readonly CanFrame[]): Uint8Array {
  const writer = new PcapngWriter()
  return joined([writer.header(), ...list.map((frame) => writer.frame(frame))])
}

/** A pcap of either byte order, plain or cooked. */
function pcap(littleEndian: boolean, linkType: 227 | 113 | 276, swapped = false): Uint8Array {
  return cap.pcap(
    frames()
      .filter((frame) => !frame.error && !frame.remote)
      .map((frame, index) => {
        const bare = cap.socketCan(frame.id, [...frame.data], { swapped })
        const data =
          linkType === 227 ? bare : linkType === 113 ? cap.sll(0x0c, bare) : cap.sll2(0x0c, 3, bare)
        return { seconds: index, fraction: index * 7, data }
      }),
    { littleEndian, linkType },
  )
}

/** pcapng, big-endian, two interfaces with stamps of their own. */
function pcapngBig(): Uint8Array {
  const order = { littleEndian: false }
  const parts = [
    cap.sectionHeader(order),
    cap.interfaceDescription(227, { ...order, name: 'can3', resolution: 9 }),
    cap.interfaceDescription(113, { ...order, name: 'any', resolution: 0x8a, offset: 1_700_000_000 }),
  ]
  for (const [index, frame] of frames().entries()) {
    const bare = cap.socketCan(frame.id, [...frame.data])
    const cooked = index % 3 === 2
    parts.push(
      cap.enhancedPacket(
        cooked ? 1 : 0,
        BigInt(index) * 3_000_000n,
        cooked ? cap.sll(0x0c, bare) : bare,
        order,
      ),
    )
  }
  return joined(parts)
}

/** DoIP: announcements, a routing activation and the session over one TCP connection, segments cut unevenly. */
function doipCapture(): Uint8Array {
  const tester = { address: [10, 0, 0, 1], port: 40_000 }
  const vehicle = { address: [10, 0, 0, 2], port: 13_400 }
  const packets: Uint8Array[] = [
    udp(
      vehicle,
      { address: [255, 255, 255, 255], port: 13_400 },
      doip(4, [...Buffer.from('1M8GDM9AXKP042788'), 0x10, 1, 1, 2, 3, 4, 5, 6, 1, 2, 3, 4, 5, 6, 0x10, 0]),
    ),
    tcp({ from: tester, to: vehicle, sequence: 999, flags: 'S' }),
    tcp({ from: vehicle, to: tester, sequence: 4999, acknowledgment: 1000, flags: 'SA' }),
  ]
  let [ours, theirs] = [1000, 5000]
  const say = (asked: boolean, message: Uint8Array): void => {
    for (let at = 0; at < message.length; at += 30) {
      const payload = message.subarray(at, at + 30)
      packets.push(
        asked
          ? tcp({ from: tester, to: vehicle, sequence: ours, acknowledgment: theirs, flags: 'PA', payload })
          : tcp({ from: vehicle, to: tester, sequence: theirs, acknowledgment: ours, flags: 'PA', payload }),
      )
      if (asked) ours += payload.length
      else theirs += payload.length
    }
  }
  say(true, doip(5, [0x0e, 0x80, 0, 0, 0, 0, 0]))
  say(false, doip(6, [0x0e, 0x80, 0x10, 1, 0x10, 0, 0, 0, 0]))
  for (const [id, payload] of SAID) {
    const asked = (id & 8) === 0 && id < 0x800
    say(asked, diagnostic(asked ? 0x0e80 : 0x1001, asked ? 0x1001 : 0x0e80, payload))
    if (asked) say(false, doip(0x8002, [0x10, 1, 0x0e, 0x80, 0]))
  }
  return pcapFile(packets.map((data, index) => ({ data, atMicroseconds: 1_000_000 + index * 900 })))
}

const samples = frames()
  .filter((frame) => !frame.error && !frame.remote)
  .map((frame, index) => ({
    ticks: 100 + index * 900,
    id: frame.id,
    extended: frame.extended,
    fd: false,
    sent: index % 5 === 0,
    bus: 1 + (index % 2),
    data: frame.data,
  }))

/** A sorted MDF with its records in one block, finished or not. */
function mdfPlain(unfinished: boolean, zipped: boolean): Uint8Array {
  const rows = joined(samples.map((sample) => record(sample, 8)))
  const data = zipped ? mdf.packed('DT', rows, HEAD_BYTES + 8) : mdf.draft('DT', [], rows)
  const group = mdf.group({
    recordBytes: HEAD_BYTES + 8,
    channels: frameChannels(8),
    cycles: unfinished ? 0 : samples.length,
  })
  const root = mdf.dataGroup(group, data, 0)
  return mdf.mdfFile({
    order: mdf.inOrder(root, true),
    firstGroup: root,
    ...(unfinished ? { unfinished: 0x25 } : {}),
  })
}

/** An MDF whose data bytes lie in blocks of their own, in lists. */
function mdfElsewhere(): Uint8Array {
  let at = 0
  const heads: Uint8Array[] = []
  const bytes: Uint8Array[] = []
  for (const sample of samples) {
    heads.push(recordHead(sample), mdf.fields([8, at]))
    bytes.push(mdf.fields([4, sample.data.length]), sample.data)
    at += 4 + sample.data.length
  }
  const signal = mdf.headed(
    mdf.list(
      mdf.pieces(joined(bytes), 200).map((part) => mdf.packed('SD', part, 0)),
      200,
    ),
    0,
  )
  const group = mdf.group({
    recordBytes: HEAD_BYTES + 8,
    channels: frameChannels(8, signal),
    cycles: samples.length,
  })
  const records = mdf.list(
    mdf.pieces(joined(heads), 210).map((part) => mdf.draft('DT', [], part)),
    210,
  )
  const root = mdf.dataGroup(group, records, 0)
  return mdf.mdfFile({ order: mdf.inOrder(root, false), firstGroup: root })
}

/** CSV as loggers write it: one column of bytes. */
function csvPlain(): Uint8Array {
  const rows = samples.map(
    ({ ticks, id, extended, bus, data }) =>
      `${(ticks / 1e6).toFixed(6)},${id.toString(16).toUpperCase()},${extended ? 1 : 0},${bus},${data.length},${hex(data)}`,
  )
  return text(`time,id,extended,channel,length,data\n${rows.join('\n')}\n`)
}

/** CSV with a column a byte, semicolons, quotes and a remark first. */
function csvColumns(): Uint8Array {
  const rows = samples.map(({ ticks, id, data }) => {
    const cells = Array.from({ length: 8 }, (_, at) =>
      data[at] === undefined ? '' : hex(Uint8Array.of(data[at])),
    )
    return `${ticks};"0x${id.toString(16)}";${data.length};${cells.join(';')}`
  })
  return text(`# exported\r\nTime (us);ID;DLC;D0;D1;D2;D3;D4;D5;D6;D7\r\n${rows.join('\r\n')}\r\n`)
}

/** candump's console layout, with the times of `samples` or the pauses between them. */
function consoleText(pauses: boolean): Uint8Array {
  return text(
    samples
      .map(({ ticks, id, extended, data }, index) => {
        const time = pauses ? ticks * (index % 3) : ticks
        const name = id
          .toString(16)
          .toUpperCase()
          .padStart(extended ? 8 : 3, '0')
        return ` (${(time / 1e6).toFixed(6)})  can0  ${name}   [${data.length}]  ${hex(data, ' ')}\n`
      })
      .join(''),
  )
}

/** The same messages between tester F1 on 6F1 and units on 6xx, an address in the first byte of every frame. */
function addressed(): Uint8Array {
  const lines: string[] = []
  const put = (id: number, data: Uint8Array): void => {
    lines.push(
      `(${(1.7e9 + lines.length * 0.002).toFixed(6)}) can0 ${id.toString(16).toUpperCase()}#${hex(data)}\n`,
    )
  }
  for (const [id, payload] of SAID) {
    const asks = ((payload[0] as number) & 0x40) === 0
    const unit = (id | 8) & 0xff
    const from = asks ? 0x6f1 : 0x600 + unit
    const [address, back] = asks ? [unit, 0xf1] : [0xf1, unit]
    const cut = segment(Uint8Array.from(payload), { address })
    for (const [place, data] of cut.entries()) {
      put(from, data)
      if (place === 0 && cut.length > 1)
        put(asks ? 0x600 + unit : 0x6f1, continueToSend(0, 0, { address: back }))
    }
  }
  return text(lines.join(''))
}

/** Values of MDF 4.2 in a list, their invalidation bits beside them. */
function mdfValues(): Uint8Array {
  const rows = mdf.pieces(joined(samples.map((sample) => record(sample, 8))), (HEAD_BYTES + 8) * 10)
  const group = mdf.group({
    recordBytes: HEAD_BYTES + 8,
    channels: frameChannels(8),
    cycles: samples.length,
    invalidationBytes: 1,
  })
  const values = mdf.valueList(
    rows.map((part) => mdf.draft('DV', [], part)),
    rows.map(() => mdf.draft('DI', [], new Uint8Array(10))),
    10,
  )
  const root = mdf.dataGroup(group, values, 0)
  return mdf.mdfFile({ order: mdf.inOrder(root, true), firstGroup: root })
}

/** One sound recording. `format` is what it must be recognised as. */
export interface Recording {
  readonly name: string
  readonly format: string
  readonly bytes: Uint8Array
}

const log = text(frames().map(candumpLine).join(''))

/** Every format, byte order and layout, each a few kilobytes. */
export const RECORDINGS: readonly Recording[] = [
  { name: 'candump log', format: 'candump', bytes: log },
  {
    name: 'candump log of CAN FD',
    format: 'candump',
    bytes: text(frames({ fd: true }).map(candumpLine).join('')),
  },
  { name: 'candump console', format: 'candump', bytes: consoleText(false) },
  { name: 'candump console of pauses', format: 'candump', bytes: consoleText(true) },
  { name: 'candump log with address bytes', format: 'candump', bytes: addressed() },
  {
    name: 'demo session',
    format: 'candump',
    bytes: text(recordingAfter(1_700_000_000).split('\n').slice(0, 60).join('\n')),
  },
  { name: 'pcapng of the writer', format: 'pcapng', bytes: pcapng(frames()) },
  { name: 'pcapng of CAN FD', format: 'pcapng', bytes: pcapng(frames({ fd: true })) },
  { name: 'pcapng big-endian', format: 'pcapng', bytes: pcapngBig() },
  { name: 'pcap little-endian', format: 'pcap', bytes: pcap(true, 227) },
  { name: 'pcap big-endian', format: 'pcap', bytes: pcap(false, 227) },
  { name: 'pcap with swapped identifiers', format: 'pcap', bytes: pcap(true, 227, true) },
  { name: 'pcap cooked', format: 'pcap', bytes: pcap(true, 113) },
  { name: 'pcap cooked v2', format: 'pcap', bytes: pcap(false, 276) },
  { name: 'DoIP', format: 'pcap', bytes: doipCapture() },
  { name: 'MDF finished', format: 'mdf', bytes: mdfPlain(false, false) },
  { name: 'MDF unfinished', format: 'mdf', bytes: mdfPlain(true, false) },
  { name: 'MDF packed', format: 'mdf', bytes: mdfPlain(false, true) },
  { name: 'MDF of values', format: 'mdf', bytes: mdfValues() },
  { name: 'MDF in lists', format: 'mdf', bytes: mdfElsewhere() },
  { name: 'CSV of bytes', format: 'csv', bytes: csvPlain() },
  { name: 'CSV of columns', format: 'csv', bytes: csvColumns() },
  { name: 'gzip', format: 'gzip', bytes: new Uint8Array(gzipSync(log)) },
]
