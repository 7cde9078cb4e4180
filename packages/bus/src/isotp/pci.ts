/**
 * @module The protocol control information at the head of an ISO-TP frame.
 *
 * Source: ISO 15765-2 (network protocol control information, clause 9.6 of the 2016 edition), values checked
 * against the public documentation `can.rst` of mdabrowski1990/uds (MIT). Written for CAN and CAN FD.
 */

/** What a frame is, by its protocol control information; filled by `readPci`, one object for many frames. */
export interface Pci {
  kind: 'single' | 'first' | 'consecutive' | 'flow' | 'malformed'
  /** Place of the first byte that belongs to the message. */
  start: number
  /** Bytes of the message; of a single and a first frame. */
  length: number
  /** Of a consecutive frame. */
  sequence: number
  /** Of a flow control frame. */
  status: number
  /** Why the frame is malformed, when it is. */
  fault: PciFault
}

/** One to be filled. */
export function newPci(): Pci {
  return { kind: 'malformed', start: 0, length: 0, sequence: 0, status: 0, fault: 'empty' }
}

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

function setMalformed(pci: Pci, fault: PciFault): void {
  pci.kind = 'malformed'
  pci.fault = fault
}

/**
 * Reads the protocol control information that starts at `at` (0 for normal addressing, 1 for extended and mixed) into
 * `pci`. Positions in it count from the start of `data`.
 */
export function readPci(data: Uint8Array, at: number, pci: Pci): void {
  const size = data.length
  if (at >= size) {
    setMalformed(pci, 'empty')
    return
  }
  const head = data[at] as number
  const low = head & 0x0f
  switch (head >> 4) {
    case 0:
      readSingle(data, at, low, pci)
      break
    case 1:
      readFirst(data, at, low, pci)
      break
    case 2:
      pci.kind = 'consecutive'
      pci.start = at + 1
      pci.sequence = low
      break
    case 3:
      if (size < at + 3) setMalformed(pci, 'flow-short')
      else {
        pci.kind = 'flow'
        pci.status = low
      }
      break
    default:
      setMalformed(pci, 'reserved-type')
  }
}

function readSingle(data: Uint8Array, at: number, low: number, pci: Pci): void {
  const isLong = data.length > 8
  if (isLong && low !== 0) {
    setMalformed(pci, 'single-needs-escape')
    return
  }
  const start = isLong ? at + 2 : at + 1
  const length = isLong ? (data[at + 1] as number) : low
  if (length === 0) setMalformed(pci, 'single-length-zero')
  else if (length > data.length - start) setMalformed(pci, 'single-longer-than-frame')
  else {
    pci.kind = 'single'
    pci.start = start
    pci.length = length
  }
}

function readFirst(data: Uint8Array, at: number, low: number, pci: Pci): void {
  const size = data.length
  if (size < 8) {
    setMalformed(pci, 'first-short-frame')
    return
  }
  let length = (low << 8) | (data[at + 1] as number)
  let start = at + 2
  let least = 0
  if (length === 0) {
    length =
      (((data[at + 2] as number) << 24) |
        ((data[at + 3] as number) << 16) |
        ((data[at + 4] as number) << 8) |
        (data[at + 5] as number)) >>>
      0
    start = at + 6
    least = 4096
  }
  // The longest single frame of this frame size; anything that fits there must not be segmented.
  const single = size > 8 ? size - at - 2 : size - at - 1
  if (length <= single || length < least) {
    setMalformed(pci, 'first-length-too-small')
    return
  }
  pci.kind = 'first'
  pci.start = start
  pci.length = length
}
