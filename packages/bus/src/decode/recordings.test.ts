/**
 * @module Every message of real recordings against two outside readings.
 *
 * Source of the expectations: tshark 4.0.17 (ISO 15765 reassembly) and scapy (`ISOTPMessageBuilder`), run over the
 * recordings beforehand, with the command lines in `expected/*.json`; records of codes by that folder's script.
 */

import { readdirSync, readFileSync } from 'node:fs'
import { gzipSync } from 'node:zlib'
import { beforeAll, describe, expect, it } from 'vitest'
import { formatTime } from '../frame/index.ts'
import { bytesSource } from '../mdf/index.ts'
import type { Message } from '../message/types.ts'
import { redactedHex } from '../redaction/index.ts'
import { sharedBytes, sharedPresent, sharedUrl } from '../testing/shared.ts'
import { decodeMdf } from './decode-mdf.ts'
import { type Decoded, decodeBytes } from './testing/decode.ts'

interface OracleMessage {
  readonly t_last: string
  readonly id: string
  readonly payload: string
  readonly by_standard?: {
    readonly status_availability_mask?: string
    readonly dtcs?: readonly { readonly bytes: string; readonly code?: string; readonly status?: string }[]
    readonly nrc?: string
    readonly did?: string
    readonly text?: string
  }
}

interface Oracle {
  readonly frames_total: number
  readonly iso_tp_anomalies_by_script: readonly {
    readonly t: number
    readonly id: string
    readonly what: string
  }[]
  readonly scapy_only: readonly { readonly id: string; readonly payload: string }[]
  readonly messages: readonly OracleMessage[]
}

function oracle(name: string): Oracle {
  return JSON.parse(readFileSync(sharedUrl(`captures/expected/${name}.json`), 'utf8')) as Oracle
}

const hex = (message: Message): string => redactedHex(message.payload, [])
const keyOf = (id: string, payload: string, seconds: string): string =>
  `${id} ${payload} ${Number(seconds).toFixed(6)}`
const ours = (message: Message): string => keyOf(message.id, hex(message), formatTime(message.time))

/** The first recording as a table, by whatever name it has. */
const tables = sharedPresent
  ? readdirSync(sharedUrl('captures/files/')).filter((name) => /^01_.*\.csv$/.test(name))
  : []

/** Recordings with the expectation that fits them; twins in another format hold the same frames. */
const RECORDINGS: readonly (readonly [string, string])[] = [
  ['01_can11_obd_uds_kwp_scan.log', '01_can11_obd_uds_kwp_scan.log'],
  ['03_can11_uds22_multi_dir.log', '03_can11_uds22_multi_dir.log'],
  ['05_can11_uds_rsponly_nofc.log', '05_can11_uds_rsponly_nofc.log'],
  ['06_can29_plain150k_uds.log', '06_can29_plain150k_uds.log'],
  ['10_can11_uds_scan_be.pcap', '10_can11_uds_scan_be.pcap'],
  ['10_can11_uds_scan_le.pcap', '10_can11_uds_scan_be.pcap'],
  ['10_can11_uds_scan_be.pcapng', '10_can11_uds_scan_be.pcap'],
  ['11_can_mixed_uudt_be.pcap', '11_can_mixed_uudt_be.pcap'],
  ['11_can_mixed_uudt_le.pcap', '11_can_mixed_uudt_be.pcap'],
  ['17_trunc_can.pcap', '17_trunc_can.pcap'],
  ['19_can11_obd01_physical_cut.log', '19_can11_obd01_physical_cut.log'],
  ...tables.map((name) => [name, '01_can11_obd_uds_kwp_scan.log'] as const),
  ['03_can11_uds22_multi_dir.MF4', '03_can11_uds22_multi_dir.log'],
  ['05_can11_uds_rsponly_nofc.MF4', '05_can11_uds_rsponly_nofc.log'],
  ['06_can29_plain150k_uds.MF4', '06_can29_plain150k_uds.log'],
]

describe.skipIf(!sharedPresent).each(RECORDINGS)('the recording %s', (file, expectation) => {
  let expected: Oracle
  let decoded: Decoded

  beforeAll(() => {
    expected = oracle(expectation)
    decoded = decodeBytes(sharedBytes(`captures/files/${file}`), { raw: true })
  })

  it('holds exactly the messages of tshark and scapy: identifier, payload, time of the last frame', () => {
    const theirs = expected.messages
      .map((message) => keyOf(message.id, message.payload, message.t_last))
      .sort()
    const read = decoded.messages.filter((message) => message.complete).map(ours)
    expect(read.sort()).toEqual(theirs)
    expect(decoded.summary.messages).toBe(theirs.length)
  })

  it('has as many frames as tshark counts', () => {
    expect(decoded.summary.frames).toBe(expected.frames_total)
  })

  it('tells every broken transfer that the outside script found', () => {
    const told = decoded.findings.filter((finding) => finding.code.startsWith('isotp-'))
    const of = (id: string, codes: readonly string[]): number =>
      told.filter((finding) => finding.params?.id === id && codes.includes(finding.code)).length
    for (const id of new Set(expected.iso_tp_anomalies_by_script.map((anomaly) => anomaly.id))) {
      const anomalies = expected.iso_tp_anomalies_by_script.filter((anomaly) => anomaly.id === id)
      const count = (word: RegExp): number => anomalies.filter((anomaly) => word.test(anomaly.what)).length
      expect(of(id, ['isotp-sequence-missing', 'isotp-sequence-repeated'])).toBe(count(/bad SN/))
      expect(of(id, ['isotp-consecutive-without-first'])).toBe(count(/CF without FF/))
      // The script does not end a transfer at a single frame, as ISO 15765-2 does: it tells those at the end.
      expect(of(id, ['isotp-new-transfer', 'isotp-recording-ended'])).toBe(count(/FF while busy|incomplete/))
    }
    const broken = decoded.messages.filter((message) => !message.complete)
    expect(broken).toHaveLength(decoded.summary.incomplete)
  })

  it('never accepts what only scapy accepts, because it ignores sequence numbers', () => {
    const accepted = new Set(
      decoded.messages.filter((message) => message.complete).map((m) => `${m.id} ${hex(m)}`),
    )
    for (const message of expected.scapy_only)
      expect(accepted).not.toContain(`${message.id} ${message.payload}`)
  })

  it('reads codes, status, refusals and identifiers as the standards lay them out', () => {
    const byKey = new Map(decoded.messages.map((message) => [ours(message), message]))
    let checked = 0
    for (const theirs of expected.messages) {
      const said = theirs.by_standard
      const message = byKey.get(keyOf(theirs.id, theirs.payload, theirs.t_last))
      if (said === undefined || message === undefined || message.protocol === 'other') continue
      if (said.nrc !== undefined && message.kind === 'negative') expect(message.nrc?.code).toBe(said.nrc)
      if (said.did !== undefined && message.protocol === 'uds') expect(message.dids?.[0]?.did).toBe(said.did)
      if (said.status_availability_mask !== undefined) {
        expect(message.availability).toBe(Number.parseInt(said.status_availability_mask, 16))
      }
      if (said.dtcs !== undefined) {
        expect(message.dtcs?.map((dtc) => dtc.raw)).toEqual(said.dtcs.map((dtc) => dtc.bytes))
        said.dtcs.forEach((dtc, index) => {
          const read = message.dtcs?.[index]
          if (dtc.code !== undefined) expect(read?.code).toBe(dtc.code)
          if (dtc.status !== undefined) expect(read?.status).toBe(Number.parseInt(dtc.status, 16))
        })
      }
      checked++
    }
    if (expected.messages.some((message) => message.by_standard !== undefined) && !file.startsWith('11')) {
      expect(checked).toBeGreaterThan(0)
    }
  })

  it('comes to the same when it is fed in pieces of any size, and when it is packed', () => {
    const bytes = sharedBytes(`captures/files/${file}`)
    if (bytes.length > 1_000_000) return
    const whole = decoded.messages.map(ours)
    for (const chunks of [[1], [7, 64, 3], [4093]]) {
      const pieces = decodeBytes(bytes, { raw: true }, chunks)
      expect(pieces.messages.map(ours)).toEqual(whole)
      expect(pieces.findings).toEqual(decoded.findings)
    }
    const packed = decodeBytes(gzipSync(bytes), { raw: true }, [1000])
    expect(packed.recognised.format).toBe('gzip')
    expect(packed.messages.map(ours)).toEqual(whole)
  })
})

describe.skipIf(!sharedPresent)('what is known of single recordings', () => {
  const read = (file: string): Decoded => decodeBytes(sharedBytes(`captures/files/${file}`))
  const codes = (decoded: Decoded): string[] => decoded.findings.map((finding) => finding.code)

  it('01: codes of the scan are those listed in the manifest', () => {
    const listed =
      'B1001-52/09 B1210-00/09 B1211-00/09 B1212-00/09 B1213-00/09 B1238-13/09 B1603-00/08 B2211-00/08 B2801-00/08 C1614-87/08 C1638-08/08 C1643-08/08 C167C-00/08 C16B6-87/08 C1806-87/08 C1812-87/08 C1812-87/28 C1829-00/08'
    const found = new Set<string>()
    for (const message of read('01_can11_obd_uds_kwp_scan.log').messages) {
      for (const dtc of message.dtcs ?? []) {
        if (dtc.status !== undefined)
          found.add(`${dtc.code}/${dtc.status.toString(16).toUpperCase().padStart(2, '0')}`)
      }
    }
    expect([...found].sort()).toEqual(listed.split(' '))
  })

  it('01: what several units answer to the functional identifier is not paired one to one', () => {
    const { messages } = read('01_can11_obd_uds_kwp_scan.log')
    const answers = messages.filter((message) => message.service === '03' && message.kind === 'response')
    expect([...new Set(answers.map((message) => message.id))].sort()).toEqual(['7EA', '7EB', '7EC', '7ED'])
    expect(answers.every((message) => message.protocol === 'obd')).toBe(true)
  })

  it('01: units that answer 18 are read as KWP2000, those that answer 19 as UDS', () => {
    const { messages } = read('01_can11_obd_uds_kwp_scan.log')
    const words = (id: string): Set<string> =>
      new Set(
        messages
          .filter((m) => m.id === id && m.kind === 'response' && m.protocol !== 'obd')
          .map((m) => m.protocol),
      )
    expect(words('7ED')).toEqual(new Set(['kwp']))
    expect(words('7CE')).toEqual(new Set(['uds', 'kwp']))
    for (const message of messages.filter((m) => m.service === '19' && m.complete))
      expect(message.protocol).toBe('uds')
    for (const message of messages.filter((m) => m.service === '18')) expect(message.protocol).toBe('kwp')
  })

  it('10: identifiers in the wrong byte order are read right, and told once', () => {
    const decoded = read('10_can11_uds_scan_le.pcap')
    expect(codes(decoded).filter((code) => code === 'identifiers-little-endian')).toHaveLength(1)
    expect(codes(read('10_can11_uds_scan_be.pcap'))).not.toContain('identifiers-little-endian')
  })

  it('10: a scan of all 128 request bytes is read as requests of the tester, and all else as answers', () => {
    const { messages } = read('10_can11_uds_scan_be.pcap')
    const asked = messages.filter((message) => message.id === '641' && message.complete)
    expect(asked.every((message) => message.kind === 'request')).toBe(true)
    expect(new Set(asked.map((message) => message.service)).size).toBe(128)
    const answers = messages.filter((message) => message.id === '651' && message.complete)
    expect(answers.every((message) => message.kind !== 'request')).toBe(true)
  })

  it('11: a maker-specific service set over fast clock stamps is neither UDS nor lost', () => {
    const { messages, summary } = read('11_can_mixed_uudt_be.pcap')
    expect(new Set(messages.map((message) => message.protocol))).toEqual(new Set(['other']))
    expect(summary.incomplete).toBe(0)
  })

  it('12, 15, 18: diagnostic messages over DoIP are read as UDS between logical addresses', () => {
    const { messages, summary } = read('12_doip_session.pcap')
    expect(summary.frames).toBe(172)
    expect(messages.every((message) => /^[0-9A-F]{4}>[0-9A-F]{4}$/.test(message.id))).toBe(true)
    expect(new Set(messages.map((message) => message.protocol))).toEqual(new Set(['uds']))
    expect(summary.pending).toBeGreaterThan(0)
    expect(read('15_doip_ack_single.pcap').summary.frames).toBe(1)
    expect(codes(read('18_trunc_doip.pcap'))).toContain('record-cut')
  })

  it.each(['12_doip_session.pcap', '12_doip_session.pcapng', '18_trunc_doip.pcap'])(
    '%s: the diagnostic messages are those that scapy cuts out of the segments',
    (file) => {
      const { scapy } = JSON.parse(readFileSync(sharedUrl(`captures/expected/${file}.json`), 'utf8')) as {
        scapy: readonly { readonly payload_type: string; readonly hex: string; readonly length: number }[]
      }
      // Version, inverse, type, length; then source, target, user data. One message is too short to have any.
      const theirs = scapy
        .filter((message) => message.payload_type === '8001' && message.length > 4)
        .map(({ hex }) => {
          const [source, target] = [hex.slice(16, 20), hex.slice(20, 24)].map((address) =>
            address.toUpperCase(),
          )
          return `${source}>${target} ${hex.slice(24)}`
        })
      const { messages } = read(file)
      expect(messages.map((message) => `${message.id} ${hex(message)}`)).toEqual(theirs)
      expect(theirs.length).toBeGreaterThan(5)
    },
  )

  it('03: an MDF file read out of order gives the messages of its text twin', () => {
    const messages: Message[] = []
    const source = bytesSource(sharedBytes('captures/files/03_can11_uds22_multi_dir.MF4'))
    const reading = decodeMdf(source, { message: (message) => messages.push(message) })
    let step = reading.next()
    while (!step.done) step = reading.next()
    expect(step.value.summary.messages).toBe(223)
    expect(messages.map(ours)).toEqual(read('03_can11_uds22_multi_dir.log').messages.map(ours))
  })

  it('17: the cut record at the end is told with its byte offset', () => {
    const { findings, summary } = read('17_trunc_can.pcap')
    expect(summary.frames).toBe(9433)
    // 290604 bytes; the last record has 16 + 8 + 5 bytes and is cut 7 bytes before its end.
    expect(findings.find((finding) => finding.code === 'record-cut')?.where).toEqual({
      byteOffset: 290_604 - (29 - 7),
    })
  })

  it('20: each bad line is told by number with its reason, the error frame is noted, the rest is read', () => {
    const { findings, summary } = read('20_bad_lines.log')
    const bad = findings.filter((finding) => finding.code === 'bad-line')
    expect(bad.map((finding) => [finding.where.line, finding.params?.reason])).toEqual([
      [6, 'odd-nibbles'],
      [10, 'odd-nibbles'],
      [13, 'comment'],
      [16, 'empty'],
      [19, 'time'],
      [22, 'remote-junk'],
      [25, 'too-long-data'],
      [28, 'id-digits'],
      [34, 'cut'],
      [41, 'cut'],
    ])
    expect(findings.filter((finding) => finding.where.line === 31).map((finding) => finding.code)).toEqual([
      'time-backwards',
      'error-frame',
    ])
    expect(summary.frames - summary.errorFrames).toBe(30)
    expect(summary.errorFrames).toBe(1)
  })
})
