/**
 * @module The fault scans in a recording: what each unit reported, and when.
 *
 * Every answer that lists trouble codes is one scan of one unit: UDS reports of codes with status (ISO 14229-1
 * service 19), OBD services 03, 07 and 0A (SAE J1979), KWP2000 services 17 and 18 (ISO 14230-3).
 */

import { formatTime } from '../frame/index.ts'
import type { DtcRecord, Message } from '../message/types.ts'

/** A trouble code as a unit reported it. */
export interface ScannedFault {
  /** SAE J2012 text: `P0513`, `U0140-87`. */
  readonly code: string
  /** The bytes as reported, upper-case hex. */
  readonly raw: string
  /** ISO 14229-1 status byte; null when the report carries none (OBD), or one of another standard (KWP2000). */
  readonly status: number | null
  /** Status byte of ISO 14230-3, whose bits mean other things. */
  readonly kwpStatus?: number
  /** Which OBD list it came from. */
  readonly list?: 'confirmed' | 'pending' | 'permanent'
}

/** What one unit reported in one answer. An answer without codes is an empty list. */
export interface ScannedUnit {
  /** Identifier of the answer. */
  readonly unit: string
  readonly channel: string
  /** Seconds as a decimal string, as in the recording. */
  readonly time: string
  /** Service and report type: `19 02`, `03`, `18`. */
  readonly report: string
  /** Status bits the unit supports, null when not stated. */
  readonly availability: number | null
  readonly faults: readonly ScannedFault[]
}

const OBD_LISTS: Readonly<Record<string, 'confirmed' | 'pending' | 'permanent'>> = {
  '03': 'confirmed',
  '07': 'pending',
  '0A': 'permanent',
}

/** Reports of service 19 that list codes with status: by mask, supported, first and most recent, mirror, emission, permanent, user memory, WWH-OBD, readiness group. */
const UDS_REPORTS: ReadonlySet<number> = new Set([
  0x02, 0x08, 0x0a, 0x0b, 0x0c, 0x0d, 0x0e, 0x0f, 0x13, 0x15, 0x17, 0x42, 0x55, 0x56,
])

/** The scans among messages, in their order. Incomplete answers are no scans. */
export function scansOf(messages: Iterable<Message>): ScannedUnit[] {
  const scans: ScannedUnit[] = []
  for (const message of messages) {
    if (message.kind !== 'response' || !message.complete || message.dtcs === undefined) continue
    const report = reportOf(message)
    if (report === undefined) continue
    scans.push({
      unit: message.id,
      channel: message.channel,
      time: formatTime(message.time),
      report,
      availability: message.availability ?? null,
      faults: message.dtcs.map((dtc) => faultOf(message, dtc)),
    })
  }
  return scans
}

function reportOf(message: Message): string | undefined {
  if (message.protocol === 'obd') return message.service in OBD_LISTS ? message.service : undefined
  if (message.protocol === 'kwp')
    return message.service === '18' || message.service === '17' ? message.service : undefined
  const type = message.subFunction?.value
  if (message.protocol !== 'uds' || message.service !== '19' || type === undefined) return undefined
  return UDS_REPORTS.has(type) ? `19 ${type.toString(16).toUpperCase().padStart(2, '0')}` : undefined
}

function faultOf(message: Message, dtc: DtcRecord): ScannedFault {
  const fault = { code: dtc.code, raw: dtc.raw }
  if (message.protocol === 'kwp') {
    return { ...fault, status: null, ...(dtc.status === undefined ? {} : { kwpStatus: dtc.status }) }
  }
  const list = message.protocol === 'obd' ? OBD_LISTS[message.service] : undefined
  return { ...fault, status: dtc.status ?? null, ...(list === undefined ? {} : { list }) }
}
