/** @module Requests and answers of each service as literal bytes: good, refused, too short. Layouts of ISO 14229-1:2020. */

import { describe, expect, it } from 'vitest'
import { interpret } from '../message/interpret.ts'
import type { Meaning, MessageKind } from '../message/types.ts'

function read(hex: string): Meaning {
  const payload = Uint8Array.from(Buffer.from(hex, 'hex'))
  const first = payload[0] as number
  const kind: MessageKind = first === 0x7f ? 'negative' : first & 0x40 ? 'response' : 'request'
  return interpret('uds', kind, kind === 'response' ? first & ~0x40 : first, payload)
}

const sub = (value: number, name: string, suppressResponse = false) => ({
  subFunction: { value, name, suppressResponse },
})

describe('each service', () => {
  it.each<[string, string, Meaning]>([
    ['10 session', '1003', sub(3, 'extendedDiagnosticSession')],
    ['10 session, answer suppressed', '1083', sub(3, 'extendedDiagnosticSession', true)],
    [
      '10 answer with timing',
      '5003003201f4',
      {
        ...sub(3, 'extendedDiagnosticSession'),
        values: { p2ServerMaxMilliseconds: 50, p2StarServerMaxMilliseconds: 5000 },
      },
    ],
    ['10 answer of the 2006 edition, without timing', '5003', sub(3, 'extendedDiagnosticSession')],
    ['10 too short', '10', { problems: ['fewer than 2 bytes'] }],
    ['11 reset', '1101', sub(1, 'hardReset')],
    [
      '11 answer with power-down time',
      '510410',
      { ...sub(4, 'enableRapidPowerShutDown'), values: { powerDownTimeSeconds: 16 } },
    ],
    ['14 clear all', '14ffffff', { texts: { groupOfDTC: 'FFFFFF', groupName: 'all groups' } }],
    ['14 too short', '14ffff', { problems: ['fewer than 4 bytes'] }],
    [
      '22 two identifiers',
      '22f190f18c',
      {
        dids: [
          { did: 'F190', name: 'VINDataIdentifier' },
          { did: 'F18C', name: 'ECUSerialNumberDataIdentifier' },
        ],
      },
    ],
    [
      '22 half an identifier',
      '22f190f1',
      { dids: [{ did: 'F190', name: 'VINDataIdentifier' }], problems: ['half a data identifier at the end'] },
    ],
    [
      '22 answer with text',
      '62f18741423132',
      {
        dids: [{ did: 'F187', name: 'vehicleManufacturerSparePartNumberDataIdentifier' }],
        texts: { vehicleManufacturerSparePartNumberDataIdentifier: 'AB12' },
      },
    ],
    ['22 answer of a maker', '62010100ff', { dids: [{ did: '0101', name: 'VehicleManufacturerSpecific' }] }],
    ['27 seed', '2701', sub(1, 'requestSeed')],
    ['27 key: only the level is read', '2702a1b2c3d4', sub(2, 'sendKey')],
    [
      '28 silence',
      '280301',
      {
        ...sub(3, 'disableRxAndTx'),
        values: { communicationType: 1 },
        texts: { messages: 'normalCommunicationMessages', network: 'this unit and its networks' },
      },
    ],
    [
      '28 silence of one network behind a gateway',
      '2804230012',
      {
        ...sub(4, 'enableRxAndDisableTxWithEnhancedAddressInformation'),
        values: { communicationType: 0x23, nodeIdentification: 0x12 },
        texts: {
          messages: 'networkManagementCommunicationMessages and normalCommunicationMessages',
          network: 'network 2',
        },
      },
    ],
    ['23 memory', '2324000102030010', { values: { memoryAddress: 0x00010203, memorySizeBytes: 0x0010 } }],
    ['23 shorter than its format says', '23240001', { problems: ['fewer than 8 bytes'] }],
    [
      '2A periodic identifiers',
      '2a0105',
      {
        dids: [{ did: 'F205', name: 'periodicDataIdentifier' }],
        texts: { transmissionMode: 'sendAtSlowRate' },
      },
    ],
    [
      '2C defined from two sources',
      '2c01f30001000102c00b0101',
      {
        ...sub(1, 'defineByIdentifier'),
        dids: [
          { did: 'F300', name: 'DynamicallyDefinedDataIdentifier' },
          { did: '0100', name: 'VehicleManufacturerSpecific' },
          { did: 'C00B', name: 'VehicleManufacturerSpecific' },
        ],
      },
    ],
    [
      '2F control',
      '2f010103a5',
      {
        dids: [{ did: '0101', name: 'VehicleManufacturerSpecific' }],
        texts: { control: 'shortTermAdjustment' },
      },
    ],
    [
      '87 fixed bit rate',
      '870112',
      { ...sub(1, 'verifyModeTransitionWithFixedParameter'), values: { linkBitsPerSecond: 500_000 } },
    ],
    [
      '22 answer with the supply voltage as F442',
      '62f44230d4',
      {
        dids: [{ did: 'F442', name: 'OBDDataIdentifier' }],
        values: { controlModuleVolts: 12.5 },
      },
    ],
    [
      '22 answer: an identifier behind data of known length is certain',
      '62f44230d4f187413142',
      {
        dids: [
          { did: 'F442', name: 'OBDDataIdentifier' },
          { did: 'F187', name: 'vehicleManufacturerSparePartNumberDataIdentifier' },
        ],
        values: { controlModuleVolts: 12.5 },
        texts: { vehicleManufacturerSparePartNumberDataIdentifier: 'A1B' },
      },
    ],
    [
      '22 answer with the active session',
      '62f18603',
      {
        dids: [{ did: 'F186', name: 'ActiveDiagnosticSessionDataIdentifier' }],
        texts: { activeSession: 'extendedDiagnosticSession' },
      },
    ],
    ['28 too short', '2803', { ...sub(3, 'disableRxAndTx'), problems: ['fewer than 3 bytes'] }],
    ['29 only the task is read', '2901a1b2', sub(1, 'verifyCertificateUnidirectional')],
    ['2E only the identifier is read', '2ef190a1b2', { dids: [{ did: 'F190', name: 'VINDataIdentifier' }] }],
    [
      '31 start a routine',
      '3101ff00',
      { ...sub(1, 'startRoutine'), dids: [{ did: 'FF00', name: 'eraseMemory' }] },
    ],
    ['31 too short', '3101ff', { ...sub(1, 'startRoutine'), problems: ['fewer than 4 bytes'] }],
    ['36 only the counter is read', '3605a1b2', { values: { blockSequenceCounter: 5 } }],
    ['34 nothing is read', '340044a1b2', {}],
    ['3E answer suppressed', '3e80', sub(0, 'zeroSubFunction', true)],
    ['85 off', '8502', sub(2, 'off')],
    ['86 stored event', '8645', sub(0x45, 'startResponseOnEvent')],
    ['7F refusal', '7f2735', { nrc: { code: '35', name: 'InvalidKey' } }],
    ['7F without its reason', '7f27', { problems: ['a refusal without its reason'] }],
    ['7F reserved code', '7f2700', { nrc: { code: '00', name: 'ISOSAEReserved' } }],
  ])('%s: %s', (_, hex, meaning) => {
    expect(read(hex)).toEqual(meaning)
  })
})

describe('service 19', () => {
  const one = { code: 'U0140-87', raw: 'C14087', status: 9 }

  it.each<[string, string, Meaning]>([
    ['02 by mask', '5902ffc1408709', { availability: 0xff, dtcs: [one] }],
    [
      '02 with rest',
      '5902ffc1408709c1',
      { availability: 0xff, dtcs: [one], problems: ['1 bytes after the last whole record'] },
    ],
    ['02 without availability', '5902', { problems: ['fewer than 3 bytes'] }],
    ['04 snapshot', '5904c14087090102', { dtcs: [one], values: { recordNumber: 1 } }],
    ['06 extended data', '5906c1408709', { dtcs: [one] }],
    [
      '07 count by severity',
      '5907ff010002',
      { availability: 0xff, dtcCount: 2, values: { formatIdentifier: 1 } },
    ],
    ['08 by severity', '5908ff2033c1408709', { availability: 0xff, dtcs: [{ ...one, severity: 0x20 }] }],
    [
      '14 counters are signed',
      '5914c1408781',
      { dtcs: [{ code: 'U0140-87', raw: 'C14087', counter: -127 }] },
    ],
    ['16 by record number', '591601c140870902', { values: { recordNumber: 1 }, dtcs: [one] }],
    ['17 user memory', '591718ffc1408709', { availability: 0xff, dtcs: [one] }],
    ['42 WWH-OBD', '594233ff1e0420c1408709', { availability: 0xff, dtcs: [{ ...one, severity: 0x20 }] }],
    ['55 WWH-OBD permanent', '595533ff04c1408709', { availability: 0xff, dtcs: [one] }],
  ])('%s: %s', (_, hex, meaning) => {
    expect(read(hex)).toMatchObject(meaning)
  })

  it('reads the code a request asks about', () => {
    expect(read('1906c14087ff')).toMatchObject({ dtcs: [{ code: 'U0140-87' }], values: { record: 0xff } })
  })
})
