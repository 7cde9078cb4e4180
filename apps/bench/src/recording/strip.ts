/** @module A recording as a strip: how dense it is, and what was done to which unit when. */
import {
  formatTime,
  type Message,
  type RecordedTime,
  secondsBetween,
  Timeline,
  type TimelineEntry,
} from '@shearline/bus'
import { Density, type DensityCounts } from './density.ts'
import { isRefusal } from './kept-message.ts'

/** What a strip is drawn from. Bounded, however long the recording. */
export interface Strip {
  /** Time of the first message as the recording wrote it; everything else counts from it. */
  readonly start: string
  /** Seconds of the earliest and the latest message, counted from the first. */
  readonly from: number
  readonly to: number
  readonly messages: number
  readonly density: DensityCounts
  readonly entries: readonly TimelineEntry[]
  /** Entries that were left out because there were too many. */
  readonly leftOut: number
}

/** Most entries a strip keeps: beyond these no picture shows them apart. */
const mostEntries = 5000

/** Gathers a strip from messages in their order. */
export class StripGatherer {
  readonly #density = new Density()
  readonly #timeline = new Timeline({ mostEntries })
  #start: RecordedTime | undefined
  #from = 0
  #to = 0
  #messages = 0

  /** One message; returns its seconds after the first. */
  message(message: Message): number {
    this.#start ??= message.time
    const seconds = secondsBetween(this.#start, message.time)
    this.#from = Math.min(this.#from, seconds)
    this.#to = Math.max(this.#to, seconds)
    this.#messages++
    this.#density.add(seconds, isRefusal(message))
    this.#timeline.message(message)
    return seconds
  }

  /** The strip; call once, when all messages have come. */
  end(): Strip {
    const { entries, leftOut } = this.#timeline.end()
    return {
      start: this.#start === undefined ? '0' : formatTime(this.#start),
      from: this.#from,
      to: this.#to,
      messages: this.#messages,
      density: this.#density.counts(),
      entries,
      leftOut,
    }
  }
}
