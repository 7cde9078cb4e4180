/**
 * @module The timeline of a recording: who was addressed, opened, refused, reset, written to, cleared and silenced,
 * when the recording has gaps, and the supply voltage whenever it passed by.
 *
 * Services 10, 11, 14, 27, 28, 29, 2E, 31, 34 to 37, 3D, 85 of ISO 14229-1, 04 of SAE J1979, 20, 29, 3B of ISO
 * 14230-3. What a unit confirmed counts; a request with its answer suppressed counts as asked for. A session that is
 * not the default ends by 10 01, a reset, or S3 (5 s without a request, ISO 14229-2), which nothing on the wire shows.
 */

import { keepTime, type RecordedTime, secondsBetween } from '../frame/index.ts'
import type { Message } from '../message/types.ts'
import { Changes } from './changes.ts'
import type { OpenEntry, TimelineEntry } from './entry.ts'
import { Lines } from './lines.ts'
import { Supply } from './supply.ts'
import { closeAll, newUnit, type Unit } from './unit.ts'

/** Choices for a timeline. */
export interface TimelineOptions {
  /** Seconds without a message (or frame, see `recorded`) that make a gap; 10 when left out. */
  readonly gapSeconds?: number
  /** S3 of the units in seconds; 5 when left out. */
  readonly sessionSeconds?: number
  /** Most lines; 20,000 when left out. */
  readonly mostEntries?: number
}

/** A whole timeline. */
export interface TimelineResult {
  /** In the order of `from`. */
  readonly entries: readonly TimelineEntry[]
  /** Lines that were left out because there were too many. */
  readonly leftOut: number
}

const MOST_UNITS = 4096
const MOST_SUPPLY_SPANS = 1024

const PENDING = '78'

/** Identifiers that ISO 15765-4 sets aside for requests to all units. */
const FUNCTIONAL = /^(7DF|18DB....)$/

/** What is known of one channel. */
interface Channel {
  readonly name: string
  readonly units: Map<string, Unit>
  /** Who asked last for a service, by service. */
  readonly lastAsked: Map<string, string>
  /** How many units answered an identifier. */
  readonly answerers: Map<string, number>
  /** Units that have, or had until lately, a state that lasts. */
  readonly open: Set<Unit>
  last: RecordedTime | undefined
  /** When the last frame stood, where that is told. */
  recordedTo: RecordedTime | undefined
  /** Gaps between messages: told only where nothing is known of frames. */
  readonly silences: OpenEntry[]
}

/** Gathers a timeline from messages in their order; bounded memory, however long the recording. */
export class Timeline {
  readonly #gapSeconds: number
  readonly #sessionSeconds: number
  readonly #most: number
  readonly #lines: Lines
  readonly #changes: Changes
  readonly #channels: Map<string, Channel> = new Map()

  constructor(options: TimelineOptions = {}) {
    this.#gapSeconds = options.gapSeconds ?? 10
    this.#sessionSeconds = options.sessionSeconds ?? 5
    this.#most = options.mostEntries ?? 20_000
    this.#lines = new Lines(this.#most)
    this.#changes = new Changes(this.#lines, (unit) => this.#channel(unit.channel).open.add(unit))
  }

  /**
   * Frames were recorded on a channel from one time to the other (`DecodeListener.recorded`). On a channel of which this
   * is told, gaps are those between frames instead of those between messages.
   */
  recorded(name: string, from: RecordedTime, to: RecordedTime): void {
    const channel = this.#channel(name)
    const { recordedTo } = channel
    if (recordedTo !== undefined && secondsBetween(recordedTo, from) >= this.#gapSeconds)
      this.#lines.add(gap(name, recordedTo, from, 'nothing recorded'))
    channel.recordedTo = keepTime(to)
  }

  /** One message. */
  message(message: Message): void {
    const channel = this.#channel(message.channel)
    this.#pass(channel, message.time)
    const unit = this.#unit(channel, message)
    if (unit === undefined) return
    if (!message.complete) {
      this.#lines.repeat(unit, message, 'incomplete', message.incomplete ?? '')
      return
    }
    if (message.kind === 'request') this.#asked(channel, unit, message)
    else this.#answered(channel, unit, message)
  }

  /** The recording is over: what is open is closed, and all lines are handed out in the order of their beginning. */
  end(): TimelineResult {
    for (const channel of this.#channels.values()) {
      const { recordedTo, last, silences } = channel
      if (recordedTo === undefined) for (const silence of silences) this.#lines.add(silence)
      for (const unit of channel.units.values()) {
        const end = latest(latest(unit.last, last), recordedTo)
        this.#timeOut(unit, end)
        closeAll(unit, end, 'recording-end')
        this.#tellUnit(channel, unit)
      }
    }
    return { entries: this.#lines.finished(), leftOut: this.#lines.leftOut }
  }

  #channel(name: string): Channel {
    let channel = this.#channels.get(name)
    if (channel === undefined) {
      channel = {
        name,
        units: new Map(),
        lastAsked: new Map(),
        answerers: new Map(),
        open: new Set(),
        last: undefined,
        recordedTo: undefined,
        silences: [],
      }
      this.#channels.set(name, channel)
    }
    return channel
  }

  #unit(channel: Channel, message: Message): Unit | undefined {
    const known = channel.units.get(message.id)
    if (known !== undefined) {
      known.last = message.time
      return known
    }
    if (channel.units.size >= MOST_UNITS) return undefined
    const unit = newUnit(message.id, channel.name, message.time)
    channel.units.set(message.id, unit)
    return unit
  }

  #pass(channel: Channel, time: RecordedTime): void {
    const { last } = channel
    if (last !== undefined && secondsBetween(last, time) >= this.#gapSeconds) {
      const silence = gap(channel.name, last, time, 'no diagnostic message')
      if (channel.silences.length < this.#most) channel.silences.push(silence)
      else if (channel.recordedTo === undefined) this.#lines.leftOut++
    }
    channel.last = latest(time, last)
  }

  #timeOut(unit: Unit, now: RecordedTime): void {
    if (unit.open.size === 0 || secondsBetween(unit.lastTouched, now) <= this.#sessionSeconds) return
    closeAll(unit, later(unit.lastTouched, this.#sessionSeconds), 'time-out')
  }

  #touch(unit: Unit, time: RecordedTime): void {
    this.#timeOut(unit, time)
    unit.lastTouched = time
  }

  /** The open units a request reaches: the one that answers its identifier, or all where it speaks to a group. */
  #targets(channel: Channel, asking: Unit, service: string): readonly Unit[] {
    const open: Unit[] = []
    for (const unit of channel.open) {
      if (unit.open.size === 0) channel.open.delete(unit)
      else open.push(unit)
    }
    if (open.length === 0) return open
    const answerers = channel.answerers.get(asking.id) ?? 0
    if (answerers === 1) return open.filter((unit) => unit.askedBy.has(asking.id))
    // A tester present that nobody answers is sent to the group, whatever its identifier.
    return answerers > 1 || service === '3E' || FUNCTIONAL.test(asking.id)
      ? open.filter((unit) => unit.askedBy.size > 0)
      : []
  }

  #asked(channel: Channel, asking: Unit, message: Message): void {
    asking.requests++
    channel.lastAsked.set(message.service, asking.id)
    // Only open states can time out or end, so only then does it matter whom a request reaches.
    const targets = this.#targets(channel, asking, message.service)
    for (const unit of targets) this.#touch(unit, message.time)
    this.#touch(asking, message.time)
    if (message.subFunction?.suppressResponse !== true || message.protocol !== 'uds') return
    // Nobody was to answer: what is known of the units reached ends, what begins is told of the request.
    for (const unit of targets) this.#changes.ending(unit, message)
    this.#changes.change(asking, message)
  }

  #answered(channel: Channel, unit: Unit, message: Message): void {
    unit.answers++
    const asking = channel.lastAsked.get(message.service)
    if (asking !== undefined && unit.askedBy.size < 16 && !unit.askedBy.has(asking)) {
      unit.askedBy.add(asking)
      channel.answerers.set(asking, (channel.answerers.get(asking) ?? 0) + 1)
    }
    this.#touch(unit, message.time)
    if (message.kind === 'negative') {
      if (message.nrc?.code === PENDING) return
      unit.refusals++
      const secure = message.service === '27' || (message.service === '29' && message.protocol === 'uds')
      const what = secure ? 'security-refused' : 'refused'
      this.#lines.repeat(
        unit,
        message,
        what,
        `${message.service} ${message.name}: ${message.nrc?.name ?? 'refused'}`,
      )
      return
    }
    if (message.protocol === 'other') return
    const volts = message.service === '02' ? undefined : message.values?.controlModuleVolts
    if (volts !== undefined) {
      unit.supply ??= new Supply(MOST_SUPPLY_SPANS)
      unit.supply.add(message.time, volts)
    }
    this.#changes.change(unit, message)
  }

  #tellUnit(channel: Channel, unit: Unit): void {
    if (unit.transfer !== undefined) unit.transfer.endedBy = 'recording-end'
    const place = { channel: channel.name, unit: unit.id }
    for (const { from, to, low, high, times } of unit.supply?.spans ?? []) {
      this.#lines.add({
        ...place,
        from,
        to,
        what: 'supply-voltage',
        detail: '',
        proof: 'answered',
        times,
        volts: { low, high },
      })
    }
    // Identifiers that only ask are told with the units that answer them; unanswered ones stand alone.
    const answersNobody = unit.answers === 0
    if (answersNobody && channel.answerers.has(unit.id)) return
    this.#lines.add({
      ...place,
      from: unit.first,
      to: unit.last,
      what: 'addressed',
      detail: [...unit.askedBy].join(' '),
      proof: answersNobody ? 'asked' : 'answered',
      counts: { requests: unit.requests, answers: unit.answers, refusals: unit.refusals },
    })
  }
}

function gap(channel: string, from: RecordedTime, to: RecordedTime, detail: string): OpenEntry {
  return { from, to: keepTime(to), channel, unit: '', what: 'gap', detail, proof: 'answered' }
}

function latest(time: RecordedTime, other: RecordedTime | undefined): RecordedTime {
  return other !== undefined && secondsBetween(time, other) > 0 ? other : time
}

function later(time: RecordedTime, seconds: number): RecordedTime {
  const nanoseconds = time.nanoseconds + Math.round((seconds % 1) * 1e9)
  return {
    seconds: time.seconds + Math.floor(seconds) + Math.floor(nanoseconds / 1e9),
    nanoseconds: nanoseconds % 1e9,
    decimals: time.decimals,
  }
}
