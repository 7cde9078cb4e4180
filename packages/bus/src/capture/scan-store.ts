/**
 * @module The bytes a reader works in: chunks of a recording, and what is known of the ones before them.
 *
 * Where the host has WebAssembly they lie in memory that compiled loops can read; elsewhere they are plain arrays.
 */

import { type Memory, openMemory } from '../wasm/module.ts'
import { ID_WORDS, KnownIds } from './known-ids.ts'

/** Numbers that a loop and TypeScript tell each other, per track. */
export const CONTROL_BYTES = 256
/** Before the first control: bytes that a loop may read in front of a chunk's first byte, and nothing else. */
const FIRST_CONTROL = 256
/** How many tracks can have their identifiers in the store. */
const TRACKS = 8
const FIRST_TABLE = FIRST_CONTROL + TRACKS * CONTROL_BYTES
const TABLE_BYTES = ID_WORDS * 4
/** Asked for seldom: asking takes longer than a smaller room saves by staying in the processor's cache. */
const ROOM_BYTES = 1 << 20
/** One is used while the next are filled: one alone would be waited for, because it takes its time to be asked for. */
const ROOMS = 6
const COPY_BYTES = 1 << 17
/** Loops may look this far beyond a chunk's last byte. */
const SLACK_BYTES = 256
const ROOM = FIRST_TABLE + TRACKS * TABLE_BYTES + SLACK_BYTES
const COPY = ROOM + ROOMS * (ROOM_BYTES + SLACK_BYTES)
const ALL_BYTES = COPY + COPY_BYTES + SLACK_BYTES

/** A track's part of the store. */
export interface TrackStore {
  readonly ids: KnownIds
  /** Address of its control and of its identifiers; `undefined` where no compiled loop can run. */
  readonly addresses: { readonly control: number; readonly table: number } | undefined
}

/** One per recording. Made when it is first needed. */
export class ScanStore {
  #opened: { readonly memory: Memory | undefined; readonly bytes: Uint8Array } | undefined
  readonly #compiled: boolean
  #tracks = 0
  /** How many parts were a track's before. */
  #used = 0

  /** Without `compiled` no loop is ever compiled, as on a host without WebAssembly. */
  constructor(compiled = true) {
    this.#compiled = compiled
  }

  get #store(): { readonly memory: Memory | undefined; readonly bytes: Uint8Array } {
    if (this.#opened === undefined) {
      const memory = this.#compiled ? openMemory(ALL_BYTES) : undefined
      this.#opened = { memory, bytes: new Uint8Array(memory?.buffer ?? new ArrayBuffer(ALL_BYTES)) }
    }
    return this.#opened
  }

  /** The memory that compiled loops read, where there is one. */
  get memory(): Memory | undefined {
    return this.#store.memory
  }

  /** Places to read chunks into; what stands there need not be copied. Some are filled while one is used. */
  get rooms(): readonly Uint8Array[] {
    const { bytes } = this.#store
    return Array.from({ length: ROOMS }, (_, index) => {
      const start = ROOM + index * (ROOM_BYTES + SLACK_BYTES)
      return bytes.subarray(start, start + ROOM_BYTES)
    })
  }

  /** A chunk as pieces that lie in the store. Each is used up before the next is asked for. */
  *pieces(chunk: Uint8Array): Generator<Uint8Array> {
    const { bytes, memory } = this.#store
    if (memory === undefined || chunk.buffer === bytes.buffer) {
      yield chunk
      return
    }
    for (let at = 0; at < chunk.length; at += COPY_BYTES) {
      const part = chunk.subarray(at, at + COPY_BYTES)
      bytes.set(part, COPY)
      yield bytes.subarray(COPY, COPY + part.length)
    }
  }

  /** Lets go of all tracks: others begin. */
  closeTracks(): void {
    this.#tracks = 0
  }

  /** Room for what is known of one more track. */
  openTrack(): TrackStore {
    const { memory } = this.#store
    if (memory === undefined || this.#tracks >= TRACKS) return { ids: new KnownIds(), addresses: undefined }
    const index = this.#tracks++
    const control = FIRST_CONTROL + index * CONTROL_BYTES
    const table = FIRST_TABLE + index * TABLE_BYTES
    const words = new Int32Array(memory.buffer, table, ID_WORDS)
    if (index < this.#used) words.fill(0)
    else this.#used = index + 1
    const ids = new KnownIds(words)
    return { ids, addresses: { control, table } }
  }
}
