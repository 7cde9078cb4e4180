/**
 * @module Writes small MDF 4 files for tests, in the layouts real writers choose.
 * Source: ASAM MDF 4.1 block layouts; compression by fflate. The writer shares no code with the reader.
 */

import { zlibSync } from 'fflate'

/** A block before it has a place: links name other blocks. */
export interface Draft {
  readonly kind: string
  readonly links: (Draft | undefined)[]
  readonly data: Uint8Array
}

export function draft(
  kind: string,
  links: (Draft | undefined)[],
  data: Uint8Array = new Uint8Array(0),
): Draft {
  return { kind, links, data }
}

/** Little-endian fields: `[bytes, value]` each; 8-byte floats as `['f', value]`. */
export function fields(...values: readonly (readonly [number | 'f', number])[]): Uint8Array {
  const out: number[] = []
  for (const [size, value] of values) {
    if (size === 'f') out.push(...new Uint8Array(Float64Array.of(value).buffer))
    else
      for (let index = 0, rest = value; index < size; index += 1, rest = Math.floor(rest / 256))
        out.push(rest % 256)
  }
  return Uint8Array.from(out)
}

export interface FileOptions {
  /** Blocks in the order they stand in the file; HD comes first by itself. */
  readonly order: readonly Draft[]
  readonly firstGroup: Draft
  readonly startNanoseconds?: bigint
  /** Unfinalised flags; absent for a finished file. */
  readonly unfinished?: number
  readonly version?: number
}

/** The whole file. */
export function mdfFile(options: FileOptions): Uint8Array {
  const start = new Uint8Array(
    BigUint64Array.of(options.startNanoseconds ?? 1_700_000_000_000_000_000n).buffer,
  )
  const header = draft(
    'HD',
    [options.firstGroup, undefined, undefined, undefined, undefined, undefined],
    Uint8Array.from([...start, ...new Array(24).fill(0)]),
  )
  const blocks = [header, ...options.order]
  const offsets = new Map<Draft, number>()
  let end = 64
  for (const block of blocks) {
    offsets.set(block, end)
    end += Math.ceil((24 + block.links.length * 8 + block.data.length) / 8) * 8
  }
  const last = blocks[blocks.length - 1]
  const lastOffset = last === undefined ? 64 : (offsets.get(last) ?? 64)
  const file = new Uint8Array(
    last === undefined ? end : lastOffset + 24 + last.links.length * 8 + last.data.length,
  )
  const view = new DataView(file.buffer)
  const mark = options.unfinished === undefined ? 'MDF     4.10    ' : 'UnFinMF 4.10    '
  for (const [index, letter] of [...mark].entries()) file[index] = letter.charCodeAt(0)
  view.setUint16(28, options.version ?? 410, true)
  view.setUint16(60, options.unfinished ?? 0, true)
  for (const block of blocks) {
    const at = offsets.get(block) ?? 0
    for (const [index, letter] of [...`##${block.kind}`].entries()) file[at + index] = letter.charCodeAt(0)
    const open = options.unfinished !== undefined && block === last && block.kind === 'DT'
    view.setBigUint64(at + 8, BigInt(open ? 24 : 24 + block.links.length * 8 + block.data.length), true)
    view.setBigUint64(at + 16, BigInt(block.links.length), true)
    for (const [index, link] of block.links.entries()) {
      view.setBigUint64(at + 24 + index * 8, BigInt(link === undefined ? 0 : (offsets.get(link) ?? 0)), true)
    }
    file.set(block.data, at + 24 + block.links.length * 8)
  }
  return file
}

/** Every block a draft leads to, description first, data blocks as `dataLast` says. */
export function inOrder(root: Draft, dataLast: boolean): Draft[] {
  const found = new Set<Draft>()
  const visit = (block: Draft | undefined): void => {
    if (block === undefined || found.has(block)) return
    found.add(block)
    for (const link of block.links) visit(link)
  }
  visit(root)
  const isData = (block: Draft): boolean => ['DT', 'SD', 'DZ', 'DV', 'DI'].includes(block.kind)
  const data = [...found].filter(isData)
  const rest = [...found].filter((block) => !isData(block))
  return dataLast ? [...rest, ...data] : [...data, ...rest]
}

function text(value: string): Draft {
  const bytes = Array.from(value, (letter) => letter.charCodeAt(0))
  return draft('TX', [], Uint8Array.from([...bytes, ...new Array(8 - (bytes.length % 8)).fill(0)]))
}

/** A channel. `type`: 0 value, 1 bytes elsewhere, 2 master, 6 constant; `dataType`: 0 unsigned ... 10 bytes. */
export interface ChannelOptions {
  readonly name: string
  readonly type?: number
  readonly dataType?: number
  readonly byteOffset?: number
  readonly bitOffset?: number
  readonly bitCount?: number
  readonly conversion?: Draft
  readonly link?: Draft
  readonly members?: Draft
}

export function channel(options: ChannelOptions, next?: Draft): Draft {
  const { type = 0, dataType = 0, byteOffset = 0, bitOffset = 0, bitCount = 0 } = options
  const links = [
    next,
    options.members,
    text(options.name),
    undefined,
    options.conversion,
    options.link,
    undefined,
    undefined,
  ]
  const sync = type === 2 ? 1 : 0
  const head = fields(
    [1, type],
    [1, sync],
    [1, dataType],
    [1, bitOffset],
    [4, byteOffset],
    [4, bitCount],
    [4, 0],
    [4, 0],
  )
  return draft('CN', links, Uint8Array.from([...head, ...new Array(52).fill(0)]))
}

/** Channels one after another. */
export function channels(list: readonly ChannelOptions[]): Draft | undefined {
  let next: Draft | undefined
  for (const options of [...list].reverse()) next = channel(options, next)
  return next
}

/** A conversion of a kind with its values. */
export function conversion(kind: number, values: readonly number[]): Draft {
  const head = fields([1, kind], [1, 0], [2, 0], [2, 0], [2, values.length], ['f', 0], ['f', 0])
  return draft(
    'CC',
    [undefined, undefined, undefined, undefined],
    Uint8Array.from([...head, ...fields(...values.map((value) => ['f', value] as const))]),
  )
}

export interface GroupOptions {
  readonly recordId?: number
  readonly recordBytes: number
  readonly channels?: Draft | undefined
  readonly cycles?: number
  readonly variable?: boolean
  readonly name?: string
  /** Bytes of invalidation bits after every record. */
  readonly invalidationBytes?: number
  /** The times stand in another group. */
  readonly remoteMaster?: boolean
}

export function group(options: GroupOptions, next?: Draft): Draft {
  const flags = options.variable === true ? 1 : options.remoteMaster === true ? 14 : 6
  const data = fields(
    [8, options.recordId ?? 0],
    [8, options.cycles ?? 0],
    [2, flags],
    [2, 46],
    [4, 0],
    [4, options.recordBytes],
    [4, options.invalidationBytes ?? 0],
  )
  return draft(
    'CG',
    [
      next,
      options.channels,
      options.name === undefined ? undefined : text(options.name),
      undefined,
      undefined,
      undefined,
    ],
    data,
  )
}

export function dataGroup(firstGroup: Draft, data: Draft | undefined, idBytes: number, next?: Draft): Draft {
  return draft('DG', [next, firstGroup, data, undefined], fields([1, idBytes], [7, 0]))
}

/** A packed block. `columns` above 0 stores column after column. */
export function packed(kind: 'DT' | 'SD' | 'DV', bytes: Uint8Array, columns: number): Draft {
  let stored = bytes
  if (columns > 0) {
    const rows = Math.floor(bytes.length / columns)
    stored = Uint8Array.from(bytes)
    for (let row = 0; row < rows; row += 1) {
      for (let column = 0; column < columns; column += 1)
        stored[column * rows + row] = bytes[row * columns + column] ?? 0
    }
  }
  const data = zlibSync(stored)
  const letters = Array.from(kind, (letter) => letter.charCodeAt(0))
  const head = fields([1, columns > 0 ? 1 : 0], [1, 0], [4, columns], [8, bytes.length], [8, data.length])
  return draft('DZ', [], Uint8Array.from([...letters, ...head, ...data]))
}

/** A list of data blocks in lists of two, as a writer that never knows how many will come. `size`: bytes of a block. */
export function list(blocks: readonly Draft[], size: number): Draft | undefined {
  let next: Draft | undefined
  for (let at = Math.floor((blocks.length - 1) / 2) * 2; at >= 0; at -= 2) {
    const two = blocks.slice(at, at + 2)
    next = draft(
      'DL',
      [next, ...two],
      fields([4, 0], [4, two.length], ...two.map((_, index) => [8, (at + index) * size] as const)),
    )
  }
  return next
}

/** A list of blocks of values, each with a block of invalidation bits beside it when there are some (MDF 4.2). */
export function valueList(blocks: readonly Draft[], invalidation: readonly Draft[], rows: number): Draft {
  const flags = 1 + (invalidation.length > 0 ? 2 ** 31 : 0)
  return draft(
    'LD',
    [undefined, ...blocks, ...invalidation],
    fields([4, flags], [4, blocks.length], [8, rows]),
  )
}

/** A header before a list, as files with packed blocks have it. */
export function headed(first: Draft | undefined, method: number): Draft {
  return draft('HL', [first], fields([2, 0], [1, method], [5, 0]))
}

/** Cuts bytes into pieces of `size`. */
export function pieces(bytes: Uint8Array, size: number): Uint8Array[] {
  const found: Uint8Array[] = []
  for (let at = 0; at < bytes.length; at += size) found.push(bytes.slice(at, at + size))
  return found
}
