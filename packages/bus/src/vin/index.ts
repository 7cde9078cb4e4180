/**
 * @module The vehicle identification numbers that passed on the wire, by who said them.
 *
 * Sources read: UDS 62 F190 (ISO 14229-1 Annex C), OBD 49 02 (SAE J1979), KWP2000 5A 90 (ISO 14230-3), and DoIP
 * vehicle announcements (ISO 13400-2). Whether a number is well formed is not judged here.
 */

import type { DoipAnnouncement } from '../capture/contract.ts'
import { formatTime } from '../frame/index.ts'
import type { Message } from '../message/types.ts'

/** Where a VIN came from. */
export type VinSource = 'uds' | 'obd' | 'kwp' | 'doip-announcement'

/** One VIN as one sender said it. */
export interface HeardVin {
  readonly vin: string
  readonly source: VinSource
  /** Identifier of the answer, or the logical address of the announcing entity. */
  readonly id: string
  readonly channel: string
  /** Seconds as a decimal string, as in the recording: the first time it was said. */
  readonly time: string
  /** How often it was said. */
  readonly times: number
}

/** The VINs in messages and announcements; the same VIN from the same sender is one entry. */
export function vinsOf(
  messages: Iterable<Message>,
  announcements: Iterable<DoipAnnouncement> = [],
): HeardVin[] {
  const found = new Map<string, HeardVin>()
  const add = (vin: HeardVin): void => {
    const key = `${vin.source} ${vin.channel} ${vin.id} ${vin.vin}`
    const known = found.get(key)
    found.set(key, known === undefined ? vin : { ...known, times: known.times + 1 })
  }
  for (const message of messages) {
    if (message.vin === undefined || message.vin === '' || !message.complete || message.kind !== 'response')
      continue
    const { vin, id, channel, protocol } = message
    if (protocol === 'other') continue
    add({ vin, source: protocol, id, channel, time: formatTime(message.time), times: 1 })
  }
  for (const { vin, source, channel, time } of announcements) {
    if (vin !== '')
      add({ vin, source: 'doip-announcement', id: source, channel, time: formatTime(time), times: 1 })
  }
  return [...found.values()]
}
