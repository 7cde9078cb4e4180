/**
 * @module The blocks of an MDF 4 file: headers, links and the fields this reader needs.
 *
 * Source: ASAM MDF 4.1 block layouts, known from public implementations (asammdf, mdflib) and checked against real
 * recordings; the numbers stand here, no text of the standard. All numbers are little-endian.
 */

import type { Where } from '../finding/index.ts'
import type { Asking } from './source.ts'

/** Every finding of this folder. */
export type MdfFindingCode =
  | 'mdf-version'
  | 'mdf-not-finalised'
  | 'mdf-local-time'
  | 'mdf-block-unreadable'
  | 'mdf-too-many-blocks'
  | 'mdf-group-unreadable'
  | 'mdf-no-frames'
  | 'mdf-storage-unknown'
  | 'mdf-unpack-failed'
  | 'mdf-cut'
  | 'mdf-record-unknown'
  | 'mdf-data-missing'
  | 'mdf-count-differs'
  | 'mdf-late-frames'
  | 'mdf-other-records'
  | 'mdf-needs-random-access'

/** Tells a finding of this folder. */
export type Tell = (
  code: MdfFindingCode,
  severity: 'note' | 'warning' | 'error',
  where: Where,
  what: string,
  doNext: string,
) => void

export const BLOCK_HEADER_BYTES = 24
/** Blocks of the description (everything but data) are taken up to this length; real ones hold a few kilobytes. */
const LONGEST_DESCRIPTION = 1024 * 1024
/** A description of more blocks than this is taken for damage. */
const MOST_BLOCKS = 200_000

/** A block of the description, read whole. */
export interface Block {
  readonly offset: number
  readonly links: readonly number[]
  /** The data section, after the links. */
  readonly data: DataView
}

/** The first 24 bytes of any block. */
export interface BlockHeader {
  /** Two letters, `HD` for `##HD`. */
  readonly kind: string
  readonly length: number
  readonly linkCount: number
}

/** Reads blocks of the description and says what is wrong with those it cannot read. */
export class BlockReader {
  readonly #tell: Tell
  #count = 0

  constructor(tell: Tell) {
    this.#tell = tell
  }

  /** The header at `offset`; `undefined` when there is none, which is told. */
  *header(offset: number): Asking<BlockHeader | undefined> {
    this.#count += 1
    if (this.#count > MOST_BLOCKS) {
      if (this.#count === MOST_BLOCKS + 1) {
        this.#tell(
          'mdf-too-many-blocks',
          'error',
          { byteOffset: offset },
          'the description of the recording has no end',
          'The file is damaged; record again.',
        )
      }
      return undefined
    }
    const bytes = yield { offset, length: BLOCK_HEADER_BYTES, forgetBefore: 0 }
    if (bytes.length < BLOCK_HEADER_BYTES) {
      this.#tell(
        'mdf-cut',
        'error',
        { byteOffset: offset },
        'the recording ends before a block its description points at',
        'Get the whole file; what was read up to here is shown.',
      )
      return undefined
    }
    const view = viewOf(bytes)
    const header = {
      kind: String.fromCharCode(view.getUint8(2), view.getUint8(3)),
      length: count64(view, 8),
      linkCount: count64(view, 16),
    }
    const marked = view.getUint8(0) === 0x23 && view.getUint8(1) === 0x23
    if (!marked || header.length < BLOCK_HEADER_BYTES + header.linkCount * 8) {
      this.#tell(
        'mdf-block-unreadable',
        'error',
        { byteOffset: offset },
        'there is no block where the description points',
        'The file is damaged here; what else can be read is shown.',
      )
      return undefined
    }
    return header
  }

  /** The whole block at `offset` when it is of the kind wanted; 0 is "no block" and stays silent. */
  *block(offset: number, kind: string, leastLinks: number, leastData: number): Asking<Block | undefined> {
    if (offset === 0) return undefined
    const header = yield* this.header(offset)
    if (header === undefined) return undefined
    // More links than usual push the data section back: what is due must fit behind those that are there.
    const needed = BLOCK_HEADER_BYTES + Math.max(leastLinks, header.linkCount) * 8 + leastData
    if (header.kind !== kind || header.linkCount < leastLinks || header.length < needed) {
      this.#tell(
        'mdf-block-unreadable',
        'error',
        { byteOffset: offset },
        `a ${kind} block is due here and another stands here, or it is too short`,
        'The file is damaged here; what else can be read is shown.',
      )
      return undefined
    }
    return yield* this.#body(offset, header)
  }

  /** The block at `offset` of whatever kind, after its header was read. */
  *#body(offset: number, header: BlockHeader): Asking<Block | undefined> {
    const length = Math.min(header.length, LONGEST_DESCRIPTION)
    const bytes = yield { offset, length, forgetBefore: 0 }
    const dataAt = BLOCK_HEADER_BYTES + header.linkCount * 8
    if (bytes.length < length || dataAt > length) {
      this.#tell(
        'mdf-cut',
        'error',
        { byteOffset: offset },
        `the recording ends inside a ${header.kind} block`,
        'Get the whole file; what was read up to here is shown.',
      )
      return undefined
    }
    // A copy by hand: `slice` of Node's Buffer would be a view on memory that is used again.
    const kept = viewOf(new Uint8Array(bytes))
    const links: number[] = []
    for (let at = BLOCK_HEADER_BYTES; at < dataAt; at += 8) links.push(count64(kept, at))
    return { offset, links, data: new DataView(kept.buffer, dataAt) }
  }

  /** The text of a TX block (or the raw XML of an MD block); empty when there is none. */
  *text(offset: number): Asking<string> {
    if (offset === 0) return ''
    const header = yield* this.header(offset)
    if (header === undefined || (header.kind !== 'TX' && header.kind !== 'MD')) return ''
    const block = yield* this.#body(offset, header)
    if (block === undefined) return ''
    let text = ''
    for (let at = 0; at < Math.min(block.data.byteLength, 512); at += 1) {
      const byte = block.data.getUint8(at)
      if (byte === 0) break
      text += String.fromCharCode(byte)
    }
    return text
  }
}

/** A view on bytes wherever they stand in their buffer. */
export function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
}

/** An unsigned 64-bit number; above 2^53 the last digits are lost, which only a damaged offset or length can reach. */
export function count64(view: DataView, at: number): number {
  return view.getUint32(at, true) + view.getUint32(at + 4, true) * 0x1_0000_0000
}
