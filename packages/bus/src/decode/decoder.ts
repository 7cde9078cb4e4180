/**
 * @module Frames in, diagnostic messages out: reassembly, evidence, meaning, redaction.
 *
 * Which identifiers carry diagnostics, and in which dialect, often shows only some messages later. So messages wait
 * in a queue of bounded length; each is shown with the evidence gathered until it reaches the end of the queue.
 */

import { AddressBytes } from '../addressing/address-bytes.ts'
import { ChannelEvidence, countFlow, isShown, judge } from '../addressing/evidence.ts'
import { type Heard, mostHeard, newHeard } from '../addressing/heard.ts'
import type { CaptureSink, DoipAnnouncement, DoipMessage } from '../capture/contract.ts'
import type { Finding } from '../finding/index.ts'
import type { CanFrame, RecordedTime } from '../frame/index.ts'
import type { Arrived, Assembled } from '../isotp/assembled.ts'
import { Assembler } from '../isotp/assembler.ts'
import type { Lane } from '../isotp/lane.ts'
import type { Message } from '../message/types.ts'
import { MessageCells, type MessageField } from './cells.ts'
import { ChannelTimes } from './channel-times.ts'
import { ClockCheck } from './clock-check.ts'
import {
  errorFrame,
  malformed,
  silence,
  timeBackwards,
  tooManyChannels,
  tooManyIdentifiers,
} from './found.ts'
import { LookAhead } from './look-ahead.ts'
import { type LastAsked, present, type Received, understand } from './present.ts'
import type { Waiting } from './segment.ts'
import { type DiagnosticId, keyOf, Senders } from './senders.ts'
import { countMessage, newSummary, type Summary } from './summary.ts'
import { MessageTexts } from './text.ts'

/** Who listens to a decoder. Every part may be left out. */
export interface DecodeListener {
  readonly message?: (message: Message) => void
  /**
   * The same message as JSON text: what `JSON.stringify(messageLine(message))` gives, in a third of the time. With
   * `fields` chosen, those parted by tabs.
   */
  readonly line?: (json: string) => void
  readonly finding?: (finding: Finding) => void
  readonly announcement?: (announcement: DoipAnnouncement) => void
  /**
   * CAN frames of any kind were recorded on a channel from one time to the other without a pause of two seconds. Told at
   * each longer pause and at the end; not delayed as messages are. After a pause `from` is exact to the second.
   */
  readonly recorded?: (channel: string, from: RecordedTime, to: RecordedTime) => void
}

/** Choices for decoding. */
export interface DecodeChoices {
  /** Only these identifiers carry diagnostics. Left out, the standards and the evidence decide. */
  readonly ids?: readonly DiagnosticId[]
  /** What `line` is told of each message; left out, everything as JSON. */
  readonly fields?: readonly MessageField[]
  /** Shows the bytes of security services. */
  readonly raw?: boolean
  /** How many messages wait for evidence before the first is shown (0 for live use). */
  readonly lookAhead?: number
  /** How many findings of one code are told one by one; all are counted in the summary. */
  readonly findingsPerCode?: number
}

const LOOK_AHEAD_MESSAGES = 16_384
const LOOK_AHEAD_BYTES = 8 * 1024 * 1024
const FINDINGS_PER_CODE = 10_000
const MOST_CHANNELS = 256
const NO_PROBLEMS: readonly string[] = []

interface Channel {
  readonly name: string
  readonly senders: Senders
  readonly assembler: Assembler
  readonly evidence: ChannelEvidence
  readonly clock: ClockCheck
  readonly addressBytes: AddressBytes
  readonly times: ChannelTimes
  readonly lastAsked: LastAsked
}

/** Decodes one recording, or one live connection. It is itself a sink for capture readers. */
export class Decoder implements CaptureSink {
  readonly #listener: DecodeListener
  readonly #raw: boolean
  readonly #texts: MessageTexts | MessageCells
  readonly #findingsPerCode: number
  readonly #named: ReadonlyMap<number, DiagnosticId> | undefined
  readonly #channels: Map<string, Channel> = new Map()
  #current: Channel | undefined
  readonly #doipSenders: Map<string, Heard> = new Map()
  readonly #waiting: LookAhead
  readonly #summary = newSummary()
  #saidFull = false
  #saidManyChannels = false

  constructor(listener: DecodeListener, choices: DecodeChoices = {}) {
    this.#listener = listener
    this.#raw = choices.raw === true
    const { fields } = choices
    this.#texts = fields === undefined ? new MessageTexts(this.#raw) : new MessageCells(fields, this.#raw)
    this.#waiting = new LookAhead(choices.lookAhead ?? LOOK_AHEAD_MESSAGES, LOOK_AHEAD_BYTES, {
      keepsBytes: listener.message !== undefined,
      message: (waiting) => {
        if (isShown(waiting.from)) this.#show(waiting)
      },
      finding: (from, finding) => {
        if (isShown(from)) this.finding(finding)
      },
    })
    this.#findingsPerCode = choices.findingsPerCode ?? FINDINGS_PER_CODE
    this.#named =
      choices.ids === undefined
        ? undefined
        : new Map(choices.ids.map((named) => [keyOf(named.id, named.extended), named]))
  }

  /** Counts so far; final after `end`. */
  get summary(): Summary {
    return this.#summary
  }

  networkPacket(): void {
    this.#summary.frames++
  }

  frame(frame: CanFrame): void {
    this.#summary.frames++
    if (this.#isOneTooMany(frame.channel)) {
      this.#tellTooManyChannels(frame.where)
      return
    }
    const channel = this.#channelOf(frame.channel)
    channel.times.frame(frame)
    if (frame.error) {
      this.#summary.errorFrames++
      this.finding(errorFrame(frame))
      return
    }
    if (frame.remote) {
      this.#summary.remoteFrames++
      return
    }
    const sender = channel.senders.of(frame)
    if (sender === undefined) {
      this.#tellFull(frame)
      return
    }
    if (sender.addressBytes !== undefined && channel.addressBytes.frame(sender.addressBytes, frame)) return
    if (sender.verdict === 'plain' || sender.lane === undefined) return
    channel.assembler.frame(sender.lane, frame)
    if (sender.verdict === 'open') this.#judge(channel, sender)
  }

  isPlain(channel: string, id: number, extended: boolean): boolean {
    return !this.#isOneTooMany(channel) && this.#channelOf(channel).senders.isPlain(id, extended)
  }

  plainFrames(name: string, count: number, last: RecordedTime): void {
    this.#summary.frames += count
    if (this.#isOneTooMany(name)) return
    this.#channelOf(name).times.counted(count, last)
  }

  doip(message: DoipMessage): void {
    if (this.#isOneTooMany(message.channel)) {
      this.#tellTooManyChannels(message.where)
      return
    }
    const channel = this.#channelOf(message.channel)
    const from = this.#doipSender(message.channel, message.source, message.target)
    const back = this.#doipSenders.get(`${message.channel}/${message.target}>${message.source}`)
    const said = { bytes: message.payload, start: 0, length: message.payload.length }
    channel.evidence.message(from, said, false, back === undefined ? [] : [back])
    this.#wait(from, {
      ...said,
      expected: message.payload.length,
      incomplete: message.complete ? undefined : 'segments-lost',
      startTime: message.startTime,
      time: message.time,
      where: message.where,
      direction: undefined,
      late: undefined,
    })
  }

  announcement(announcement: DoipAnnouncement): void {
    this.#listener.announcement?.(announcement)
  }

  finding(finding: Finding): void {
    const count = (this.#summary.findings[finding.code] ?? 0) + 1
    this.#summary.findings[finding.code] = count
    if (count <= this.#findingsPerCode) this.#listener.finding?.(finding)
  }

  /** The recording is over: what is still under way is told as incomplete, what waits is shown. */
  end(): void {
    for (const channel of this.#channels.values()) {
      channel.times.end()
      channel.assembler.end()
      channel.addressBytes.end()
    }
    this.#waiting.drain()
  }

  /** Any damaged line of text can name a new channel: beyond this many they are noise, and each costs memory. */
  #isOneTooMany(name: string): boolean {
    return this.#channels.size >= MOST_CHANNELS && !this.#channels.has(name)
  }

  #tellTooManyChannels(where: Finding['where']): void {
    if (this.#saidManyChannels) return
    this.#saidManyChannels = true
    this.finding(tooManyChannels(where, MOST_CHANNELS))
  }

  #channelOf(name: string): Channel {
    const current = this.#current
    if (current !== undefined && current.name === name) return current
    let channel = this.#channels.get(name)
    if (channel === undefined) {
      channel = this.#openChannel(name)
      this.#channels.set(name, channel)
    }
    this.#current = channel
    return channel
  }

  #openChannel(name: string): Channel {
    const senders = new Senders(name, this.#named)
    const channel: Channel = {
      name,
      senders,
      evidence: new ChannelEvidence(),
      clock: new ClockCheck(),
      addressBytes: this.#openAddressBytes(name),
      times: new ChannelTimes({
        backwards: (frame, before) => this.finding(timeBackwards(frame, before)),
        recorded: (from, to) => this.#listener.recorded?.(name, from, to),
      }),
      lastAsked: new Array(256),
      assembler: new Assembler({
        assembled: (message) => this.#assembled(channel, message),
        odd: (lane, finding) => this.#odd(lane, finding),
        peerOf: (lane) => this.#peerOf(channel, lane),
      }),
    }
    return channel
  }

  #openAddressBytes(name: string): AddressBytes {
    return new AddressBytes(name, {
      message: (from, message) => this.#wait(from, message),
      odd: (from, finding) => this.#waiting.finding(from, finding),
      found: (normal, finding) => {
        normal.verdict = 'plain'
        if (normal.lane !== undefined) this.#channelOf(name).assembler.forget(normal.lane)
        this.finding(finding)
      },
    })
  }

  #tellFull(frame: CanFrame): void {
    if (this.#saidFull) return
    this.#saidFull = true
    this.finding(tooManyIdentifiers(frame))
  }

  #judge(channel: Channel, sender: Heard): void {
    judge(sender)
    if (sender.verdict === 'plain' && sender.lane !== undefined) channel.assembler.forget(sender.lane)
  }

  #peerOf(channel: Channel, lane: Lane): Lane | undefined {
    const { heard } = lane
    if (heard === undefined) return undefined
    for (const peer of channel.senders.usualPeers(heard))
      if (peer.lane?.transfer !== undefined) return peer.lane
    return mostHeard(heard)?.heard.lane
  }

  #assembled(channel: Channel, message: Assembled): void {
    const from = message.lane.heard
    if (from === undefined) return
    const isWhole = message.segmented && message.incomplete === undefined
    channel.evidence.message(from, message, isWhole, channel.senders.usualPeers(from))
    if (isWhole) {
      channel.clock.transfer(message)
      const receiver = message.flowLane?.heard
      if (receiver !== undefined) countFlow(from, receiver)
    }
    this.#wait(from, message)
  }

  #odd(lane: Lane, finding: Finding): void {
    const from = lane.heard
    if (from === undefined) return
    from.odd++
    if (from.verdict !== 'plain') this.#waiting.finding(from, finding)
  }

  #doipSender(channel: string, source: string, target: string): Heard {
    const key = `${channel}/${source}>${target}`
    const known = this.#doipSenders.get(key)
    if (known !== undefined) return known
    const heard = newHeard(`${source}>${target}`, channel, undefined, true, true, 'diagnostic')
    if (this.#doipSenders.size < 100_000) this.#doipSenders.set(key, heard)
    return heard
  }

  #wait(from: Heard, message: Arrived): void {
    if (from.verdict !== 'plain') this.#waiting.message(from, message)
  }

  #show(waiting: Waiting): void {
    const channel = this.#channelOf(waiting.from.channel)
    const late = channel.clock.isFast ? undefined : waiting.late
    const received = late === undefined ? waiting : this.#untilPause(waiting, late)
    const understood = understand(received, channel.lastAsked)
    countMessage(this.#summary, received, understood)
    const { meaning } = understood
    this.#listener.message?.(present(received, understood, this.#raw))
    this.#listener.line?.(this.#texts.text(received, understood))
    for (const problem of meaning.problems ?? NO_PROBLEMS)
      this.finding(malformed(received, understood, problem))
  }

  /** A message with a pause longer than N_Cr in it: the receiver had given up, so what came before is all there is. */
  #untilPause(waiting: Waiting, late: NonNullable<Waiting['late']>): Received {
    this.finding(silence(waiting, late))
    const { from, expected, startTime, direction } = waiting
    const payload = waiting.payload.subarray(0, late.received)
    const { time, where } = late
    return { from, payload, expected, incomplete: 'timeout', startTime, time, where, direction }
  }
}
