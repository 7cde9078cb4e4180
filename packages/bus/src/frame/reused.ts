/** @module The one frame object a reader fills again and again, so that reading allocates nothing per frame. */

import type { CanFrame, Direction } from './index.ts'

/** The longest data a CAN FD frame carries, in bytes (ISO 11898-1). */
export const MAX_DATA_BYTES: number = 64

/** A frame that its reader may overwrite. `bytes` is the store behind `data`; choose a length with `setLength`. */
export class ReusedFrame implements CanFrame {
  readonly time: { seconds: number; nanoseconds: number; decimals: number } = {
    seconds: 0,
    nanoseconds: 0,
    decimals: 0,
  }
  channel: string = ''
  id: number = 0
  extended: boolean = false
  fd: boolean = false
  remote: boolean = false
  error: boolean = false
  data: Uint8Array
  direction: Direction | undefined = undefined
  readonly where: { line?: number; byteOffset?: number } = {}
  readonly bytes: Uint8Array = new Uint8Array(MAX_DATA_BYTES)
  readonly #views: readonly Uint8Array[]

  constructor() {
    this.#views = Array.from({ length: MAX_DATA_BYTES + 1 }, (_, length) => this.bytes.subarray(0, length))
    this.data = this.bytes.subarray(0, 0)
  }

  /** Makes `data` show the first `length` bytes (0 to 64) of `bytes`. */
  setLength(length: number): void {
    this.data = this.#views[length] ?? this.bytes
  }
}
