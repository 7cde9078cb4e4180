/**
 * @module UDS, OBD, KWP2000 or a maker's own set: told by what passed. Services and forms are those of ISO 14229-1,
 * SAE J1979 and ISO 14230-3; how the evidence is weighed is our own rule.
 */

import { describe, expect, it } from 'vitest'
import { decodeFrames, frame } from '../decode/testing/decode.ts'

/** `7E0 1003` requests and answers in single frames; `id service protocol kind` of each message. */
function exchange(...lines: readonly string[]): string[] {
  const frames = lines.map((line, index) => {
    const [id, data] = line.split(' ') as [string, string]
    const length = (data.length / 2).toString(16).padStart(2, '0')
    return frame(index * 10, Number.parseInt(id, 16), `${length}${data}`)
  })
  return decodeFrames(frames).messages.map((m) => `${m.id} ${m.service} ${m.protocol} ${m.kind}`)
}

describe('the service decides where only one standard has it', () => {
  it('01 to 0A are OBD, also when they are refused', () => {
    expect(exchange('7DF 0100', '7E8 4100BE1FA813', '7E9 7F0112')).toEqual([
      '7DF 01 obd request',
      '7E8 01 obd response',
      '7E9 01 obd negative',
    ])
  })

  it('19 is UDS; 18, 1A, 20, 21 are KWP2000', () => {
    expect(exchange('7E0 1902FF', '7E0 1800FF00', '7E8 5800', '7E0 2101')).toEqual([
      '7E0 19 uds request',
      '7E0 18 kwp request',
      '7E8 18 kwp response',
      '7E0 21 kwp request',
    ])
  })
})

describe('the form decides where both have the service', () => {
  it('session 90 is KWP2000, session 03 and an answer with timing are UDS', () => {
    expect(exchange('7A0 1003', '7A0 1090', '7A8 5090', '7B0 1003', '7B8 5003003201F4')).toEqual([
      '7A0 10 uds request',
      '7A0 10 kwp request',
      '7A8 10 kwp response',
      '7B0 10 uds request',
      '7B8 10 uds response',
    ])
  })

  it('clearing all is 14 FF 00 in KWP2000 and 14 FF FF FF in UDS', () => {
    expect(exchange('7A0 14FF00', '7A8 54FF00', '7B0 14FFFFFF', '7B8 54')).toEqual([
      '7A0 14 kwp request',
      '7A8 14 kwp response',
      '7B0 14 uds request',
      '7B8 14 uds response',
    ])
  })

  it('a unit that speaks UDS alone is not made to speak KWP2000 by a wrong request', () => {
    const lines = exchange('7B0 1003', '7B8 5003003201F4', '7B0 3E', '7B8 7F3E13')
    expect(lines.slice(2)).toEqual(['7B0 3E uds request', '7B8 3E uds negative'])
  })
})

describe('what else the unit answered decides the rest', () => {
  const kwp = ['7A0 1800FF00', '7A8 5800', '7A0 1A90', '7A8 5A90313233'] as const

  it('a unit that answers 18 and 1A is refused and reset in KWP2000', () => {
    expect(exchange(...kwp, '7A0 1101', '7A8 51', '7A0 2701', '7A8 67011122').slice(4)).toEqual([
      '7A0 11 kwp request',
      '7A8 11 kwp response',
      '7A0 27 kwp request',
      '7A8 27 kwp response',
    ])
  })

  it('evidence that comes later counts as well', () => {
    expect(exchange('7A0 1101', '7A8 51', ...kwp).slice(0, 2)).toEqual([
      '7A0 11 kwp request',
      '7A8 11 kwp response',
    ])
  })

  it('a unit that answers services no standard has speaks a maker-specific set', () => {
    const lines = exchange('241 1002', '641 50', '241 A200', '641 E200', '241 1A90', '641 5A9031')
    expect(lines.every((line) => line.includes('other'))).toBe(true)
    expect(lines).toHaveLength(6)
  })

  it('who asks and who answers is told by who answers whom, not by the first byte', () => {
    const scan = ['3E00', '1003', '2101', '4102', '5503', '6704', 'C105'].flatMap((data) => [
      `641 ${data}`,
      `651 7F${data.slice(0, 2)}11`,
    ])
    const lines = exchange(...scan)
    expect(lines.filter((line) => line.startsWith('641')).every((line) => line.endsWith('request'))).toBe(
      true,
    )
    expect(lines.filter((line) => line.startsWith('651')).every((line) => line.endsWith('negative'))).toBe(
      true,
    )
  })
})
