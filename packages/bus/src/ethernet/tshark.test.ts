/**
 * @module A DoIP recording made here, read by us and by Debian's tshark (its TCP, DoIP and UDS dissectors).
 * Without /usr/bin/tshark the test is skipped and says so.
 */

import { execFileSync } from 'node:child_process'
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { diagnostic, doip, hex, joined } from '../doip/testing/build.ts'
import { pcapFormat } from '../pcap/index.ts'
import { createPacketReader } from './index.ts'
import { collect } from './testing/collect.ts'
import { type End, pcapFile, tcp, udp } from './testing/packets.ts'

const TSHARK = '/usr/bin/tshark'
const present = existsSync(TSHARK)
if (!present)
  console.warn(`skipped: ${TSHARK} is not here, so a DoIP recording of our own is not compared with it`)

const tester: End = { address: [0xfd, 0, ...new Array(13).fill(0), 2], port: 50_100 }
const gateway: End = { address: [0xfd, 0, ...new Array(13).fill(0), 1], port: 13_400 }

/**
 * A session over IPv6 in a VLAN: activation, a functional request answered by two units, a long answer in four
 * segments of which two overtake each other and one is sent twice, two messages in one segment.
 */
function recording(): Uint8Array {
  const frames: Uint8Array[] = []
  const numbers = { tester: 0xffff_ff00, gateway: 0xffff_fff0 }
  const send = (who: 'tester' | 'gateway', payload: Uint8Array, flags = 'PA'): Uint8Array => {
    const [from, to] = who === 'tester' ? [tester, gateway] : [gateway, tester]
    const acknowledgment = who === 'tester' ? numbers.gateway : numbers.tester
    const frame = tcp({ from, to, sequence: numbers[who], acknowledgment, flags, payload, vlans: [42] })
    numbers[who] = (numbers[who] + payload.length + (flags.includes('S') ? 1 : 0)) % 0x1_0000_0000
    return frame
  }
  const vin = Array.from('INVENTED-00000003', (letter) => letter.charCodeAt(0))
  frames.push(
    udp(
      gateway,
      { ...tester, port: 13_400 },
      doip(0x0004, [...vin, 0x10, 0x01, ...new Array(12).fill(7), 0]),
      [42],
    ),
  )
  frames.push(
    send('tester', new Uint8Array(0), 'S'),
    send('gateway', new Uint8Array(0), 'SA'),
    send('tester', new Uint8Array(0), 'A'),
  )
  frames.push(send('tester', doip(0x0005, [0x0e, 0x80, 0, 0, 0, 0, 0])))
  frames.push(send('gateway', doip(0x0006, [0x0e, 0x80, 0x10, 0x01, 0x10, 0, 0, 0, 0])))
  frames.push(send('tester', diagnostic(0x0e80, 0xe400, [0x3e, 0x00])))
  const ack = doip(0x8002, [0xe4, 0x00, 0x0e, 0x80, 0x00])
  frames.push(send('gateway', joined([ack, diagnostic(0x1010, 0x0e80, [0x7e, 0x00])])))
  frames.push(send('gateway', diagnostic(0x1011, 0x0e80, [0x7e, 0x00])))
  frames.push(send('tester', diagnostic(0x0e80, 0x1010, [0x22, 0xf1, 0x8c])))
  const long = diagnostic(0x1010, 0x0e80, [
    0x62,
    0xf1,
    0x8c,
    ...Array.from({ length: 400 }, (_, index) => index & 0xff),
  ])
  const pieces = [0, 100, 200, 300].map((at, index) =>
    send('gateway', long.subarray(at, index === 3 ? undefined : at + 100)),
  )
  const [one, two, three, four] = pieces
  for (const piece of [one, three, two, two, four]) if (piece !== undefined) frames.push(piece)
  frames.push(send('tester', diagnostic(0x0e80, 0x1010, [0x11, 0x01])))
  frames.push(send('gateway', doip(0x8003, [0x10, 0x10, 0x0e, 0x80, 0x06])))
  return pcapFile(
    frames.map((data, index) => ({ data, atMicroseconds: 1_700_000_000_000_000 + index * 2500 })),
  )
}

describe.skipIf(!present)('a DoIP recording of our own beside tshark', () => {
  const folder = mkdtempSync(join(tmpdir(), 'shearline-doip-'))
  afterAll(() => rmSync(folder, { recursive: true }))

  it('gives the messages, in the order and with the bytes tshark gives', () => {
    const file = join(folder, 'own.pcap')
    writeFileSync(file, recording())
    const output = execFileSync(
      TSHARK,
      [
        '-r',
        file,
        '-o',
        'tcp.reassemble_out_of_order:TRUE',
        '-Y',
        'doip',
        '-T',
        'json',
        '-x',
        '--no-duplicate-keys',
      ],
      { encoding: 'utf8', maxBuffer: 1e8, stdio: ['ignore', 'pipe', 'ignore'] },
    )
    const theirs: string[] = []
    for (const packet of JSON.parse(output) as { _source: { layers: Record<string, unknown> } }[]) {
      const raw = packet._source.layers.doip_raw
      const layers = Array.isArray(raw) && Array.isArray(raw[0]) ? raw : [raw]
      for (const layer of layers) if (Array.isArray(layer)) theirs.push(String(layer[0]))
    }
    const collected = collect()
    const ours: string[] = []
    const format = pcapFormat((sink) =>
      createPacketReader(sink, {
        observe: (event) => ours.push(event.type.toString(16).padStart(4, '0')),
      }),
    )
    const reader = format.open(collected.sink, {})
    reader.push(recording())
    reader.end()
    expect(ours).toHaveLength(11)
    expect(theirs.map((text) => text.slice(4, 8))).toEqual(ours)
    const diagnostics = theirs.filter((text) => text.startsWith('02fd8001'))
    expect(
      collected.doip.map((message) =>
        `${message.source}${message.target}${hex(message.payload)}`.toLowerCase(),
      ),
    ).toEqual(diagnostics.map((text) => text.slice(16)))
    expect(collected.codes()).toEqual(['doip-diagnostic-refused'])
    expect(collected.announcements).toHaveLength(1)
  })
})
