/** @module Turns the bytes of a message into its meaning. */

import { roleOf } from '../addressing/evidence.ts'
import type { Heard } from '../addressing/heard.ts'
import { KWP_READERS, KWP_SERVICES } from '../kwp/index.ts'
import { OBD_READERS, OBD_SERVICES } from '../obd/index.ts'
import { nameOfNrc, UDS_READERS, UDS_SERVICES } from '../uds/index.ts'
import { hexByte } from '../uds/reader.ts'
import type { Meaning, MessageKind, Protocol } from './types.ts'

const NEGATIVE = 0x7f

/** Whether a message asks, answers or refuses. */
export function kindOf(from: Heard, payload: Uint8Array): MessageKind {
  const first = payload[0] ?? 0
  // Service scans send every first byte, also those that look like answers: who asks is known from who answers.
  if ((first & 0x40) === 0 || roleOf(from) === 'asks') return 'request'
  return first === NEGATIVE ? 'negative' : 'response'
}

/** Identifier of the service a message is about: the request's. */
export function serviceOf(kind: MessageKind, payload: Uint8Array): number {
  if (kind === 'negative') return payload[1] ?? 0
  const first = payload[0] ?? 0
  return kind === 'request' ? first : first & ~0x40
}

/** Name of a service in its dialect. */
export function nameOfService(protocol: Protocol, service: number): string {
  if (protocol === 'obd') return OBD_SERVICES.get(service) ?? 'reserved'
  if (protocol === 'kwp') return KWP_SERVICES.get(service) ?? 'reserved'
  if (protocol === 'uds') return UDS_SERVICES.get(service)?.name ?? unassigned(service)
  return 'service of the maker'
}

function unassigned(service: number): string {
  return service >= 0xba && service <= 0xbe ? 'systemSupplierSpecific' : 'ISOSAEReserved'
}

/** Reads a complete message. Secret bytes never enter the answer: the readers of secret services skip them. */
export function interpret(
  protocol: Protocol,
  kind: MessageKind,
  service: number,
  payload: Uint8Array,
): Meaning {
  if (kind === 'negative') {
    const code = payload[2]
    return code === undefined
      ? { problems: ['a refusal without its reason'] }
      : { nrc: { code: hexByte(code), name: nameOfNrc(code) } }
  }
  const readers = protocol === 'obd' ? OBD_READERS : protocol === 'kwp' ? KWP_READERS : UDS_READERS
  if (protocol === 'other') return {}
  const reader = readers.get(service)
  return (kind === 'request' ? reader?.request : reader?.response)?.(payload) ?? {}
}
