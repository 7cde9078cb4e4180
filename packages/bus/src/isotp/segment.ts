/** @module Cuts a message into ISO-TP frames (ISO 15765-2), for simulated vehicles, demo recordings and tests. */

/** How to cut. */
export interface SegmentChoices {
  /** Data bytes per frame: 8 on classic CAN, up to 64 on CAN FD. */
  readonly frameBytes?: 8 | 12 | 16 | 20 | 24 | 32 | 48 | 64
  /** Fills frames up to 8 bytes (CAN FD: up to the next length there is); left out, classic frames stay short. */
  readonly padding?: number
  /** First data byte of every frame, for extended and mixed addressing. */
  readonly address?: number
}

const FD_LENGTHS = [8, 12, 16, 20, 24, 32, 48, 64]

/** The data of each frame of a message, without flow control. Throws `RangeError` for an empty message. */
export function segment(payload: Uint8Array, choices: SegmentChoices = {}): Uint8Array[] {
  if (payload.length === 0) throw new RangeError('a message has at least one byte')
  const size = choices.frameBytes ?? 8
  const head = choices.address === undefined ? [] : [choices.address]
  const room = size - head.length
  const fill = (bytes: readonly number[]): Uint8Array => filled(bytes, choices.padding)
  if (payload.length <= Math.min(7 - head.length, room - 1))
    return [fill([...head, payload.length, ...payload])]
  if (size > 8 && payload.length <= room - 2) {
    // Up to 8 bytes of frame the short form is the rule, beyond it the long one.
    return [fill([...head, 0, payload.length, ...payload])]
  }
  const long = payload.length > 4095
  const lengthBytes = long
    ? [
        0x10,
        0,
        payload.length >>> 24,
        (payload.length >>> 16) & 255,
        (payload.length >>> 8) & 255,
        payload.length & 255,
      ]
    : [0x10 | (payload.length >> 8), payload.length & 255]
  const first = room - lengthBytes.length
  const frames: Uint8Array[] = [Uint8Array.from([...head, ...lengthBytes, ...payload.subarray(0, first)])]
  let sequence = 1
  for (let at = first; at < payload.length; at += room - 1) {
    frames.push(fill([...head, 0x20 | sequence, ...payload.subarray(at, at + room - 1)]))
    sequence = (sequence + 1) & 15
  }
  return frames
}

function filled(bytes: readonly number[], padding: number | undefined): Uint8Array {
  const least = bytes.length <= 8 ? (padding === undefined ? bytes.length : 8) : 0
  const length =
    bytes.length <= 8 ? least : (FD_LENGTHS.find((known) => known >= bytes.length) ?? bytes.length)
  const data = new Uint8Array(length).fill(padding ?? 0xcc)
  data.set(bytes)
  return data
}

/** A flow control frame that lets the sender continue. */
export function continueToSend(
  blockSize: number = 0,
  separation: number = 0,
  choices: Pick<SegmentChoices, 'padding' | 'address'> = {},
): Uint8Array {
  const head = choices.address === undefined ? [] : [choices.address]
  return filled([...head, 0x30, blockSize, separation], choices.padding)
}
