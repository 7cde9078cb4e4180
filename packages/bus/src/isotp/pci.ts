/**
 * @module The protocol control information at the head of an ISO-TP frame.
 *
 * Source: ISO 15765-2 (network protocol control information, clause 9.6 of the 2016 edition), values checked
 * against the public documentation `can.rst` of mdabrowski1990/uds (MIT). Written for CAN and CAN FD.
 */

/** What a frame is, by its protocol control information. */
export type Pci =
  | { readonly kind: 'single'; readonly start: number; readonly length: number }
  | { readonly kind: 'first'; readonly start: number; readonly length: number }
  | { readonly kind: 'consecutive'; readonly start: number; readonly sequence: number }
  | {
      readonly kind: 'flow'
      readonly status: number
      readonly blockSize: number
      readonly separation: number
    }
  | { readonly kind: 'malformed'; readonly reason: PciFault }

/** Why a frame is no ISO-TP frame. */
export type PciFault =
  | 'empty'
  | 'reserved-type'
  | 'single-length-zero'
  | 'single-longer-than-frame'
  | 'single-needs-escape'
  | 'first-short-frame'
  | 'first-length-too-small'
  | 'flow-short'

/** Flow status values of a flow control frame. */
export const CONTINUE_TO_SEND: number = 0
export const WAIT: number = 1
export const OVERFLOW: number = 2

const WORDS: Readonly<Record<PciFault, string>> = {
  empty: 'the frame has no data',
  'reserved-type': 'the frame type is reserved',
  'single-length-zero': 'a single frame states no length',
  'single-longer-than-frame': 'a single frame states more bytes than it holds',
  'single-needs-escape': 'a single frame of more than 8 bytes must use the long length',
  'first-short-frame': 'a first frame is not full',
  'first-length-too-small': 'a first frame states a length that fits a single frame',
  'flow-short': 'a flow control frame has fewer than 3 bytes',
}

/** Says in words why a frame is no ISO-TP frame. */
export function explainPciFault(fault: PciFault): string {
  return WORDS[fault]
}

function malformed(reason: PciFault): Pci {
  return { kind: 'malformed', reason }
}

/**
 * Reads the protocol control information that starts at `at` (0 for normal addressing, 1 for extended and mixed).
 * Positions in the answer count from the start of `data`.
 */
export function readPci(data: Uint8Array, at: number): Pci {
  const size = data.length
  const head = data[at]
  if (head === undefined) return malformed('empty')
  const low = head & 0x0f
  switch (head >> 4) {
    case 0:
      return readSingle(data, at, low)
    case 1:
      return readFirst(data, at, low)
    case 2:
      return { kind: 'consecutive', start: at + 1, sequence: low }
    case 3:
      if (size < at + 3) return malformed('flow-short')
      return {
        kind: 'flow',
        status: low,
        blockSize: data[at + 1] as number,
        separation: data[at + 2] as number,
      }
    default:
      return malformed('reserved-type')
  }
}

function readSingle(data: Uint8Array, at: number, low: number): Pci {
  if (data.length > 8) {
    if (low !== 0) return malformed('single-needs-escape')
    const length = data[at + 1] as number
    if (length === 0) return malformed('single-length-zero')
    if (length > data.length - at - 2) return malformed('single-longer-than-frame')
    return { kind: 'single', start: at + 2, length }
  }
  if (low === 0) return malformed('single-length-zero')
  if (low > data.length - at - 1) return malformed('single-longer-than-frame')
  return { kind: 'single', start: at + 1, length: low }
}

function readFirst(data: Uint8Array, at: number, low: number): Pci {
  const size = data.length
  if (size < 8) return malformed('first-short-frame')
  let length = (low << 8) | (data[at + 1] as number)
  let start = at + 2
  if (length === 0) {
    length =
      (((data[at + 2] as number) << 24) |
        ((data[at + 3] as number) << 16) |
        ((data[at + 4] as number) << 8) |
        (data[at + 5] as number)) >>>
      0
    start = at + 6
    if (length <= 4095) return malformed('first-length-too-small')
  }
  // The longest single frame of this frame size; anything that fits there must not be segmented.
  const single = size > 8 ? size - at - 2 : size - at - 1
  if (length <= single) return malformed('first-length-too-small')
  return { kind: 'first', start, length }
}
