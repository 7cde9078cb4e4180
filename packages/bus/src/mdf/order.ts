/**
 * @module Frames of several groups in order of time.
 *
 * A recorder that writes several groups into one block fills a buffer for each and writes whichever is full: records
 * of one group are in order of time (ASAM MDF demands it of master channels), records of several are not. They are
 * put in order within a window of `MOST_HELD` frames; of equal times the earlier record comes first.
 */

import type { CanFrame, RecordedTime } from '../frame/index.ts'
import { copyParts, emptyParts, type FrameParts, LONGEST_FRAME } from './frames.ts'
import type { Asking } from './source.ts'

/** Frames held while later records may still be older. Real recordings were seen to need 33. */
const MOST_HELD = 16_384

/** Something that walks frames. */
export interface Frames {
  /** The frame `next` found; it may be filled again by the next call. */
  readonly frame: FrameParts
  /** The group the frame came from. */
  readonly lane: number
  /** Goes to the next frame: `frame` when there is one, `more` when bytes must be read first (`fill`), `end`. */
  next(): 'frame' | 'more' | 'end'
  /** Reads what `next` lacked. */
  fill(): Asking<void>
}

/** True when `a` is before `b`. */
function isEarlier(a: RecordedTime, b: RecordedTime): boolean {
  return a.seconds === b.seconds ? a.nanoseconds < b.nanoseconds : a.seconds < b.seconds
}

/** A frame that is kept, and used again once it was told. */
interface Held extends FrameParts {
  arrival: number
  readonly store: Uint8Array
}

/** Frames of one group that wait, in their order. */
class Lane {
  #frames: Held[] = []
  #first = 0

  get first(): Held | undefined {
    return this.#frames[this.#first]
  }

  add(frame: Held): void {
    this.#frames.push(frame)
  }

  drop(): void {
    this.#first += 1
    if (this.#first < 1024 || this.#first * 2 < this.#frames.length) return
    this.#frames = this.#frames.slice(this.#first)
    this.#first = 0
  }
}

/** Walks another walker's frames in order of time. */
export class TimeOrder implements Frames {
  readonly #inner: Frames
  readonly #lanes = new Map<number, Lane>()
  /** Lanes that hold frames, a binary heap: the lane with the earliest first frame on top. */
  readonly #heap: Lane[] = []
  readonly #spare: Held[] = []
  #held = 0
  #arrivals = 0
  #innerOver = false
  readonly #last = { seconds: Number.NEGATIVE_INFINITY, nanoseconds: 0, decimals: 0 }
  #told: Held | undefined
  readonly lane = 0
  frame: FrameParts
  /** Frames that came too late to be put in their place. */
  late = 0

  constructor(inner: Frames) {
    this.#inner = inner
    this.frame = inner.frame
  }

  next(): 'frame' | 'more' | 'end' {
    while (!this.#innerOver && this.#held < MOST_HELD) {
      const found = this.#inner.next()
      if (found === 'more') return 'more'
      if (found === 'frame') this.#add(this.#inner.lane, this.#keep(this.#inner.frame))
      else this.#innerOver = true
    }
    const lane = this.#heap[0]
    const earliest = lane?.first
    if (lane === undefined || earliest === undefined) return 'end'
    lane.drop()
    this.#held -= 1
    if (lane.first === undefined) this.#removeTop()
    else this.#sink(0, lane)
    if (isEarlier(earliest.time, this.#last)) this.late += 1
    this.#last.seconds = earliest.time.seconds
    this.#last.nanoseconds = earliest.time.nanoseconds
    if (this.#told !== undefined) this.#spare.push(this.#told)
    this.#told = earliest
    this.frame = earliest
    return 'frame'
  }

  fill(): Asking<void> {
    return this.#inner.fill()
  }

  #keep(frame: FrameParts): Held {
    const kept = this.#spare.pop() ?? { ...emptyParts(), arrival: 0, store: new Uint8Array(LONGEST_FRAME) }
    copyParts(frame, kept, kept.store)
    kept.arrival = this.#arrivals
    this.#arrivals += 1
    return kept
  }

  #add(key: number, frame: Held): void {
    this.#held += 1
    let lane = this.#lanes.get(key)
    if (lane === undefined) {
      lane = new Lane()
      this.#lanes.set(key, lane)
    }
    const idle = lane.first === undefined
    lane.add(frame)
    if (!idle) return
    let at = this.#heap.length
    this.#heap.push(lane)
    while (at > 0) {
      const above = (at - 1) >> 1
      const parent = this.#heap[above]
      if (parent === undefined || !before(lane, parent)) break
      this.#heap[at] = parent
      at = above
    }
    this.#heap[at] = lane
  }

  #removeTop(): void {
    const last = this.#heap.pop()
    if (last !== undefined && this.#heap.length > 0) this.#sink(0, last)
  }

  /** Puts `lane` at `from` or below, where the heap's order wants it. */
  #sink(from: number, lane: Lane): void {
    let at = from
    for (;;) {
      let below = at * 2 + 1
      const left = this.#heap[below]
      if (left === undefined) break
      let child = left
      const right = this.#heap[below + 1]
      if (right !== undefined && before(right, left)) {
        child = right
        below += 1
      }
      if (!before(child, lane)) break
      this.#heap[at] = child
      at = below
    }
    this.#heap[at] = lane
  }
}

function before(a: Lane, b: Lane): boolean {
  const [one, other] = [a.first, b.first]
  if (one === undefined || other === undefined) return one !== undefined
  if (one.time.seconds !== other.time.seconds) return one.time.seconds < other.time.seconds
  if (one.time.nanoseconds !== other.time.nanoseconds) return one.time.nanoseconds < other.time.nanoseconds
  return one.arrival < other.arrival
}

/** Tells `emit` the frames of all walkers in order of time; of equal times the earlier walker comes first. */
export function* merge(walkers: readonly Frames[], emit: (frame: CanFrame) => void): Asking<void> {
  const waiting: Frames[] = []
  for (const walker of walkers) if (yield* advance(walker)) waiting.push(walker)
  for (;;) {
    let first = waiting[0]
    if (first === undefined) return
    for (const walker of waiting) if (isEarlier(walker.frame.time, first.frame.time)) first = walker
    emit(first.frame)
    if (!(yield* advance(first))) waiting.splice(waiting.indexOf(first), 1)
  }
}

function* advance(walker: Frames): Asking<boolean> {
  for (;;) {
    const found = walker.next()
    if (found !== 'more') return found === 'frame'
    yield* walker.fill()
  }
}
