/** @module What has been heard from one sender: the evidence that it carries diagnostics, and in which dialect. */

import type { Lane } from '../isotp/lane.ts'
import type { AddressByteReading } from './address-bytes.ts'

/** Whether a sender's messages are shown: known as diagnostics, known as plain traffic, or not yet either. */
export type Verdict = 'diagnostic' | 'plain' | 'open'

/** Pairs of asker and answerer whose identifiers lie equally far apart. */
export interface PairFamily {
  pairs: number
}

/** Someone who answers a sender or is answered by it. */
export interface Peer {
  readonly heard: Heard
  times: number
}

/** One sender on one channel, with everything counted that later decides about it. */
export interface Heard {
  readonly id: string
  readonly channel: string
  /** Where its frames are put together; absent for senders that do not speak on CAN. */
  readonly lane: Lane | undefined
  /** The standards, or the caller, set this identifier aside for diagnostics. */
  readonly standard: boolean
  /** Verdict that no evidence changes: the caller named the identifiers. */
  readonly forced: boolean
  verdict: Verdict
  messages: number
  /** Complete segmented messages. */
  segmented: number
  /** Frames that fit no transfer. */
  odd: number
  /** Messages whose first byte some standard assigns to a service or its answer. */
  assigned: number
  /** Messages with the bit of an answer in their first byte, and those without. */
  likeAnswer: number
  likeRequest: number
  /** Messages of others that answer this sender, and messages of this sender that answer others. */
  answered: number
  answering: number
  /** Services that were answered either way. */
  readonly services: Set<number>
  /** Whole segmented messages that ran under another sender's flow control. */
  flowPaired: number
  /** Who answers it or is answered by it, and how often. */
  readonly peers: Map<Heard, Peer>
  /** The one of them who did so last. */
  latestPeer: Peer | undefined
  /** Those that by custom answer it or are answered by it, once all of them were heard. */
  usualPeers: readonly Heard[] | undefined
  /** The pairs of asker and answerer on its channel whose identifiers lie as far apart as its own pair. */
  family: PairFamily | undefined
  /** The last message: first two bytes and its number on the channel. */
  lastSid: number
  lastSecond: number
  lastNumber: number
  /** Positive answers that only one dialect has. */
  udsOnly: number
  kwpOnly: number
  makerOnly: number
  /** The same identifier read with an address byte in front, while that is possible or once it is found. */
  addressBytes: AddressByteReading | undefined
}

/** A sender of whom nothing has been heard. */
export function newHeard(
  id: string,
  channel: string,
  lane: Lane | undefined,
  standard: boolean,
  forced: boolean,
  verdict: Verdict,
): Heard {
  return {
    id,
    channel,
    lane,
    standard,
    forced,
    verdict,
    messages: 0,
    segmented: 0,
    odd: 0,
    assigned: 0,
    likeAnswer: 0,
    likeRequest: 0,
    answered: 0,
    answering: 0,
    services: new Set(),
    flowPaired: 0,
    usualPeers: undefined,
    family: undefined,
    peers: new Map(),
    latestPeer: undefined,
    lastSid: -1,
    lastSecond: -1,
    lastNumber: -1,
    udsOnly: 0,
    kwpOnly: 0,
    makerOnly: 0,
    addressBytes: undefined,
  }
}

/** The peer that answered a sender, or was answered by it, most often; the first of several. */
export function mostHeard(heard: Heard): Peer | undefined {
  let best: Peer | undefined
  for (const peer of heard.peers.values()) if (best === undefined || peer.times > best.times) best = peer
  return best
}
