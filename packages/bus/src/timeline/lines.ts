/** @module The lines of a timeline as they are gathered: bounded, equal ones of a unit joined. */

import { formatTime, secondsBetween } from '../frame/index.ts'
import type { Message } from '../message/types.ts'
import type { OpenEntry, TimelineEntry, TimelineWhat } from './entry.ts'
import type { Unit } from './unit.ts'

/** Different lines of one unit that are joined with those like them; further ones stand alone. */
const MOST_REPEATED = 512

/** Gathers lines, at most so many. */
export class Lines {
  readonly #most: number
  readonly #entries: OpenEntry[] = []
  /** Lines that were left out because there were too many. */
  leftOut = 0

  constructor(most: number) {
    this.#most = most
  }

  /** Adds a line, or counts it as left out. */
  add(entry: OpenEntry): OpenEntry {
    if (this.#entries.length < this.#most) this.#entries.push(entry)
    else this.leftOut++
    return entry
  }

  /** Something that happened at one time. */
  point(unit: Unit, message: Message, what: TimelineWhat, detail: string): OpenEntry {
    return this.add({
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
  repeat(unit: Unit, message: Message, what: TimelineWhat, detail: string): void {
    const key = `${what} ${detail}`
    const known = unit.repeated.get(key)
    if (known !== undefined) {
      known.to = message.time
      known.times = (known.times ?? 1) + 1
      return
    }
    const entry = this.point(unit, message, what, detail)
    entry.times = 1
    if (unit.repeated.size < MOST_REPEATED) unit.repeated.set(key, entry)
  }

  /** All lines in the order of their beginning. */
  finished(): readonly TimelineEntry[] {
    return this.#entries.toSorted((a, b) => secondsBetween(b.from, a.from)).map(finished)
  }
}

function finished(entry: OpenEntry): TimelineEntry {
  const { from, to, ...rest } = entry
  return { from: formatTime(from), to: formatTime(to), ...rest }
}
