/**
 * @module What the records of a channel group hold, and which groups are CAN bus events.
 * Source: ASAM MDF 4.1 blocks CG and CN, and the names of its bus logging addition (CAN_DataFrame, CAN_RemoteFrame,
 * CAN_ErrorFrame with members ID, IDE, DLC, DataLength, DataBytes, Dir, EDL, BusChannel).
 */

import { type Block, type BlockReader, count64, type Tell } from './blocks.ts'
import { type Conversion, convert, readConversion, UNCHANGED } from './conversion.ts'
import { type Field, fieldBytes } from './field.ts'
import type { Asking } from './source.ts'

/** What a CAN group's record says. Fields that the group does not have are absent. */
export interface FrameLayout {
  readonly event: 'data' | 'remote' | 'error'
  readonly time: Field | undefined
  readonly id: Field | undefined
  readonly extended: Field | undefined
  readonly busChannel: Field | undefined
  readonly dlc: Field | undefined
  readonly length: Field | undefined
  readonly fd: Field | undefined
  readonly direction: Field | undefined
  readonly bytes: DataBytes | undefined
  /** Name for a group whose records name no bus. */
  readonly sourceName: string
}

/** Where a frame's data bytes stand. */
export type DataBytes =
  | { readonly kind: 'inside'; readonly byteOffset: number; readonly longest: number }
  /** In a place of their own: `reference` is the offset there, `link` the block that holds or lists them. */
  | { readonly kind: 'elsewhere'; readonly reference: Field; readonly link: number }

/** A channel group as described. */
export interface Group {
  readonly offset: number
  readonly recordId: number
  /** Bytes of a record after its record id, with invalidation bytes. */
  readonly recordBytes: number
  readonly invalidationBytes: number
  /** Records of this group are variable: a 32-bit length and that many bytes. */
  readonly variable: boolean
  readonly cycleCount: number
  readonly name: string
  readonly layout: FrameLayout | undefined
}

interface Channel {
  readonly name: string
  readonly type: number
  readonly sync: number
  readonly dataLink: number
  readonly field: Field | undefined
  readonly byteOffset: number
  readonly bitCount: number
}

const MOST_CHANNELS = 10_000
/** Flag of a group whose master channel stands in another group (MDF 4.2). */
const REMOTE_MASTER = 0x08
const DEEPEST = 8
/** A record of a bus event holds 64 data bytes and some numbers; far more is taken for damage. */
const LONGEST_RECORD = 1024 * 1024

/** Reads channel groups and what their records hold. */
export class LayoutReader {
  readonly #blocks: BlockReader
  readonly #tell: Tell
  readonly #names = new Map<number, string>()
  readonly #conversions = new Map<number, Conversion>()

  constructor(blocks: BlockReader, tell: Tell) {
    this.#blocks = blocks
    this.#tell = tell
  }

  /** The group at `offset` and the link to the next. */
  *group(offset: number): Asking<{ group: Group; next: number } | undefined> {
    const block = yield* this.#blocks.block(offset, 'CG', 6, 32)
    if (block === undefined) return undefined
    const [next = 0, firstChannel = 0, nameLink = 0, sourceLink = 0] = block.links
    const { data } = block
    const flags = data.getUint16(16, true)
    const variable = (flags & 1) !== 0
    const recordBytes = data.getUint32(24, true) + data.getUint32(28, true)
    const name = yield* this.#text(nameLink)
    const common = {
      offset,
      recordId: count64(data, 0),
      recordBytes,
      invalidationBytes: variable ? 0 : data.getUint32(28, true),
      variable,
      cycleCount: count64(data, 8),
      name,
    }
    if (variable) return { group: { ...common, layout: undefined }, next }
    if (recordBytes > LONGEST_RECORD) {
      this.#tell(
        'mdf-group-unreadable',
        'error',
        { byteOffset: offset },
        `records of ${recordBytes} bytes are described`,
        'The file is damaged here; this group is left out.',
      )
      return { group: { ...common, layout: undefined }, next }
    }
    const channels = yield* this.#channels(firstChannel, 0, [])
    if ((flags & REMOTE_MASTER) !== 0) {
      this.#tellColumns(common)
      return { group: { ...common, layout: undefined }, next }
    }
    const sourceName = yield* this.#sourceName(sourceLink)
    const layout = this.#layout(common, channels, sourceName === '' ? name : sourceName)
    return { group: { ...common, layout }, next }
  }

  #tellColumns(group: { readonly offset: number; readonly name: string }): void {
    this.#tell(
      'mdf-storage-unknown',
      'error',
      { byteOffset: group.offset },
      `group "${group.name}" keeps its times in another group (column storage of MDF 4.2): no frame can be put together from it`,
      'Export the raw bus traffic in rows: as MDF 4.1, pcapng or candump text.',
    )
  }

  *#channels(first: number, depth: number, found: Channel[]): Asking<Channel[]> {
    for (let offset = first; offset !== 0 && found.length < MOST_CHANNELS; ) {
      const block = yield* this.#blocks.block(offset, 'CN', 8, 24)
      if (block === undefined) break
      const [next = 0, composition = 0] = block.links
      found.push(yield* this.#channel(block))
      if (composition !== 0 && depth < DEEPEST) {
        const header = yield* this.#blocks.header(composition)
        // An array (CA) is no structure of bus events.
        if (header?.kind === 'CN') yield* this.#channels(composition, depth + 1, found)
      }
      offset = next
    }
    return found
  }

  *#channel(block: Block): Asking<Channel> {
    const { data } = block
    const name = yield* this.#text(block.links[2] ?? 0)
    const conversion = yield* this.#conversion(block.links[4] ?? 0)
    const type = data.getUint8(0)
    const dataType = data.getUint8(2)
    const position = {
      bitOffset: data.getUint8(3),
      byteOffset: data.getUint32(4, true),
      bitCount: data.getUint32(8, true),
    }
    return {
      name,
      type,
      sync: data.getUint8(1),
      dataLink: block.links[5] ?? 0,
      field: fieldOf(type, dataType, position, conversion),
      byteOffset: position.byteOffset,
      bitCount: position.bitCount,
    }
  }

  #layout(
    group: { offset: number; recordBytes: number; name: string },
    channels: readonly Channel[],
    sourceName: string,
  ): FrameLayout | undefined {
    const event = eventOf(channels, group.name)
    if (event === undefined) return undefined
    const fits = (field: Field | undefined): Field | undefined => {
      if (field === undefined || field.byteOffset + fieldBytes(field) <= group.recordBytes) return field
      this.#tell(
        'mdf-group-unreadable',
        'warning',
        { byteOffset: group.offset },
        `a value of group "${group.name}" stands beyond its record`,
        'The file is damaged here; frames of this group may lack something.',
      )
      return undefined
    }
    const member = (name: string): Channel | undefined =>
      channels.find((channel) => lastPart(channel.name) === name)
    const field = (name: string): Field | undefined => fits(member(name)?.field)
    const master = channels.find(
      (channel) => (channel.type === 2 || channel.type === 3) && channel.sync === 1,
    )
    const id = field('id')
    if (id === undefined && event !== 'error') {
      this.#tell(
        'mdf-group-unreadable',
        'error',
        { byteOffset: group.offset },
        `group "${group.name}" has CAN frames without identifier`,
        'Frames of this group are left out.',
      )
      return undefined
    }
    return {
      event,
      time: fits(master?.field),
      id,
      extended: field('ide'),
      busChannel: field('buschannel'),
      dlc: field('dlc'),
      length: field('datalength'),
      fd: field('edl'),
      direction: field('dir'),
      bytes: this.#dataBytes(member('databytes'), group.recordBytes),
      sourceName,
    }
  }

  #dataBytes(channel: Channel | undefined, recordBytes: number): DataBytes | undefined {
    if (channel === undefined) return undefined
    if (channel.type === 1) {
      const reference: Field = {
        byteOffset: channel.byteOffset,
        bitOffset: 0,
        bitCount: Math.min(channel.bitCount, 64),
        kind: 'unsigned',
        bigEndian: false,
        conversion: UNCHANGED,
      }
      if (reference.byteOffset + fieldBytes(reference) > recordBytes) return undefined
      return { kind: 'elsewhere', reference, link: channel.dataLink }
    }
    const longest = Math.min(channel.bitCount >> 3, recordBytes - channel.byteOffset)
    return longest < 0 ? undefined : { kind: 'inside', byteOffset: channel.byteOffset, longest }
  }

  *#sourceName(offset: number): Asking<string> {
    const block = yield* this.#blocks.block(offset, 'SI', 3, 0)
    if (block === undefined) return ''
    const path = yield* this.#text(block.links[1] ?? 0)
    return path === '' ? yield* this.#text(block.links[0] ?? 0) : path
  }

  *#text(offset: number): Asking<string> {
    const known = this.#names.get(offset)
    if (known !== undefined) return known
    const text = yield* this.#blocks.text(offset)
    this.#names.set(offset, text)
    return text
  }

  *#conversion(offset: number): Asking<Conversion> {
    const known = this.#conversions.get(offset)
    if (known !== undefined) return known
    const conversion = readConversion(yield* this.#blocks.block(offset, 'CC', 4, 24))
    this.#conversions.set(offset, conversion)
    return conversion
  }
}

function fieldOf(
  type: number,
  dataType: number,
  position: { byteOffset: number; bitOffset: number; bitCount: number },
  conversion: Conversion,
): Field | undefined {
  const bigEndian = dataType === 1 || dataType === 3 || dataType === 5
  if (type === 3 || type === 6) {
    // Virtual: the value is computed from the record's number. Bus logging uses it for constants only.
    return { ...position, kind: 'unsigned', bigEndian, conversion, constant: convert(conversion, 0) }
  }
  if (dataType > 5 || position.bitOffset > 7) return undefined
  if (dataType >= 4) {
    if (position.bitOffset !== 0 || (position.bitCount !== 64 && position.bitCount !== 32)) return undefined
    return { ...position, kind: 'float', bigEndian, conversion }
  }
  if (position.bitCount === 0 || position.bitCount > 64) return undefined
  return { ...position, kind: dataType >= 2 ? 'signed' : 'unsigned', bigEndian, conversion }
}

const EVENTS: readonly (readonly [RegExp, FrameLayout['event']])[] = [
  [/(^|\.)CAN_DataFrame/i, 'data'],
  [/(^|\.)CAN_RemoteFrame/i, 'remote'],
  [/(^|\.)CAN_ErrorFrame/i, 'error'],
]

function eventOf(channels: readonly Channel[], groupName: string): FrameLayout['event'] | undefined {
  for (const name of [...channels.map((channel) => channel.name), groupName]) {
    for (const [pattern, event] of EVENTS) if (pattern.test(name)) return event
  }
  return undefined
}

function lastPart(name: string): string {
  return name.slice(name.lastIndexOf('.') + 1).toLowerCase()
}
