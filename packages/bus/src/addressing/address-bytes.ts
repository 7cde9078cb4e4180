/**
 * @module Finds 11-bit identifiers whose first data byte is an address (ISO 15765-2 extended and mixed addressing).
 *
 * Nothing in a frame says so. Every 11-bit identifier is therefore read both ways until one reading fails: with the
 * address byte, frame types stand in the second byte, and there the answers of normal addressing (40 and up) are none.
 * The second reading counts once its messages answer each other while the first one's answer nobody. What it shows
 * never enters the evidence of the first, so that a recording with normal addressing is read as if it were not there.
 * The thresholds are ours.
 */

import type { Finding } from '../finding/index.ts'
import { type CanFrame, formatId, keepWhere } from '../frame/index.ts'
import type { Assembled } from '../isotp/assembled.ts'
import { Assembler } from '../isotp/assembler.ts'
import { type Lane, newLane } from '../isotp/lane.ts'
import { newPci, OVERFLOW, type Pci, readPci } from '../isotp/pci.ts'
import { hexByte } from '../uds/reader.ts'
import { ChannelEvidence, countFlow, isProven } from './evidence.ts'
import { type Heard, mostHeard, newHeard } from './heard.ts'

/** Frames that do not fit the second reading, before it is given up. */
const PATIENCE = 2
/** Addresses on one identifier, and messages, before the second reading is given up for want of evidence. */
const MOST_ADDRESSES = 32
const MOST_UNPROVEN_MESSAGES = 256
/** Senders of all second readings of a channel: random bytes must not make endlessly many. */
const MOST_SENDERS = 2048

const NOBODY: readonly Heard[] = []

/** The second reading of one identifier. */
export interface AddressByteReading {
  /** The same identifier read without an address byte. */
  readonly normal: Heard
  readonly byAddress: Map<number, Heard>
  frames: number
  /** Frames that do not fit this reading. */
  misfits: number
  messages: number
  /** The evidence decided for this reading. */
  found: boolean
}

/** Who is told what the second readings of a channel give. */
export interface AddressByteListener {
  /** A message; it is shown once its sender's verdict is `diagnostic`. */
  message(from: Heard, message: Assembled): void
  odd(from: Heard, finding: Finding): void
  /** An identifier was found to carry an address byte; its normal reading is void. */
  found(normal: Heard, finding: Finding): void
}

/** A second reading of an identifier of which nothing has been heard. */
export function newAddressByteReading(normal: Heard): AddressByteReading {
  return { normal, byAddress: new Map(), frames: 0, misfits: 0, messages: 0, found: false }
}

/** The second readings of one channel. */
export class AddressBytes {
  readonly #channel: string
  readonly #listener: AddressByteListener
  readonly #assembler: Assembler
  readonly #evidence: ChannelEvidence = new ChannelEvidence()
  readonly #pci: Pci = newPci()
  /** Senders of readings that are not given up. */
  #senders = 0
  readonly #readingOf: Map<Heard, AddressByteReading> = new Map()

  constructor(channel: string, listener: AddressByteListener) {
    this.#channel = channel
    this.#listener = listener
    this.#assembler = new Assembler({
      assembled: (message) => this.#assembled(message),
      odd: (lane, finding) => {
        if (lane.heard !== undefined) this.#odd(lane.heard, finding)
      },
      peerOf: (lane) => this.#peerOf(lane),
    })
  }

  /** Takes a data frame of an identifier. True when the identifier is known to be read this way, and only so. */
  frame(reading: AddressByteReading, frame: CanFrame): boolean {
    if (reading.found) {
      this.#read(reading, frame)
      return true
    }
    reading.frames++
    if (this.#isLost(reading)) {
      this.#giveUp(reading)
      return false
    }
    const pci = this.#pci
    readPci(frame.data, 1, pci)
    if (pci.kind === 'malformed' || (pci.kind === 'flow' && pci.status > OVERFLOW)) reading.misfits++
    else this.#read(reading, frame)
    return reading.found
  }

  /** The recording is over: transfers under way are told as incomplete. */
  end(): void {
    this.#assembler.end()
  }

  #isLost(reading: AddressByteReading): boolean {
    const { normal } = reading
    if (answersAnyone(normal) || (normal.verdict === 'diagnostic' && !normal.forced)) return true
    if (reading.misfits > PATIENCE && reading.misfits * 8 > reading.frames) return true
    return reading.byAddress.size > MOST_ADDRESSES || reading.messages > MOST_UNPROVEN_MESSAGES
  }

  #giveUp(reading: AddressByteReading): void {
    for (const heard of reading.byAddress.values()) {
      heard.verdict = 'plain'
      this.#readingOf.delete(heard)
      if (heard.lane === undefined) continue
      this.#assembler.forget(heard.lane)
      heard.lane.heard = undefined
      this.#senders--
    }
    reading.byAddress.clear()
    reading.normal.addressBytes = undefined
  }

  #read(reading: AddressByteReading, frame: CanFrame): void {
    const address = frame.data[0]
    if (address === undefined) return
    const heard = reading.byAddress.get(address) ?? this.#add(reading, frame, address)
    if (heard?.lane !== undefined) this.#assembler.frame(heard.lane, frame)
  }

  #add(reading: AddressByteReading, frame: CanFrame, address: number): Heard | undefined {
    if (this.#senders >= MOST_SENDERS) return undefined
    const id = `${formatId(frame.id, frame.extended)}-${hexByte(address)}`
    const lane = newLane(this.#channel, frame.id, frame.extended, 'extended', id)
    // Only this folder decides about it, see `judge`.
    const heard = newHeard(id, this.#channel, lane, false, true, reading.found ? 'diagnostic' : 'open')
    reading.byAddress.set(address, heard)
    lane.heard = heard
    this.#senders++
    this.#readingOf.set(heard, reading)
    return heard
  }

  #peerOf(lane: Lane): Lane | undefined {
    return lane.heard === undefined ? undefined : mostHeard(lane.heard)?.heard.lane
  }

  #odd(from: Heard, finding: Finding): void {
    from.odd++
    const reading = this.#readingOf.get(from)
    if (reading === undefined) return
    // Consecutive frames without a beginning are what plain bytes look like; a lone flow control is no oddity.
    if (!reading.found && finding.severity === 'warning') reading.misfits++
    this.#listener.odd(from, finding)
  }

  #assembled(message: Assembled): void {
    const from = message.lane.heard
    const reading = from === undefined ? undefined : this.#readingOf.get(from)
    if (from === undefined || reading === undefined) return
    reading.messages++
    const isWhole = message.segmented && message.incomplete === undefined
    this.#evidence.message(from, message, isWhole, NOBODY)
    const receiver = message.flowLane?.heard
    if (isWhole && receiver !== undefined) countFlow(from, receiver)
    this.#listener.message(from, message)
    if (!reading.found) this.#weigh(from, reading, message)
  }

  #weigh(from: Heard, reading: AddressByteReading, message: Assembled): void {
    const partner = mostHeard(from)?.heard
    if (partner === undefined) return
    const other = this.#readingOf.get(partner)
    if (other === undefined || other === reading || !isCredible(reading) || !isCredible(other)) return
    // A partner that is known needs one answer only.
    if (!other.found && !(isProven(from) && (from.peers.get(partner)?.times ?? 0) >= 2)) return
    if (!other.found) this.#find(other, partner, from, message)
    this.#find(reading, from, partner, message)
  }

  #find(reading: AddressByteReading, from: Heard, partner: Heard, message: Assembled): void {
    reading.found = true
    for (const heard of reading.byAddress.values()) heard.verdict = 'diagnostic'
    const id = idOf(from)
    const kind = addressOf(from) === addressOf(partner) ? 'mixed' : 'extended'
    const times = from.peers.get(partner)?.times ?? 0
    const how = from.flowPaired > 0 ? 'a segmented message ran under flow control' : 'messages'
    this.#listener.found(reading.normal, {
      code: 'address-byte-found',
      severity: 'note',
      where: keepWhere(message.where),
      what: `${id}: the first data byte is an address (${kind} addressing): read so, ${idOf(partner)} and it answered each other ${times} times (${how}), and read without it nothing answered`,
      doNext: 'Nothing. If it is wrong, name the identifiers that carry diagnostics.',
      params: { id, channel: this.#channel, addressing: kind, times },
    })
  }
}

/** Whether the messages of a sender answer others, or ran under another's flow control. */
function answersAnyone(heard: Heard): boolean {
  return heard.answering > 0 || heard.flowPaired > 0
}

function isCredible(reading: AddressByteReading): boolean {
  return reading.found || (!answersAnyone(reading.normal) && reading.misfits * 8 <= reading.frames)
}

function addressOf(heard: Heard): string {
  return heard.id.slice(-2)
}

function idOf(heard: Heard): string {
  return heard.id.slice(0, -3)
}
