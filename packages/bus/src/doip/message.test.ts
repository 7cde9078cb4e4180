import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { activationGranted, PAYLOAD_TYPES, readBody } from './index.ts'
import { bytesOf } from './testing/build.ts'

function body(type: number, payload: string) {
  const bytes = bytesOf(payload)
  return readBody(type, bytes, 0, bytes.length)
}

// Layouts: ISO 13400-2:2019 payload tables, as they stand in python-doipclient (MIT) doipclient/messages.py.
describe('DoIP payloads (ISO 13400-2)', () => {
  const vin = Array.from('INVENTED-00000001', (letter) => letter.charCodeAt(0).toString(16)).join('')
  it('reads a vehicle announcement with and without the synchronisation byte', () => {
    const announcement = `${vin}1001aabbccddeeff010203040506`
    expect(body(0x0004, `${announcement}10`)).toEqual({
      kind: 'announcement',
      vin: 'INVENTED-00000001',
      source: '1001',
      eid: 'AABBCCDDEEFF',
      gid: '010203040506',
      furtherAction: 0x10,
      syncStatus: undefined,
    })
    expect(body(0x0004, `${announcement}0010`)).toMatchObject({ furtherAction: 0, syncStatus: 0x10 })
  })

  it('gives an empty VIN when the field is unset, and marks bytes that are no characters', () => {
    const rest = '1001aabbccddeeff01020304050600'
    expect(body(0x0004, 'ff'.repeat(17) + rest)).toMatchObject({ vin: '' })
    expect(body(0x0004, '00'.repeat(17) + rest)).toMatchObject({ vin: '' })
    expect(body(0x0004, `07${'41'.repeat(16)}${rest}`)).toMatchObject({ vin: `\uFFFD${'A'.repeat(16)}` })
  })

  it('reads the identification requests', () => {
    expect(body(0x0001, '')).toEqual({ kind: 'identification-request' })
    expect(body(0x0002, '001122334455')).toEqual({
      kind: 'identification-request-by-eid',
      eid: '001122334455',
    })
    expect(body(0x0003, '41'.repeat(17))).toEqual({
      kind: 'identification-request-by-vin',
      vin: 'A'.repeat(17),
    })
  })

  it('reads routing activation, refused and granted', () => {
    expect(body(0x0005, '0e800000000000')).toEqual({
      kind: 'activation-request',
      source: '0E80',
      activationType: 0,
    })
    expect(body(0x0005, '0e800100000000deadbeef')).toMatchObject({ activationType: 1 })
    expect(body(0x0006, '0e8040101000000000')).toMatchObject({ tester: '0E80', source: '4010', code: 0x10 })
    expect(activationGranted(0x10) && activationGranted(0x11)).toBe(true)
    expect([0, 1, 2, 3, 4, 5, 6, 7, 0x12].some(activationGranted)).toBe(false)
  })

  it('reads alive check, entity status and power mode', () => {
    expect(body(0x0007, '')).toEqual({ kind: 'alive-check-request' })
    expect(body(0x0008, '0e80')).toEqual({ kind: 'alive-check-response', source: '0E80' })
    expect(body(0x4001, '')).toEqual({ kind: 'entity-status-request' })
    expect(body(0x4002, '000100')).toMatchObject({
      nodeType: 0,
      mostConnections: 1,
      largestRequestBytes: undefined,
    })
    expect(body(0x4002, '010200fffffff0')).toMatchObject({ nodeType: 1, largestRequestBytes: 0xffff_fff0 })
    expect(body(0x4003, '')).toEqual({ kind: 'power-mode-request' })
    expect(body(0x4004, '01')).toEqual({ kind: 'power-mode-response', mode: 1 })
  })

  it('reads diagnostic messages and both acknowledgements with the message they repeat', () => {
    expect(body(0x8001, '0e8040101003')).toEqual({
      kind: 'diagnostic',
      source: '0E80',
      target: '4010',
      userData: bytesOf('1003'),
    })
    expect(body(0x8002, '004b0e000022fd31')).toEqual({
      kind: 'diagnostic-ack',
      source: '004B',
      target: '0E00',
      code: 0,
      previous: bytesOf('22fd31'),
    })
    expect(body(0x8003, '40100e8006')).toMatchObject({
      kind: 'diagnostic-nack',
      code: 6,
      meaning: 'target cannot be reached',
    })
  })

  it('gives malformed for a length the type does not allow', () => {
    for (const [type, { lengths }] of PAYLOAD_TYPES) {
      for (let length = 0; length < 40; length += 1) {
        const allowed = 'least' in lengths ? length >= lengths.least : lengths.includes(length)
        expect(readBody(type, new Uint8Array(length), 0, length).kind === 'malformed').toBe(!allowed)
      }
    }
  })

  it('never throws, whatever the bytes', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 0xffff }), fc.uint8Array({ maxLength: 80 }), (type, bytes) => {
        expect(readBody(type, bytes, 0, bytes.length).kind).toBeTypeOf('string')
      }),
    )
  })
})
