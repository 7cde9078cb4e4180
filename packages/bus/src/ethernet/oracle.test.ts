/**
 * @module Every DoIP message of real recordings against two outside readings.
 *
 * Source of the expectations: tshark 4.0.17 (DoIP and UDS dissectors) and scapy (`DoIP`), run over the recordings
 * beforehand; recordings from the test data of the scapy project. Neither is part of this project: without the
 * folder `../shared/captures` these tests are skipped and say so.
 */

import { describe, expect, it } from 'vitest'
import type { DoipEvent } from '../doip/index.ts'
import { hex } from '../doip/testing/build.ts'
import { formatTime } from '../frame/index.ts'
import { pcapFormat, pcapngFormat } from '../pcap/index.ts'
import { sharedBytes, sharedPresent } from '../testing/shared.ts'
import { createPacketReader } from './index.ts'
import { collect } from './testing/collect.ts'

interface Oracle {
  readonly tshark: readonly Record<string, string>[]
  readonly scapy: readonly { readonly frame: number; readonly payload_type: string; readonly hex: string }[]
}

function load(name: string) {
  const oracle = JSON.parse(new TextDecoder().decode(sharedBytes(`captures/expected/${name}.json`))) as Oracle
  const collected = collect()
  const events: DoipEvent[] = []
  const open = name.endsWith('.pcapng') ? pcapngFormat : pcapFormat
  const format = open((sink) => createPacketReader(sink, { observe: (event) => events.push(event) }))
  const reader = format.open(collected.sink, {})
  reader.push(sharedBytes(`captures/files/${name}`))
  reader.end()
  return { oracle, events, ...collected }
}

/** Our reading of a message in the names of tshark's fields. */
function asFields(event: DoipEvent): Record<string, string> {
  const fields: Record<string, string> = {
    'frame.time_epoch': `${formatTime(event.first.time)}000`,
    'doip.version': `0x${event.version.toString(16).padStart(2, '0')}`,
    'doip.type': `0x${event.type.toString(16).padStart(4, '0')}`,
  }
  const address = (text: string): string => `0x${text.toLowerCase()}`
  const code = (value: number): string => `0x${value.toString(16).padStart(2, '0')}`
  const { body } = event
  switch (body.kind) {
    case 'announcement':
      fields['doip.vin'] = body.vin
      fields['doip.logical_address'] = address(body.source)
      fields['doip.eid'] = body.eid.toLowerCase()
      fields['doip.gid'] = body.gid.toLowerCase()
      fields['doip.futher_action'] = code(body.furtherAction)
      break
    case 'header-nack':
      fields['doip.nack_code'] = code(body.code)
      break
    case 'activation-request':
      fields['doip.source_address'] = address(body.source)
      fields['doip.activation_type'] = code(body.activationType)
      break
    case 'activation-response':
      fields['doip.source_address'] = address(body.source)
      fields['doip.tester_logical_address'] = address(body.tester)
      fields['doip.response_code'] = code(body.code)
      break
    case 'alive-check-response':
      fields['doip.source_address'] = address(body.source)
      break
    case 'entity-status-response':
      fields['doip.node_type'] = code(body.nodeType)
      fields['doip.max_sockets'] = String(body.mostConnections)
      fields['doip.sockets'] = String(body.openConnections)
      if (body.largestRequestBytes !== undefined)
        fields['doip.max_data_size'] = String(body.largestRequestBytes)
      break
    case 'power-mode-response':
      fields['doip.power_mode'] = code(body.mode)
      break
    case 'diagnostic': {
      fields['doip.source_address'] = address(body.source)
      fields['doip.target_address'] = address(body.target)
      const [first = 0, second = 0, third = 0] = body.userData
      // tshark writes the service of a positive response without its 0x40 and shows 7F as 3F with the service beside it.
      fields['uds.sid'] = code(first & ~0x40)
      fields['uds.reply'] = first & 0x40 ? '0x01' : '0x00'
      if (first === 0x7f) {
        fields['uds.err.sid'] = code(second)
        fields['uds.err.code'] = code(third)
      } else if ((first & ~0x40) === 0x10) {
        fields['uds.dsc.type'] = code(second)
      }
      break
    }
    case 'diagnostic-ack':
      fields['doip.source_address'] = address(body.source)
      fields['doip.target_address'] = address(body.target)
      fields['doip.diag_ack_code'] = code(body.code)
      if (body.previous.length > 0) fields['doip.previous'] = hex(body.previous)
      break
    default:
  }
  return fields
}

describe.skipIf(!sharedPresent)('real DoIP recordings, as tshark and scapy read them', () => {
  for (const name of [
    '12_doip_session.pcap',
    '12_doip_session.pcapng',
    '15_doip_ack_single.pcap',
    '18_trunc_doip.pcap',
  ]) {
    it(`gives every message of ${name} with the fields tshark shows`, () => {
      const { oracle, events } = load(name)
      // Every packet of these recordings holds one message.
      expect(events).toHaveLength(oracle.tshark.length)
      for (const [index, row] of oracle.tshark.entries()) {
        const event = events[index]
        if (event === undefined || row['_ws.malformed'] !== undefined) continue
        const ours = asFields(event)
        const theirs = Object.fromEntries(Object.entries(row).filter(([field]) => field in ours))
        expect(ours).toEqual(theirs)
        // Nothing of a DoIP or UDS field that tshark shows is missing on our side, but what the standard reserves.
        const left = Object.keys(row).filter((field) => /^(doip|uds)\./.test(field) && !(field in ours))
        expect(left.filter((field) => !/inverse|length|reserved/.test(field))).toEqual([])
      }
    })

    it(`gives every byte of ${name} that scapy gives`, () => {
      const { oracle, events, doip } = load(name)
      expect(events.map((event) => event.type.toString(16).toUpperCase().padStart(4, '0'))).toEqual(
        oracle.scapy.map((message) => message.payload_type),
      )
      const theirs = oracle.scapy.filter(
        (message) => message.payload_type === '8001' && message.hex.length > 24,
      )
      expect(
        doip.map((message) => `${message.source}${message.target}${hex(message.payload)}`.toLowerCase()),
      ).toEqual(theirs.map((message) => message.hex.slice(16)))
    })
  }

  it('reports the diagnostic message without user data in packet 41 of 12, and the two refused headers', () => {
    const { findings, events } = load('12_doip_session.pcap')
    const packet = (number: number) => events[number - 1]?.first.where
    const errors = findings.filter((finding) => finding.severity === 'error')
    expect(errors.map((finding) => [finding.code, finding.where])).toEqual([
      ['doip-wrong-length', packet(41)],
    ])
    const refused = findings.filter((finding) => finding.code === 'doip-header-refused')
    expect(refused.map((finding) => finding.where)).toEqual([packet(36), packet(38)])
  })

  it('gives every announcement with one and the same VIN of 17 characters', () => {
    const { announcements, oracle } = load('12_doip_session.pcap')
    expect(announcements).toHaveLength(115)
    expect(new Set(announcements.map((announcement) => announcement.vin))).toEqual(
      new Set(oracle.tshark.flatMap((row) => row['doip.vin'] ?? [])),
    )
  })

  it('loses nothing before the place where the recording is cut', () => {
    const { findings, events } = load('18_trunc_doip.pcap')
    expect(events).toHaveLength(97)
    // The cut record itself is told by the reader of packets.
    const ours = findings.filter(
      (finding) => /^(doip|tcp|ip)-/.test(finding.code) && finding.severity === 'error',
    )
    expect(ours.map((finding) => finding.code)).toEqual(['doip-wrong-length'])
  })
})
