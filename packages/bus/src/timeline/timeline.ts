/**
 * @module The timeline of a recording: who was addressed, opened, refused, reset, written to, cleared and silenced,
 * when the recording has gaps, and the supply voltage whenever it passed by.
 *
 * Services 10, 11, 14, 27, 28, 29, 2E, 31, 34 to 37, 3D, 85 of ISO 14229-1, 04 of SAE J1979, 20, 29, 3B of ISO
 * 14230-3. What a unit confirmed counts; a request with its answer suppressed counts as asked for. A session that is
 * not the default ends by 10 01, a reset, or S3 (5 s without a request, ISO 14229-2), which nothing on the wire shows.
 */

import { formatTime, keepTime, type RecordedTime, secondsBetween } from '../frame/index.ts'
import type { Message } from '../message/types.ts'
import type { OpenEntry, TimelineEntry, TimelineWhat } from './entry.ts'
import { Supply } from './supply.ts'
import { close, closeAll, newUnit, type State, type Unit } from './unit.ts'

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
const MOST_REPEATED = 512
const MOST_SUPPLY_SPANS = 1024

const PENDING = '78'

/** Identifiers that ISO 15765-4 sets aside for requests to all units. */
const FUNCTIONAL = /^(7DF|18DB....)$/

/** Control types of 28 that silence a unit (ISO 14229-1). */
const SILENCING: ReadonlySet<number> = new Set([1, 2, 3, 4])

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
  readonly #entries: OpenEntry[] = []
  readonly #channels: Map<string, Channel> = new Map()
  #leftOut = 0

  constructor(options: TimelineOptions = {}) {
    this.#gapSeconds = options.gapSeconds ?? 10
    this.#sessionSeconds = options.sessionSeconds ?? 5
    this.#most = options.mostEntries ?? 20_000
  }

  /**
   * Frames were recorded on a channel from one time to the other (`DecodeListener.recorded`). On a channel of which this
   * is told, gaps are those between frames instead of those between messages.
   */
  recorded(name: string, from: RecordedTime, to: RecordedTime): void {
    const channel = this.#channel(name)
    const { recordedTo } = channel
    if (recordedTo !== undefined && secondsBetween(recordedTo, from) >= this.#gapSeconds)
      this.#add(gap(name, recordedTo, from, 'nothing recorded'))
    channel.recordedTo = keepTime(to)
  }

  /** One message. */
  message(message: Message): void {
    const channel = this.#channel(message.channel)
    this.#pass(channel, message.time)
    const unit = this.#unit(channel, message)
    if (unit === undefined) return
    if (!message.complete) {
      this.#repeat(unit, message, 'incomplete', message.incomplete ?? '')
      return
    }
    if (message.kind === 'request') this.#asked(channel, unit, message)
    else this.#answered(channel, unit, message)
  }

  /** The recording is over: what is open is closed, and all lines are handed out in the order of their beginning. */
  end(): TimelineResult {
    for (const channel of this.#channels.values()) {
      const { recordedTo, last, silences } = channel
      if (recordedTo === undefined) for (const silence of silences) this.#add(silence)
      for (const unit of channel.units.values()) {
        const end = latest(latest(unit.last, last), recordedTo)
        this.#timeOut(unit, end)
        closeAll(unit, end, 'recording-end')
        this.#tellUnit(channel, unit)
      }
    }
    const entries = this.#entries.toSorted((a, b) => secondsBetween(b.from, a.from)).map(finished)
    return { entries, leftOut: this.#leftOut }
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
      else if (channel.recordedTo === undefined) this.#leftOut++
    }
    channel.last = latest(time, last)
  }

  #add(entry: OpenEntry): OpenEntry {
    if (this.#entries.length < this.#most) this.#entries.push(entry)
    else this.#leftOut++
    return entry
  }

  #point(unit: Unit, message: Message, what: TimelineWhat, detail: string): OpenEntry {
    return this.#add({
      from: message.time,
      to: message.time,
      channel: unit.channel,
      unit: unit.id,
      what,
      detail,
      proof: message.kind === 'request' ? 'asked' : 'answered',
    })
  }

  /** Equal things of one unit are one line from the first to the last. */
  #repeat(unit: Unit, message: Message, what: TimelineWhat, detail: string): void {
    const key = `${what} ${detail}`
    const known = unit.repeated.get(key)
    if (known !== undefined) {
      known.to = message.time
      known.times = (known.times ?? 1) + 1
      return
    }
    const entry = this.#point(unit, message, what, detail)
    entry.times = 1
    if (unit.repeated.size < MOST_REPEATED) unit.repeated.set(key, entry)
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
    for (const unit of targets) this.#ending(unit, message)
    this.#change(asking, message)
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
      this.#repeat(
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
    this.#change(unit, message)
  }

  /** What a suppressed request ends in a unit that had confirmed it before. */
  #ending(unit: Unit, message: Message): void {
    const value = message.subFunction?.value
    if (message.service === '10' && value === 1) closeAll(unit, message.time, 'asked')
    if (message.service === '11') closeAll(unit, message.time, 'reset')
    if (message.service === '28' && value === 0) close(unit, 'muted', message.time, 'asked')
    if (message.service === '85' && value === 1) close(unit, 'codes-off', message.time, 'asked')
  }

  /** A state that lasts begins, or goes on when it is the same. */
  #open(unit: Unit, message: Message, state: State, detail: string): void {
    if (unit.open.get(state)?.detail === detail) return
    close(unit, state, message.time, 'replaced')
    unit.open.set(state, this.#point(unit, message, state, detail))
    this.#channel(unit.channel).open.add(unit)
  }

  #change(unit: Unit, message: Message): void {
    const { service, protocol, time } = message
    const value = message.subFunction?.value ?? 0
    const detail = message.subFunction?.name ?? message.dids?.[0]?.did ?? ''
    if (protocol === 'obd') {
      if (service === '04') this.#point(unit, message, 'cleared', 'emission-related codes')
      return
    }
    switch (service) {
      case '10':
        this.#session(unit, message, value)
        return
      case '20':
        if (protocol === 'kwp') closeAll(unit, time, 'asked')
        return
      case '11':
        this.#point(unit, message, 'reset', detail)
        // Rapid power shut-down (4, 5) is prepared here, it happens when the key is turned off.
        if (protocol === 'kwp' || value < 4) closeAll(unit, time, 'reset')
        return
      case '14':
        this.#point(unit, message, 'cleared', '')
        return
      case '27':
        if (value % 2 === 0) this.#open(unit, message, 'security-opened', `level ${value - 1}`)
        return
      case '28':
        if (protocol === 'kwp' || SILENCING.has(value)) this.#open(unit, message, 'muted', detail)
        else close(unit, 'muted', time, 'asked')
        return
      case '29':
        if (protocol === 'kwp') close(unit, 'muted', time, 'asked')
        else this.#point(unit, message, 'authentication', detail)
        return
      case '85':
        if (protocol === 'kwp') return
        if (value === 2 || detail === 'off') this.#open(unit, message, 'codes-off', detail)
        else close(unit, 'codes-off', time, 'asked')
        return
      case '31':
        this.#point(unit, message, 'routine', routineOf(message))
        return
      default:
        this.#written(unit, message)
    }
  }

  #session(unit: Unit, message: Message, value: number): void {
    const standard = message.protocol === 'kwp' ? 0x81 : 0x01
    if (value === standard) {
      closeAll(unit, message.time, 'asked')
      return
    }
    const number = value.toString(16).toUpperCase().padStart(2, '0')
    const detail = `${message.subFunction?.name ?? 'session'} ${number}`
    // Another session locks security again (ISO 14229-1); the same one asked for again does too.
    close(unit, 'security-opened', message.time, 'session-end')
    this.#open(unit, message, 'session', detail)
  }

  #written(unit: Unit, message: Message): void {
    const { service, time } = message
    const did = message.dids?.[0]
    if (service === '2E' || service === '3B') {
      this.#point(unit, message, 'written', did === undefined ? '' : `${did.did} ${did.name}`)
    } else if (service === '3D') {
      this.#point(unit, message, 'written', 'memory')
    } else if (service === '34' || service === '35') {
      const what = service === '34' ? 'written' : 'read-out'
      unit.transfer = this.#point(unit, message, what, message.name)
      unit.transfer.times = 0
    } else if (service === '36') {
      unit.transfer ??= this.#point(unit, message, 'written', message.name)
      unit.transfer.to = time
      unit.transfer.times = (unit.transfer.times ?? 0) + 1
    } else if (service === '37' && unit.transfer !== undefined) {
      unit.transfer.to = time
      unit.transfer.endedBy = 'asked'
      unit.transfer = undefined
    }
  }

  #tellUnit(channel: Channel, unit: Unit): void {
    if (unit.transfer !== undefined) unit.transfer.endedBy = 'recording-end'
    const place = { channel: channel.name, unit: unit.id }
    for (const { from, to, low, high, times } of unit.supply?.spans ?? []) {
      this.#add({
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
    this.#add({
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

function routineOf(message: Message): string {
  const words = [message.subFunction?.name, message.dids?.[0]?.did].filter((word) => word !== undefined)
  return words.join(' ')
}

function finished(entry: OpenEntry): TimelineEntry {
  const { from, to, ...rest } = entry
  return { from: formatTime(from), to: formatTime(to), ...rest }
}
