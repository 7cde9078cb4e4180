/**
 * @module The frames of one data group, in the order of its records.
 *
 * Data bytes may stand apart from their record: in records of another group of the same run (unsorted files, see
 * `waiting.ts`), or in a run of their own (SD blocks).
 */

import type { Tell } from './blocks.ts'
import { copyParts, emptyParts, type FrameParts, FrameReader } from './frames.ts'
import type { Group } from './layout.ts'
import type { Frames } from './order.ts'
import { type Boundary, DataRun } from './run.ts'
import type { Asking } from './source.ts'
import { VariableBytes, WaitingFrames } from './waiting.ts'

/** What a data group is made of. */
export interface DataGroup {
  readonly groups: readonly Group[]
  /** Bytes of the record id before every record: 0 (one group only), 1, 2, 4 or 8. */
  readonly idBytes: number
  readonly run: DataRun
  /** Runs of data bytes that stand elsewhere, by the link that names them. */
  readonly elsewhere: ReadonlyMap<number, DataRun>
  /** Record groups of data bytes, by the link that names them. */
  readonly variableGroups: ReadonlyMap<number, Group>
  /** References to variable records are not written: the first record meets the first bytes, and so on. */
  readonly pairInOrder: boolean
}

/** Bytes of a frame with their length word stand well below this; more is damage. */
const LONGEST_BYTES = 4096
const LONGEST_VARIABLE = 1024 * 1024 * 1024

interface KnownGroup {
  readonly group: Group
  readonly reader: FrameReader | undefined
  readonly bytesFrom: DataRun | VariableBytes | undefined
  count: number
}

/** Walks the records of a data group. */
export class GroupCursor implements Frames {
  readonly #data: DataGroup
  readonly #tell: Tell
  readonly #known = new Map<number, KnownGroup>()
  readonly #variables = new Map<Group, VariableBytes>()
  readonly #waiting: WaitingFrames = new WaitingFrames((frame) => this.#miss(frame))
  readonly #frame: FrameParts = emptyParts()
  #wanted: DataRun
  #least = 0
  #over = false
  #missing = 0
  #firstMissing = 0
  /** The frame `next` found. */
  frame: FrameParts = this.#frame
  lane = 0
  /** True when frames of several groups share the run, so that they may not be in order of time. */
  readonly mixed: boolean

  constructor(
    data: DataGroup,
    start: { readonly seconds: number; readonly nanoseconds: number },
    tell: Tell,
  ) {
    this.#data = data
    this.#tell = tell
    this.#wanted = data.run
    this.mixed = data.groups.filter((group) => group.layout !== undefined).length > 1
    for (const group of data.groups)
      if (group.variable) this.#variables.set(group, new VariableBytes(data.pairInOrder))
    for (const group of data.groups) {
      const reader = group.layout === undefined ? undefined : new FrameReader(group.layout, start)
      const link = group.layout?.bytes?.kind === 'elsewhere' ? group.layout.bytes.link : 0
      const variable = data.variableGroups.get(link)
      const bytesFrom = variable === undefined ? data.elsewhere.get(link) : this.#variables.get(variable)
      this.#known.set(group.recordId, { group, reader, bytesFrom, count: 0 })
    }
  }

  /** Records seen of each group. */
  *counts(): Generator<{ group: Group; count: number }> {
    for (const { group, count } of this.#known.values()) yield { group, count }
  }

  /** Goes to the next frame: `frame` when there is one, `more` when bytes must be read first (`fill`), `end`. */
  next(): 'frame' | 'more' | 'end' {
    for (;;) {
      const waited = this.#waiting.take(this.#over)
      if (waited !== undefined) {
        this.frame = waited
        this.lane = this.#waiting.lane
        return 'frame'
      }
      if (this.#over) return 'end'
      const found = this.#record()
      if (found === 'frame') return 'frame'
      if (found === 'more') {
        if (!this.#wanted.ended) return 'more'
        this.#finish()
      }
    }
  }

  /** Reads what `next` lacked. */
  *fill(): Asking<void> {
    yield* this.#wanted.more(this.#least, this.#wanted === this.#data.run ? this.#boundary() : 'anywhere')
  }

  /** Only records of one known length let the run find its next record after lost bytes. */
  #boundary(): Boundary {
    const { idBytes, groups } = this.#data
    const recordBytes = groups[0]?.recordBytes ?? 0
    return idBytes === 0 && recordBytes > 0 ? recordBytes : 'unknown'
  }

  /** One record: a frame, something else, or not enough bytes. */
  #record(): 'frame' | 'other' | 'more' {
    const { run, idBytes } = this.#data
    if (run.available < Math.max(idBytes, 1)) return this.#lack(run, Math.max(idBytes, 1))
    const id = idBytes === 0 ? (this.#data.groups[0]?.recordId ?? 0) : little(run.bytes, run.at, idBytes)
    const known = this.#known.get(id)
    if (known === undefined) {
      this.#tell(
        'mdf-record-unknown',
        'error',
        run.whereOf(run.at),
        `a record of unknown kind ${id} stands here; where the next record begins cannot be known`,
        'The file is damaged here; frames after this place are missing.',
      )
      run.stop()
      return 'other'
    }
    const { group, reader } = known
    if (group.variable) return this.#variable(known)
    const total = idBytes + group.recordBytes
    if (total === 0) {
      run.stop()
      return 'other'
    }
    if (reader === undefined) {
      known.count += 1
      run.skip(total)
      return 'other'
    }
    if (run.available < total) return this.#lack(run, total)
    const record = run.at + idBytes
    if (reader.layout.event === 'data' && known.bytesFrom !== undefined)
      return this.#apart(known, reader, record, total)
    known.count += 1
    reader.read(run.bytes, record, this.#frame)
    this.#frame.where.byteOffset = run.offsetOf(run.at)
    run.skip(total)
    return this.#hand(this.#frame, id)
  }

  /** A record whose data bytes stand elsewhere. */
  #apart(known: KnownGroup, reader: FrameReader, record: number, total: number): 'frame' | 'other' | 'more' {
    const { run } = this.#data
    const source = known.bytesFrom
    const reference = reader.reference(run.bytes, record)
    const bytes = source instanceof DataRun ? this.#fetch(source, reference) : undefined
    if (bytes === 'more') return 'more'
    known.count += 1
    const frame = emptyParts()
    reader.read(run.bytes, record, frame)
    frame.where.byteOffset = run.offsetOf(run.at)
    const length = reader.dataLength(run.bytes, record, frame.fd)
    run.skip(total)
    if (source instanceof VariableBytes) {
      this.#waiting.waitFor(frame, known.group.recordId, source, source.referenceFor(reference), length)
      return 'other'
    }
    if (bytes === undefined) {
      this.#miss(frame)
      return 'other'
    }
    frame.data = bytes.slice(0, length)
    return this.#hand(frame, known.group.recordId)
  }

  /** Data bytes of a run of their own: a 32-bit length and the bytes. `undefined` when they cannot be had. */
  #fetch(run: DataRun, reference: number): Uint8Array | 'more' | undefined {
    if (run.position !== reference && !run.seek(reference)) return undefined
    if (run.available < 4) {
      if (!run.ended) return this.#lack(run, 4)
      return undefined
    }
    const length = little(run.bytes, run.at, 4)
    if (length > LONGEST_BYTES) return undefined
    if (run.available < 4 + length) {
      if (!run.ended) return this.#lack(run, 4 + length)
      return undefined
    }
    const bytes = run.bytes.subarray(run.at + 4, run.at + 4 + length)
    run.skip(4 + length)
    return bytes
  }

  /** A record of data bytes for another group. */
  #variable(known: KnownGroup): 'other' | 'more' {
    const { run, idBytes } = this.#data
    const head = idBytes + 4
    if (run.available < head) return this.#lack(run, head)
    const length = little(run.bytes, run.at + idBytes, 4)
    if (length > LONGEST_VARIABLE) {
      this.#tell(
        'mdf-record-unknown',
        'error',
        run.whereOf(run.at),
        `a record claims ${length} bytes; where the next one begins cannot be known`,
        'The file is damaged here; frames after this place are missing.',
      )
      run.stop()
      return 'other'
    }
    // Longer ones are no data of a CAN frame but text or another bus: they are passed over without being held.
    const held = length <= LONGEST_BYTES
    if (held && run.available < head + length) return this.#lack(run, head + length)
    const bytes = held ? run.bytes.slice(run.at + head, run.at + head + length) : undefined
    this.#variables.get(known.group)?.arrived(length, bytes)
    known.count += 1
    run.skip(head + length)
    return 'other'
  }

  /** Hands a frame on, behind those that wait. */
  #hand(frame: FrameParts, lane: number): 'frame' | 'other' {
    if (this.#waiting.empty) {
      this.frame = frame
      this.lane = lane
      return 'frame'
    }
    const kept = emptyParts()
    copyParts(frame, kept, new Uint8Array(frame.data.length))
    this.#waiting.follow(kept, lane)
    return 'other'
  }

  #lack(run: DataRun, least: number): 'more' {
    this.#wanted = run
    this.#least = least
    return 'more'
  }

  #miss(frame: FrameParts): void {
    if (this.#missing === 0) this.#firstMissing = frame.where.byteOffset
    this.#missing += 1
  }

  #finish(): void {
    const { run } = this.#data
    this.#over = true
    if (run.available > 0) {
      this.#tell(
        'mdf-cut',
        'warning',
        run.whereOf(run.at),
        `the last ${run.available} bytes of the data are no whole record`,
        'The recording was cut here; nothing else is lost.',
      )
    }
    run.stop()
  }

  /** Says what was missing, once the end is reached. */
  report(): void {
    if (this.#missing === 0) return
    this.#tell(
      'mdf-data-missing',
      'error',
      { byteOffset: this.#firstMissing },
      `${this.#missing} frames have no data bytes in the file and are left out; this is the first`,
      'The file is damaged or was cut.',
    )
  }
}

function little(bytes: Uint8Array, at: number, count: number): number {
  let value = 0
  for (let index = count - 1; index >= 0; index -= 1) value = value * 256 + (bytes[at + index] ?? 0)
  return value
}
