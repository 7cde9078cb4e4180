/**
 * @module A fixed number of waiting entries, kept in columns of numbers and one store of payload bytes.
 *
 * Thousands of messages wait at any time. As objects they would be copied by the garbage collector again and again;
 * in columns they are a few large arrays that are used over and over.
 */

import type { Heard } from '../addressing/heard.ts'
import type { Finding, Where } from '../finding/index.ts'
import { type Direction, keepWhere, type RecordedTime, type ReusedWhere } from '../frame/index.ts'
import type { Arrived } from '../isotp/assembled.ts'
import type { Incomplete } from '../isotp/incomplete.ts'
import type { Received } from './present.ts'

/** Entries in one segment. */
export const SEGMENT_ENTRIES: number = 512
/** Payloads longer than this are kept as they are, not copied into the store. */
const MOST_STORED_BYTES = 1024
const FIRST_STORE_BYTES = 16_384
/** Numbers per entry: start (seconds, nanoseconds, decimals), end (the same), place, expected bytes, payload place. */
const NUMBERS = 9

/** How a place is kept: as the object it was, as a line number, or as a byte offset. */
const AS_OBJECT = 0
const AS_LINE = 1
const AS_OFFSET = 2

/** Directions by the number they are kept as. */
const DIRECTIONS: readonly (Direction | undefined)[] = [undefined, 'received', 'transmitted']

/** A message that comes out; `late` when a pause in it was longer than N_Cr. */
export interface Waiting extends Received {
  readonly late: Arrived['late']
}

/** What one entry needs beyond numbers, where it needs anything. */
interface Rare {
  readonly finding?: Finding
  readonly late?: Arrived['late']
  readonly incomplete?: Incomplete | undefined
  readonly payload?: Uint8Array
  readonly where?: Where
}

/** Up to `SEGMENT_ENTRIES` entries, taken out in the order they were put in. */
export class Segment {
  readonly #from: (Heard | undefined)[] = new Array(SEGMENT_ENTRIES)
  readonly #numbers: Float64Array = new Float64Array(SEGMENT_ENTRIES * NUMBERS)
  readonly #lengths: Int32Array = new Int32Array(SEGMENT_ENTRIES)
  readonly #places: Uint8Array = new Uint8Array(SEGMENT_ENTRIES)
  readonly #directions: Uint8Array = new Uint8Array(SEGMENT_ENTRIES)
  readonly #rare: Map<number, Rare> = new Map()
  #store: Uint8Array = new Uint8Array(FIRST_STORE_BYTES)
  #stored = 0
  #end = 0
  #next = 0
  #lent: Lent | undefined

  get isFull(): boolean {
    return this.#end === SEGMENT_ENTRIES
  }

  get isEmpty(): boolean {
    return this.#next === this.#end
  }

  /** Makes it new. */
  clear(): void {
    this.#stored = 0
    this.#end = 0
    this.#next = 0
    this.#rare.clear()
  }

  /** Payload bytes of the entry that comes out next. */
  get nextBytes(): number {
    return this.#lengths[this.#next] as number
  }

  /** Puts a finding in; it waits with the messages of its sender. */
  addFinding(from: Heard, finding: Finding): void {
    this.#from[this.#end] = from
    this.#lengths[this.#end] = 0
    this.#rare.set(this.#end++, { finding })
  }

  /** Puts a message in; its bytes are copied, or kept when there are many. */
  add(from: Heard, message: Arrived): void {
    const { length, where, startTime, time, direction, incomplete, late } = message
    const entry = this.#end++
    this.#from[entry] = from
    this.#lengths[entry] = length
    const numbers = this.#numbers
    const at = entry * NUMBERS
    numbers[at] = startTime.seconds
    numbers[at + 1] = startTime.nanoseconds
    numbers[at + 2] = startTime.decimals
    numbers[at + 3] = time.seconds
    numbers[at + 4] = time.nanoseconds
    numbers[at + 5] = time.decimals
    numbers[at + 7] = message.expected
    numbers[at + 8] = this.#stored
    const place = placeOf(where)
    this.#places[entry] = place
    this.#directions[entry] = direction === undefined ? 0 : DIRECTIONS.indexOf(direction)
    if (place !== AS_OBJECT) numbers[at + 6] = (place === AS_LINE ? where.line : where.byteOffset) as number
    const isLong = length > MOST_STORED_BYTES
    if (!isLong) this.#keep(message.bytes, message.start, length)
    if (isLong || place === AS_OBJECT || incomplete !== undefined || late !== undefined) {
      this.#rare.set(entry, {
        late,
        incomplete,
        ...(isLong ? { payload: message.bytes.subarray(message.start, message.start + length) } : {}),
        ...(place === AS_OBJECT ? { where: keepWhere(where) } : {}),
      })
    }
  }

  /**
   * Takes the oldest entry out: a message, or a finding with its sender. A message that is only `lent` is one object,
   * valid until the next entry is put in or taken out.
   */
  take(isLent: boolean): Waiting | { readonly from: Heard; readonly finding: Finding } {
    const entry = this.#next++
    const from = this.#from[entry] as Heard
    this.#from[entry] = undefined
    const rare = this.#rare.size === 0 ? undefined : this.#rare.get(entry)
    if (rare?.finding !== undefined) return { from, finding: rare.finding }
    const at = entry * NUMBERS
    const start = this.#numbers[at + 8] as number
    const end = start + (this.#lengths[entry] as number)
    const direction = DIRECTIONS[this.#directions[entry] as number]
    if (isLent) {
      this.#lent ??= new Lent(this, from)
      const lent = this.#lent
      lent.entry = entry
      lent.from = from
      lent.payload = rare?.payload ?? this.#store.subarray(start, end)
      lent.expected = this.#numbers[at + 7] as number
      lent.incomplete = rare?.incomplete
      lent.direction = direction
      lent.late = rare?.late
      return lent
    }
    return {
      from,
      payload: rare?.payload ?? this.#store.slice(start, end),
      expected: this.#numbers[at + 7] as number,
      incomplete: rare?.incomplete,
      startTime: this.startTime(entry),
      time: this.time(entry),
      where: this.where(entry),
      direction,
      late: rare?.late,
    }
  }

  /** When an entry that is a message began. */
  startTime(entry: number): RecordedTime {
    return this.#time(entry * NUMBERS)
  }

  /** When it ended. */
  time(entry: number): RecordedTime {
    return this.#time(entry * NUMBERS + 3)
  }

  /** Where it ended. */
  where(entry: number): Where {
    const rare = this.#rare.size === 0 ? undefined : this.#rare.get(entry)
    return rare?.where ?? this.#where(entry)
  }

  #time(at: number): RecordedTime {
    return {
      seconds: this.#numbers[at] as number,
      nanoseconds: this.#numbers[at + 1] as number,
      decimals: this.#numbers[at + 2] as number,
    }
  }

  #where(entry: number): Where {
    const place = this.#numbers[entry * NUMBERS + 6] as number
    return this.#places[entry] === AS_LINE ? { line: place } : { byteOffset: place }
  }

  #keep(bytes: Uint8Array, from: number, length: number): void {
    const start = this.#stored
    const needed = start + length
    if (needed > this.#store.length) {
      const larger = new Uint8Array(Math.max(needed, this.#store.length * 2))
      larger.set(this.#store.subarray(0, start))
      this.#store = larger
    }
    const store = this.#store
    for (let index = 0; index < length; index++) store[start + index] = bytes[from + index] as number
    this.#stored = needed
  }
}

/** A message that is lent: what nobody may ask for is only made when it is asked for. */
class Lent implements Waiting {
  readonly #segment: Segment
  entry = 0
  from: Heard
  payload: Uint8Array = new Uint8Array(0)
  expected = 0
  incomplete: Incomplete | undefined
  direction: Direction | undefined
  late: Arrived['late']

  constructor(segment: Segment, from: Heard) {
    this.#segment = segment
    this.from = from
  }

  get startTime(): RecordedTime {
    return this.#segment.startTime(this.entry)
  }

  get time(): RecordedTime {
    return this.#segment.time(this.entry)
  }

  get where(): Where {
    return this.#segment.where(this.entry)
  }
}

function placeOf(where: Where | ReusedWhere): number {
  if (where.part !== undefined) return AS_OBJECT
  if (where.line !== undefined) return where.byteOffset === undefined ? AS_LINE : AS_OBJECT
  return where.byteOffset === undefined ? AS_OBJECT : AS_OFFSET
}
