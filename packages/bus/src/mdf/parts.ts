/**
 * @module Where the data of a group stands in the file: one block, or a list of blocks, plain or packed.
 * Source: ASAM MDF 4.1 blocks DT, SD, DZ, HL and DL; 4.2 blocks DV and LD (values without invalidation bits), their
 * layout from memory of public implementations (asammdf).
 */

import { BLOCK_HEADER_BYTES, type Block, type BlockReader, count64, type Tell, viewOf } from './blocks.ts'
import type { Asking } from './source.ts'

/** What every part knows. */
interface PartPlace {
  /** Offset of the part in the run, where a list states it: tells how much is lost when parts before it are unreadable. */
  readonly start: number | undefined
}

/** A run of data bytes in the file. */
export interface PlainPart extends PartPlace {
  readonly kind: 'plain'
  /** Offset of the first data byte. */
  readonly offset: number
  /** Length in bytes as the file states it. */
  readonly length: number
  /** The length is not to be trusted: the part goes on to the end of the recording. */
  readonly open: boolean
}

/** A packed run (DZ): deflate, with the bytes of each column together when `columns` is not 0. */
export interface PackedPart extends PartPlace {
  readonly kind: 'packed'
  /** Offset of the block. */
  readonly offset: number
  readonly packedLength: number
  readonly originalLength: number
  readonly columns: number
}

/** A block that is listed but cannot be read: bytes of unknown number are missing here. */
export interface LostPart extends PartPlace {
  readonly kind: 'lost'
  readonly offset: number
}

export type Part = PlainPart | PackedPart | LostPart

/** A DZ block has 24 bytes of its own before the packed data. */
export const DZ_FIELD_BYTES = 24
/** Greatest packed or unpacked length taken, in bytes; the standard recommends at most 4 MiB. */
const LONGEST_PACKED = 64 * 1024 * 1024
const MOST_PARTS = 1_000_000

/** The parts behind a data link. */
export interface Parts {
  readonly parts: Part[]
  /** Records stand without their invalidation bytes (DV blocks). */
  readonly valuesOnly: boolean
}

/** Bit of an LD block's flags: every data block has a block of invalidation bits beside it. */
const INVALIDATION_PRESENT = 0x8000_0000

/** Lists the parts behind a data link, in order. What cannot be read is told and left out. */
export class PartReader {
  readonly #blocks: BlockReader
  readonly #tell: Tell

  constructor(blocks: BlockReader, tell: Tell) {
    this.#blocks = blocks
    this.#tell = tell
  }

  *list(link: number): Asking<Parts> {
    const parts: Part[] = []
    const rows = { parts, valuesOnly: false }
    if (link === 0) return rows
    const header = yield* this.#blocks.header(link)
    if (header === undefined) return rows
    let list = link
    if (header.kind === 'HL') {
      const block = yield* this.#blocks.block(link, 'HL', 1, 0)
      list = block?.links[0] ?? 0
      const inside = list === 0 ? undefined : yield* this.#blocks.header(list)
      if (inside?.kind === 'LD') return yield* this.#values(list)
    } else if (header.kind === 'LD') return yield* this.#values(link)
    else if (header.kind !== 'DL') {
      parts.push(yield* this.#part(link, 0))
      return { parts, valuesOnly: header.kind === 'DV' || (yield* this.#packs(link, header.kind, 'DV')) }
    }
    const seen = new Set<number>()
    while (list !== 0 && parts.length < MOST_PARTS) {
      if (seen.has(list)) {
        this.#tell(
          'mdf-block-unreadable',
          'error',
          { byteOffset: list },
          'a list of data blocks leads back to itself',
          'The file is damaged; what was listed up to here is read.',
        )
        break
      }
      seen.add(list)
      const block = yield* this.#blocks.block(list, 'DL', 1, 0)
      if (block === undefined) break
      for (const [index, data] of block.links.slice(1).entries()) {
        if (data !== 0) parts.push(yield* this.#part(data, startOf(block, index, parts.length)))
      }
      list = block.links[0] ?? 0
    }
    return rows
  }

  /** A list of blocks of values (LD). Invalidation bits beside them say which values hold; frames always do. */
  *#values(first: number): Asking<Parts> {
    const parts: Part[] = []
    const seen = new Set<number>()
    for (let list = first; list !== 0 && parts.length < MOST_PARTS && !seen.has(list); ) {
      seen.add(list)
      const block = yield* this.#blocks.block(list, 'LD', 1, 8)
      if (block === undefined) break
      const both = (block.data.getUint32(0, true) & INVALIDATION_PRESENT) !== 0
      const links = block.links.slice(1)
      for (const data of both ? links.slice(0, links.length / 2) : links) {
        if (data !== 0) parts.push(yield* this.#part(data, parts.length === 0 ? 0 : undefined))
      }
      list = block.links[0] ?? 0
    }
    return { parts, valuesOnly: true }
  }

  /** Whether a packed block holds blocks of this kind. */
  *#packs(offset: number, kind: string, packed: string): Asking<boolean> {
    if (kind !== 'DZ') return false
    const bytes = yield { offset: offset + BLOCK_HEADER_BYTES, length: 2, forgetBefore: 0 }
    return String.fromCharCode(...bytes.subarray(0, 2)) === packed
  }

  *#part(offset: number, start: number | undefined): Asking<Part> {
    const lost: LostPart = { kind: 'lost', offset, start }
    const header = yield* this.#blocks.header(offset)
    if (header === undefined) return lost
    if (header.kind === 'DT' || header.kind === 'SD' || header.kind === 'DV') {
      const skipped = BLOCK_HEADER_BYTES + header.linkCount * 8
      return { kind: 'plain', offset: offset + skipped, length: header.length - skipped, open: false, start }
    }
    if (header.kind === 'DZ') return yield* this.#packed(offset, start, lost)
    this.#tell(
      'mdf-storage-unknown',
      'error',
      { byteOffset: offset },
      `data stands in a ${printable(header.kind)} block, which is not read`,
      'The file is damaged here, or of a later version: save the recording as MDF 4.1.',
    )
    return lost
  }

  *#packed(offset: number, start: number | undefined, lost: LostPart): Asking<Part> {
    const bytes = yield { offset: offset + BLOCK_HEADER_BYTES, length: DZ_FIELD_BYTES, forgetBefore: 0 }
    if (bytes.length < DZ_FIELD_BYTES) {
      this.#tell(
        'mdf-cut',
        'error',
        { byteOffset: offset },
        'the recording ends inside a packed data block',
        'Get the whole file; what was read up to here is shown.',
      )
      return lost
    }
    const view = viewOf(bytes)
    const method = view.getUint8(2)
    const columns = view.getUint32(4, true)
    const originalLength = count64(view, 8)
    const packedLength = count64(view, 16)
    if (method > 1) {
      this.#tell(
        'mdf-storage-unknown',
        'error',
        { byteOffset: offset },
        `data is packed by method ${method}, which is not read`,
        'Save the recording again packed with deflate, or unpacked.',
      )
      return lost
    }
    if (originalLength > LONGEST_PACKED || packedLength > LONGEST_PACKED) {
      this.#tell(
        'mdf-unpack-failed',
        'error',
        { byteOffset: offset },
        `a packed block claims ${packedLength} bytes for ${originalLength}`,
        'The file is damaged here, or was saved in blocks over 64 MiB.',
      )
      return lost
    }
    return {
      kind: 'packed',
      offset,
      start,
      packedLength,
      originalLength,
      columns: method === 1 ? columns : 0,
    }
  }
}

/** Where the block `index` of a list stands in the run: in steps of one length, or as the list states it. */
function startOf(list: Block, index: number, count: number): number | undefined {
  const { data } = list
  if (data.byteLength < 16) return undefined
  if ((data.getUint8(0) & 1) !== 0) return count64(data, 8) * count
  return data.byteLength < 16 + index * 8 ? undefined : count64(data, 8 + index * 8)
}

/**
 * In a file that was never finished the last DT block states no true length: its part goes on to the end of the
 * recording. `all` are the parts of every group.
 */
export function openLastPart(all: readonly Part[][]): void {
  let last: { list: Part[]; index: number; offset: number } | undefined
  for (const list of all) {
    for (const [index, part] of list.entries()) {
      if (last === undefined || part.offset > last.offset) last = { list, index, offset: part.offset }
    }
  }
  const part = last?.list[last.index]
  if (last !== undefined && part?.kind === 'plain') last.list[last.index] = { ...part, open: true }
}

function printable(kind: string): string {
  return /^[A-Z]{2}$/.test(kind) ? kind : 'damaged'
}
