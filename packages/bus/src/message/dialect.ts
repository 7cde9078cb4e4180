/**
 * @module Tells which dialect a message is in: UDS, OBD, KWP2000, or a maker's own set of services.
 *
 * Several standards share service numbers. First decides the unit (one that positively answers services no
 * standard has speaks a maker's set), then the service where only one standard has it, then the form of the
 * message, and last what else the unit answered.
 */

import type { Heard } from '../addressing/heard.ts'
import { KWP_SERVICES } from '../kwp/index.ts'
import { OBD_SERVICES } from '../obd/index.ts'
import { UDS_SERVICES } from '../uds/services.ts'
import type { MessageKind, Protocol } from './types.ts'

/** What a unit has shown to speak: one dialect, both, a maker's; `undefined` while it has shown nothing. */
type Family = 'uds' | 'kwp' | 'both' | 'maker' | undefined

/** KWP2000 services that are so whoever answers: testers send them to no other unit. */
const PLAINLY_KWP: ReadonlySet<number> = new Set([0x18, 0x1a, 0x20, 0x21])
const PLAINLY_UDS: ReadonlySet<number> = new Set([0x19, 0x24, 0x29, 0x2a, 0x84, 0x87])

function ownFamily(heard: Heard): Family {
  if (heard.makerOnly > 0 && heard.udsOnly === 0) return 'maker'
  if (heard.udsOnly > 0) return heard.kwpOnly > 0 ? 'both' : 'uds'
  return heard.kwpOnly > 0 ? 'kwp' : undefined
}

/** What a sender speaks: what it answered, or what those answered that it asked, when they agree. */
function familyOf(heard: Heard): Family {
  const own = ownFamily(heard)
  if (own !== undefined) return own
  let family: Family
  for (const peer of heard.peers.keys()) {
    const theirs = ownFamily(peer)
    if (theirs === undefined) continue
    if (family !== undefined && family !== theirs) return undefined
    family = theirs
  }
  return family
}

/** The dialect of one message. `service` is the request's; `lastAsked` the dialect of the request a refusal answers. */
export function dialectOf(
  from: Heard,
  kind: MessageKind,
  service: number,
  payload: Uint8Array,
  lastAsked: Protocol | undefined,
): Protocol {
  const family = familyOf(from)
  if (family === 'maker') return 'other'
  if (OBD_SERVICES.has(service)) return 'obd'
  if (PLAINLY_KWP.has(service)) return 'kwp'
  if (PLAINLY_UDS.has(service)) return 'uds'
  // A unit that speaks UDS alone is asked in UDS: an odd form is then a wrong request, not another dialect.
  if (family !== 'uds') {
    const byForm = kind === 'negative' ? lastAsked : formOf(kind, service, payload)
    if (byForm !== undefined) return byForm
  }
  if (family === 'kwp' && KWP_SERVICES.has(service)) return 'kwp'
  if (UDS_SERVICES.has(service) || family !== undefined) return 'uds'
  return from.answered + from.answering > 0 ? 'uds' : 'other'
}

/** The dialect where the form of a message settles it: lengths and values that only one standard allows. */
function formOf(kind: MessageKind, service: number, payload: Uint8Array): Protocol | undefined {
  const size = payload.length
  const second = payload[1]
  switch (service) {
    case 0x10: {
      // UDS sessions end at 7E, and bit 7 only suppresses the answer; KWP2000 sessions begin at 81.
      if (second === undefined || size > 2) return size === 6 ? 'uds' : undefined
      if (second < 0x80) return 'uds'
      return kind === 'response' || (second >= 0x85 && second < 0xc0) ? 'kwp' : undefined
    }
    case 0x14:
      if (kind === 'request') return size === 3 ? 'kwp' : size === 4 || size === 5 ? 'uds' : undefined
      return size === 3 ? 'kwp' : undefined
    case 0x31:
      return second !== undefined && second >= 0x01 && second <= 0x03 && size >= 4 ? 'uds' : undefined
    case 0x3e:
      if (size === 1) return 'kwp'
      return second === 0x00 || second === 0x80 ? 'uds' : kind === 'request' ? 'kwp' : undefined
    case 0x85:
      return size === 2 && second !== undefined && (second & 0x7f) <= 0x02 ? 'uds' : undefined
    default:
      return undefined
  }
}
