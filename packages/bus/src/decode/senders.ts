/** @module Finds the sender of a frame: by channel, identifier and, where the address has one, address byte. */

import { newAddressByteReading } from '../addressing/address-bytes.ts'
import { type Heard, newHeard, type Verdict } from '../addressing/heard.ts'
import { standardAddressing, usualPeers } from '../addressing/standard.ts'
import { type CanFrame, formatId } from '../frame/index.ts'
import { type Addressing, newLane } from '../isotp/lane.ts'
import { hexByte } from '../uds/reader.ts'

/** Identifiers the caller names. A 29-bit one has `extended`. */
export interface DiagnosticId {
  readonly id: number
  readonly extended: boolean
  /** How its address is carried; when left out, 11-bit ones are taken for normal unless the evidence says otherwise. */
  readonly addressing?: Addressing
}

/** More different identifiers than any vehicle has; further ones are not followed, so that memory stays bounded. */
const MOST_SENDERS = 20_000

const NOBODY: readonly Heard[] = []

/** All senders of one channel. */
export class Senders {
  readonly #channel: string
  readonly #named: ReadonlyMap<number, DiagnosticId> | undefined
  /** By `keyOf` the identifier. A second address byte makes another sender: 1 and it, above 32 bits. */
  readonly #byKey: Map<number, Heard> = new Map()
  #lastKey: number = Number.NaN
  #last: Heard | undefined
  /** True once an identifier could not be followed. */
  full = false

  constructor(channel: string, named: ReadonlyMap<number, DiagnosticId> | undefined) {
    this.#channel = channel
    this.#named = named
  }

  /** The sender of a frame; `undefined` when there are too many to follow. */
  of(frame: CanFrame): Heard | undefined {
    const key = keyOf(frame.id, frame.extended)
    const known = this.#known(key)
    if (known !== undefined && known.lane?.addressing === 'normal') return known
    const addressing =
      known?.lane?.addressing ??
      this.#named?.get(key)?.addressing ??
      standardAddressing(frame.id, frame.extended) ??
      'normal'
    if (addressing === 'normal') return this.#add(key, frame, addressing, undefined)
    const address = frame.data[0] ?? 0
    const addressed = key + (address + 1) * 0x1_0000_0000
    const sender = this.#byKey.get(addressed) ?? this.#add(addressed, frame, addressing, address)
    // The plain key remembers how this identifier is read.
    if (known === undefined && sender !== undefined) this.#byKey.set(key, sender)
    return sender
  }

  /** Whether frames of this identifier are known to carry no diagnostics; a verdict once given stays. */
  isPlain(id: number, extended: boolean): boolean {
    const known = this.#known(keyOf(id, extended))
    return (
      known !== undefined &&
      known.verdict === 'plain' &&
      known.addressBytes === undefined &&
      known.lane?.addressing === 'normal'
    )
  }

  /** The senders that by custom answer this one or are answered by it. */
  usualPeers(sender: Heard): readonly Heard[] {
    const lane = sender.lane
    if (lane === undefined) return NOBODY
    const known = sender.usualPeers
    if (known !== undefined) return known
    const peers: Heard[] = []
    const ids = usualPeers(lane.canId, lane.extended)
    for (const id of ids) {
      const peer = this.#byKey.get(keyOf(id, lane.extended))
      if (peer !== undefined) peers.push(peer)
    }
    if (peers.length === ids.length) sender.usualPeers = peers
    return peers
  }

  /** Most frames are of the sender that was just asked for. */
  #known(key: number): Heard | undefined {
    if (key === this.#lastKey) return this.#last
    const known = this.#byKey.get(key)
    if (known !== undefined) {
      this.#lastKey = key
      this.#last = known
    }
    return known
  }

  #add(key: number, frame: CanFrame, addressing: Addressing, address: number | undefined): Heard | undefined {
    if (this.#byKey.size >= MOST_SENDERS) {
      this.full = true
      return undefined
    }
    const id = formatId(frame.id, frame.extended) + (address === undefined ? '' : `-${hexByte(address)}`)
    const lane = newLane(this.#channel, frame.id, frame.extended, addressing, id)
    const said = this.#named?.get(keyOf(frame.id, frame.extended))
    const named = this.#named === undefined ? undefined : said !== undefined
    const standard = standardAddressing(frame.id, frame.extended) !== undefined
    const verdict: Verdict = named === undefined ? 'open' : named ? 'diagnostic' : 'plain'
    const heard = newHeard(id, this.#channel, lane, standard, named !== undefined, verdict)
    lane.heard = heard
    this.#byKey.set(key, heard)
    // Where nobody says how its address is carried, the evidence must.
    if (!frame.extended && named !== false && said?.addressing === undefined)
      heard.addressBytes = newAddressByteReading(heard)
    return heard
  }
}

/** One number for an identifier, small enough to be found fast: those of 29 bits are negative. */
export function keyOf(id: number, extended: boolean): number {
  return extended ? -1 - id : id
}
