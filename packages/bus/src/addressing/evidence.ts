/**
 * @module Weighs what senders say: who carries diagnostics, who asks and who answers.
 *
 * Inside the ranges of the standards a sender is believed unless most of its frames are no ISO-TP. Outside them it
 * must prove itself: its segmented messages ran under another identifier's flow control, or its messages and
 * another's answer each other, or several pairs with equally distant identifiers do so once each, or it sends one
 * whole segmented answer after the other. The thresholds are ours.
 */

import type { Arrived } from '../isotp/assembled.ts'
import { KWP_SERVICES } from '../kwp/index.ts'
import { OBD_SERVICES } from '../obd/index.ts'
import { UDS_SERVICES } from '../uds/services.ts'
import type { Heard, PairFamily } from './heard.ts'

/** An answer is looked for among this many messages before it on its channel. */
const ANSWER_WITHIN_MESSAGES = 64
/** Frames that are no ISO-TP, before a sender is given up. */
const STANDARD_PATIENCE = 8
const OTHER_PATIENCE = 2
/** Messages without any evidence, before a sender outside the standards is given up. */
const MOST_UNPROVEN_MESSAGES = 512
/** So few messages of a standard identifier need no services that a standard knows. */
const FEW_MESSAGES = 4
/** Peers remembered per sender: a functional request has many, noise must not have endlessly many. */
const MOST_PEERS = 256

/** Pairs with equally distant identifiers that prove each other: a scan asks each unit once. */
const FAMILY_PAIRS = 4
const MOST_FAMILIES = 4096

const NEGATIVE = 0x7f

/** Services whose answer repeats the byte after the service (sub-function, identifier or its high byte). */
const ECHOING: ReadonlySet<number> = new Set([
  0x01, 0x02, 0x05, 0x06, 0x08, 0x09, 0x10, 0x19, 0x1a, 0x21, 0x22, 0x24, 0x27, 0x28, 0x2c, 0x2e, 0x2f, 0x30,
  0x31, 0x36, 0x3b, 0x83, 0x85, 0x86, 0x87,
])

/** By first byte: 1 for a request, an answer or a refusal that some standard knows. Made when first needed. */
let assignedTable: Uint8Array | undefined

function assigned(): Uint8Array {
  if (assignedTable !== undefined) return assignedTable
  assignedTable = new Uint8Array(256)
  for (const services of [UDS_SERVICES, OBD_SERVICES, KWP_SERVICES]) {
    for (const service of services.keys()) {
      if (service & 0x40) continue
      assignedTable[service] = 1
      assignedTable[service | 0x40] = 1
    }
  }
  assignedTable[NEGATIVE] = 1
  return assignedTable
}

/** Who last sent a message that begins with a byte, with which second byte, as which of its channel. */
interface Asked {
  by: Heard
  second: number
  number: number
}

/** Where the bytes of a message stand. */
export type Said = Pick<Arrived, 'bytes' | 'start' | 'length'>

/** The evidence of one channel. */
export class ChannelEvidence {
  #number = 0
  readonly #families = new Map<number, PairFamily>()
  /** By first byte. */
  readonly #asked: (Asked | undefined)[] = new Array(256)

  /**
   * Counts one message of a sender, whether it is a whole segmented one; `usual` are the senders that most likely
   * asked for it.
   */
  message(from: Heard, { bytes, start, length }: Said, isWhole: boolean, usual: readonly Heard[]): void {
    if (length === 0) return
    const first = bytes[start] as number
    const second = length > 1 ? (bytes[start + 1] as number) : -1
    this.#number++
    from.messages++
    from.assigned += assigned()[first] as number
    if (first & 0x40) from.likeAnswer++
    else from.likeRequest++
    if (isWhole) from.segmented++
    const service = first === NEGATIVE ? second : first & 0x40 ? first & ~0x40 : -1
    if (service >= 0) this.#pair(from, first, second, service, length, usual)
    from.lastSid = first
    from.lastSecond = second
    from.lastNumber = this.#number
    const asked = this.#asked[first]
    if (asked === undefined) this.#asked[first] = { by: from, second, number: this.#number }
    else {
      asked.by = from
      asked.second = second
      asked.number = this.#number
    }
  }

  #pair(
    from: Heard,
    first: number,
    second: number,
    service: number,
    length: number,
    usual: readonly Heard[],
  ): void {
    const by = this.#askerOf(first, second, service, usual)
    if (by === undefined || by === from) return
    by.answered++
    from.answering++
    if (!from.services.has(service) || !by.services.has(service)) {
      by.services.add(service)
      from.services.add(service)
    }
    if (from.latestPeer?.heard !== by && !from.peers.has(by)) this.#countInFamily(by, from)
    link(by, from)
    link(from, by)
    if (first !== NEGATIVE) countDialect(from, service, second, length)
  }

  /** Whom a message answers: a usual peer if one fits, else whoever asked for the service last. */
  #askerOf(first: number, second: number, service: number, usual: readonly Heard[]): Heard | undefined {
    for (const peer of usual)
      if (this.#fits(peer.lastSid, peer.lastSecond, peer.lastNumber, first, second, service)) return peer
    const asked = this.#asked[service]
    if (asked === undefined) return undefined
    return this.#fits(service, asked.second, asked.number, first, second, service) ? asked.by : undefined
  }

  #countInFamily(asker: Heard, answerer: Heard): void {
    const apart = Number.parseInt(answerer.id, 16) - Number.parseInt(asker.id, 16)
    const known = this.#families.get(apart)
    if (Number.isNaN(apart) || (known === undefined && this.#families.size >= MOST_FAMILIES)) return
    const family = known ?? { pairs: 0 }
    family.pairs++
    this.#families.set(apart, family)
    asker.family ??= family
    answerer.family ??= family
  }

  #fits(
    sid: number,
    askedSecond: number,
    number: number,
    first: number,
    second: number,
    service: number,
  ): boolean {
    if (sid !== service || number < 0 || this.#number - number > ANSWER_WITHIN_MESSAGES) return false
    if (first === NEGATIVE || !ECHOING.has(service) || second < 0 || askedSecond < 0) return true
    return (askedSecond & 0x7f) === (second & 0x7f)
  }
}

function link(from: Heard, to: Heard): void {
  let peer = from.latestPeer
  if (peer?.heard !== to) {
    peer = from.peers.get(to)
    if (peer === undefined) {
      if (from.peers.size >= MOST_PEERS) return
      peer = { heard: to, times: 0 }
      from.peers.set(to, peer)
    }
    from.latestPeer = peer
  }
  peer.times++
}

/** Services that only one standard has, by request identifier. */
const ONLY_UDS: ReadonlySet<number> = new Set([0x19, 0x24, 0x29, 0x2a, 0x84, 0x87])
const ONLY_KWP: ReadonlySet<number> = new Set([
  0x12, 0x13, 0x17, 0x18, 0x1a, 0x20, 0x21, 0x26, 0x30, 0x32, 0x33, 0x39, 0x3a, 0x3b, 0x81, 0x82,
])

/** A positive answer that only one dialect can have given speaks for it. */
function countDialect(from: Heard, service: number, second: number, length: number): void {
  if (ONLY_UDS.has(service) || (service === 0x10 && length === 6)) from.udsOnly++
  else if (ONLY_KWP.has(service) || (service === 0x10 && second >= 0x80)) from.kwpOnly++
  // No standard answers 10 without repeating the session, and none assigns the services from 88 to B9.
  else if ((service === 0x10 && second < 0) || (service >= 0x88 && service <= 0xbe)) from.makerOnly++
}

/**
 * Counts a whole segmented message that ran under the flow control of another sender. It proves the one that sent it;
 * the other may be plain traffic whose first byte happens to look like flow control.
 */
export function countFlow(sender: Heard, receiver: Heard): void {
  sender.flowPaired++
  link(sender, receiver)
  link(receiver, sender)
}

/** Decides about a sender as soon as the evidence allows. A verdict once given stays. */
export function judge(heard: Heard): void {
  if (heard.verdict !== 'open' || heard.forced) return
  const malformed = heard.lane?.malformed ?? 0
  const frames = heard.lane?.frames ?? heard.messages
  if (heard.standard) {
    if (malformed >= STANDARD_PATIENCE && malformed * 2 > frames) heard.verdict = 'plain'
    return
  }
  if (malformed > OTHER_PATIENCE && malformed * 50 > frames) heard.verdict = 'plain'
  else if (heard.odd > STANDARD_PATIENCE && heard.odd > heard.messages + heard.flowPaired * 4)
    heard.verdict = 'plain'
  else if (isProven(heard)) heard.verdict = 'diagnostic'
  else if (heard.messages > MOST_UNPROVEN_MESSAGES) heard.verdict = 'plain'
}

/** The verdict when a message has to be shown or left out, however thin the evidence is by then. */
export function isShown(heard: Heard): boolean {
  judge(heard)
  if (heard.verdict !== 'open') return heard.verdict === 'diagnostic'
  if (!heard.standard) return false
  if (heard.answered + heard.answering + heard.flowPaired > 0) return true
  // Of random bytes, two in five are services some standard knows.
  return heard.messages < FEW_MESSAGES || heard.assigned * 2 >= heard.messages
}

/** Whether what a sender said and was answered proves that it carries diagnostics. */
export function isProven(heard: Heard): boolean {
  if (heard.flowPaired >= 1) return true
  const paired = heard.answered + heard.answering
  const enough = paired >= 3 || (paired >= 2 && heard.services.size >= 2)
  if (enough && paired * 2 >= heard.messages) return true
  if ((heard.family?.pairs ?? 0) >= FAMILY_PAIRS && paired >= heard.messages) return true
  return heard.segmented >= 3 && heard.segmented === heard.messages && heard.likeAnswer === heard.messages
}

/** Whether a sender asks or answers; `undefined` when neither is clear. */
export function roleOf(heard: Heard): 'asks' | 'answers' | undefined {
  if (heard.answered !== heard.answering) return heard.answered > heard.answering ? 'asks' : 'answers'
  return undefined
}
