/** @module Scans, VINs and steps out of a recording, all invented; layouts of ISO 14229-1, SAE J1979, ISO 14230-3. */

import { describe, expect, it } from 'vitest'
import { decodeFrames, frame } from '../decode/testing/decode.ts'
import type { CanFrame } from '../frame/index.ts'
import { continueToSend, segment } from '../isotp/segment.ts'
import type { Message } from '../message/types.ts'
import { resetsAndClears } from '../timeline/index.ts'
import { vinsOf } from '../vin/index.ts'
import { scansOf } from './index.ts'

/** `7E8 5902FF...` messages of any length, one every 100 ms. */
function messages(...lines: readonly string[]): Message[] {
  const frames: CanFrame[] = lines.flatMap((line, index) => {
    const [id, data] = line.split(' ') as [string, string]
    const sender = Number.parseInt(id, 16)
    return segment(Uint8Array.from(Buffer.from(data, 'hex')), { padding: 0xaa }).flatMap((bytes, part) => {
      const one = { ...frame(index * 100 + part, sender, ''), data: bytes }
      const flow = { ...frame(index * 100 + part, sender ^ 8, ''), data: continueToSend() }
      return (bytes[0] as number) >> 4 === 1 ? [one, flow] : [one]
    })
  })
  return decodeFrames(frames).messages
}

describe('scans', () => {
  it('hold what each unit reported, with status and availability', () => {
    const scans = scansOf(messages('7E0 1902FF', '7E8 5902FBC14087090562130850', '7E1 1902FF', '7E9 5902FF'))
    expect(scans).toEqual([
      {
        unit: '7E8',
        channel: 'can0',
        time: '0.101000',
        report: '19 02',
        availability: 0xfb,
        faults: [
          { code: 'U0140-87', raw: 'C14087', status: 0x09 },
          { code: 'P0562-13', raw: '056213', status: 0x08 },
        ],
      },
      { unit: '7E9', channel: 'can0', time: '0.300000', report: '19 02', availability: 0xff, faults: [] },
    ])
  })

  it('name the list an OBD code came from', () => {
    const faults = scansOf(
      messages('7DF 03', '7E8 43010562', '7DF 07', '7E8 47010563', '7DF 0A', '7E8 4A00'),
    ).map((scan) => [scan.report, scan.faults])
    expect(faults).toEqual([
      ['03', [{ code: 'P0562', raw: '0562', status: null, list: 'confirmed' }]],
      ['07', [{ code: 'P0563', raw: '0563', status: null, list: 'pending' }]],
      ['0A', []],
    ])
  })

  it('keep a KWP2000 status apart, because its bits mean other things', () => {
    expect(scansOf(messages('7A0 1800FF00', '7A8 5801056260'))[0]?.faults).toEqual([
      { code: 'P0562', raw: '0562', status: null, kwpStatus: 0x60 },
    ])
  })

  it('are not made of refusals, counts, or answers that were cut', () => {
    const cut = decodeFrames([frame(0, 0x7e8, '10175902FFC14087')]).messages
    expect(scansOf([...messages('7E8 7F1931', '7E8 5901FF010002'), ...cut])).toEqual([])
  })
})

describe('VINs', () => {
  // An invented number of the right length, from a range without a registered maker.
  const vin = 'ZZZZZZZZZ00000001'
  const hex = Buffer.from(vin).toString('hex')

  it('are read from UDS, OBD and KWP2000 answers, once per sender', () => {
    const found = vinsOf(
      messages(
        '7E0 22F190',
        `7E8 62F190${hex}`,
        `7E8 62F190${hex}`,
        '7DF 0902',
        `7E9 490201${hex}`,
        '7A0 1A90',
        `7A8 5A90${hex}`,
      ),
    )
    expect(found.map(({ vin: text, source, id, times }) => [text, source, id, times])).toEqual([
      [vin, 'uds', '7E8', 2],
      [vin, 'obd', '7E9', 1],
      [vin, 'kwp', '7A8', 1],
    ])
  })

  it('are read from DoIP announcements', () => {
    const announcement = {
      time: { seconds: 5, nanoseconds: 0, decimals: 0 },
      channel: 'eth0',
      vin,
      source: '1000',
      eid: '000000000001',
      gid: '000000000001',
      where: { byteOffset: 24 },
    }
    expect(vinsOf([], [announcement, { ...announcement, vin: '' }])).toEqual([
      { vin, source: 'doip-announcement', id: '1000', channel: 'eth0', time: '5', times: 1 },
    ])
  })
})

describe('steps', () => {
  it('are sessions, resets, clears, silence and code setting, with answers and refusals', () => {
    const steps = resetsAndClears(
      messages(
        '7E0 1003',
        '7E8 5003003201F4',
        '7E0 22F190',
        '7E0 14FFFFFF',
        '7E8 7F1422',
        '7DF 04',
        '7E0 8502',
        '7E0 280301',
        '7E0 1101',
      ),
    )
    expect(steps.map((step) => [step.step, step.kind, step.detail ?? step.nrc?.name])).toEqual([
      ['session', 'request', 'extendedDiagnosticSession'],
      ['session', 'response', 'extendedDiagnosticSession'],
      ['clear', 'request', 'FFFFFF'],
      ['clear', 'negative', 'ConditionsNotCorrect'],
      ['clear', 'request', undefined],
      ['code-setting', 'request', 'off'],
      ['communication', 'request', 'disableRxAndTx'],
      ['reset', 'request', 'hardReset'],
    ])
  })
})
