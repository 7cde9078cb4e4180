/**
 * @module Code tables of ISO 13400-2 (DoIP): names in short words of our own.
 *
 * Source of the values: ISO 13400-2:2019 tables for the generic header, routing activation, entity status and
 * diagnostic messages, as they stand in two public implementations (python-doipclient, MIT; the Wireshark
 * dissector). Where those two disagree (activation type of central security, E0 or E1) no name is given.
 */

/** Payload types of ISO 13400-2 with the payload lengths they may have, in bytes. */
export interface DoipPayloadType {
  readonly name: string
  /** The exact lengths allowed, or the least length of a type whose length varies. */
  readonly lengths: readonly number[] | { readonly least: number }
  /** The transport ISO 13400-2 lets the message travel on. */
  readonly transport: 'udp' | 'tcp' | 'both'
}

/** Payload type number -> what it is. */
export const PAYLOAD_TYPES: ReadonlyMap<number, DoipPayloadType> = new Map([
  [0x0000, { name: 'header not accepted', lengths: [1], transport: 'both' }],
  [0x0001, { name: 'vehicle identification request', lengths: [0], transport: 'udp' }],
  [0x0002, { name: 'vehicle identification request by EID', lengths: [6], transport: 'udp' }],
  [0x0003, { name: 'vehicle identification request by VIN', lengths: [17], transport: 'udp' }],
  [0x0004, { name: 'vehicle announcement', lengths: [32, 33], transport: 'udp' }],
  [0x0005, { name: 'routing activation request', lengths: [7, 11], transport: 'tcp' }],
  [0x0006, { name: 'routing activation response', lengths: [9, 13], transport: 'tcp' }],
  [0x0007, { name: 'alive check request', lengths: [0], transport: 'tcp' }],
  [0x0008, { name: 'alive check response', lengths: [2], transport: 'tcp' }],
  [0x4001, { name: 'entity status request', lengths: [0], transport: 'udp' }],
  [0x4002, { name: 'entity status response', lengths: [3, 7], transport: 'udp' }],
  [0x4003, { name: 'power mode request', lengths: [0], transport: 'udp' }],
  [0x4004, { name: 'power mode response', lengths: [1], transport: 'udp' }],
  [0x8001, { name: 'diagnostic message', lengths: { least: 5 }, transport: 'tcp' }],
  [0x8002, { name: 'diagnostic message accepted', lengths: { least: 5 }, transport: 'tcp' }],
  [0x8003, { name: 'diagnostic message not accepted', lengths: { least: 5 }, transport: 'tcp' }],
])

/** Protocol versions with an edition: 1 (2010 draft), 2 (2012), 3 (2019), 4 (2019 amendment), FF (identification requests). */
export const PROTOCOL_VERSIONS: ReadonlySet<number> = new Set([0x01, 0x02, 0x03, 0x04, 0xff])

const HEADER_NACK: ReadonlyMap<number, string> = new Map([
  [0x00, 'header pattern wrong'],
  [0x01, 'payload type not known'],
  [0x02, 'message too large'],
  [0x03, 'out of memory'],
  [0x04, 'payload length wrong'],
])

const ACTIVATION_RESPONSE: ReadonlyMap<number, string> = new Map([
  [0x00, 'refused: source address not known'],
  [0x01, 'refused: all connections taken'],
  [0x02, 'refused: another source address is active on this connection'],
  [0x03, 'refused: source address active on another connection'],
  [0x04, 'refused: authentication missing'],
  [0x05, 'refused: confirmation declined'],
  [0x06, 'refused: activation type not supported'],
  [0x07, 'refused: an encrypted connection is required'],
  [0x10, 'activated'],
  [0x11, 'activated once confirmed'],
])

const DIAGNOSTIC_NACK: ReadonlyMap<number, string> = new Map([
  [0x02, 'source address invalid'],
  [0x03, 'target address not known'],
  [0x04, 'message too large'],
  [0x05, 'out of memory'],
  [0x06, 'target cannot be reached'],
  [0x07, 'network not known'],
  [0x08, 'transport error'],
])

function named(table: ReadonlyMap<number, string>, code: number): string {
  return table.get(code) ?? `reserved code ${hexByte(code)}`
}

/** Two upper-case hex digits. */
export function hexByte(value: number): string {
  return value.toString(16).toUpperCase().padStart(2, '0')
}

/** Four upper-case hex digits, as logical addresses and payload types are written. */
export function hexWord(value: number): string {
  return value.toString(16).toUpperCase().padStart(4, '0')
}

/** What a generic header negative acknowledge (payload type 0000) says. */
export function headerNackMeaning(code: number): string {
  return named(HEADER_NACK, code)
}

/** What a routing activation response code (payload type 0006) says. */
export function activationMeaning(code: number): string {
  return named(ACTIVATION_RESPONSE, code)
}

/** True for the two response codes that open the way to the vehicle (10 and 11). */
export function activationGranted(code: number): boolean {
  return code === 0x10 || code === 0x11
}

/** What a diagnostic message negative acknowledge (payload type 8003) says. */
export function diagnosticNackMeaning(code: number): string {
  return named(DIAGNOSTIC_NACK, code)
}

/** True when `length` bytes is a length the standard allows for this payload type; unknown types allow any. */
export function lengthAllowed(type: number, length: number): boolean {
  const known = PAYLOAD_TYPES.get(type)
  if (known === undefined) return true
  return 'least' in known.lengths ? length >= known.lengths.least : known.lengths.includes(length)
}
