/**
 * @module Reads the CAN frames of an MDF 4 recording in the order of the recording.
 *
 * Source: ASAM MDF 4.1 (ID, HD, DG blocks) with its bus logging addition. Files that were never finished
 * (`UnFinMF`) are read to the end of the file: their record counts and last block length are not trusted.
 * Frames of several groups are given in order of time.
 */

import type { CaptureSink } from '../capture/contract.ts'
import { BlockReader, type MdfFindingCode, type Tell } from './blocks.ts'
import { startTime } from './conversion.ts'
import { GroupCursor } from './cursor.ts'
import { type Group, LayoutReader } from './layout.ts'
import { merge, TimeOrder } from './order.ts'
import { openLastPart, type Part, PartReader } from './parts.ts'
import { DataRun, Horizon } from './run.ts'
import { type Asking, answerFrom, ChunkFeeder, type RandomAccess } from './source.ts'

const ID_BYTES = 64
const HEADER_OFFSET = 64
const MOST_GROUPS = 10_000
/** Unfinalised flags (ID block): the length of the last DT block, and the references of variable records. */
const LAST_LENGTH_UNTRUE = 0x04
const REFERENCES_UNTRUE = 0x40

/** Most bytes of a recording kept while it arrives in order and the reader still needs what stands later. */
export const MOST_KEPT_BYTES: number = 64 * 1024 * 1024

/**
 * Reads a recording from a source with random access and tells the sink its frames and findings. Iterate it to the
 * end; every step gives the number of bytes read so far, and leaving the loop stops the reading. Never throws on
 * malformed bytes; what `source.read` throws passes through.
 */
export function readMdf(source: RandomAccess, sink: CaptureSink): Generator<number, void, void> {
  return answerFrom(asking(sink), source)
}

/** Reads a recording from chunks that arrive in order, as long as its layout allows that or `mostKept` bytes hold it. */
export function mdfFeeder(sink: CaptureSink, mostKept: number = MOST_KEPT_BYTES): ChunkFeeder {
  const tell = teller(sink)
  return new ChunkFeeder(asking(sink), mostKept, (kept, wanted) => {
    tell(
      'mdf-needs-random-access',
      'error',
      { byteOffset: wanted },
      `this MDF file must be read out of order and is larger than the ${kept} bytes kept for that; frames from here on are missing`,
      'Open it as a file on disk rather than as a stream.',
    )
  })
}

function teller(sink: CaptureSink): Tell {
  return (code, severity, where, what, doNext) => {
    sink.finding({ code: code satisfies MdfFindingCode, severity, where, what, doNext })
  }
}

interface DataDescription {
  readonly groups: Group[]
  readonly idBytes: number
  readonly parts: Part[]
  readonly elsewhere: Map<number, Part[]>
  readonly variableGroups: Map<number, Group>
}

function* asking(sink: CaptureSink): Asking<void> {
  const tell = teller(sink)
  const identity = yield* readIdentity(tell)
  if (identity === undefined) return
  const blocks = new BlockReader(tell)
  const header = yield* blocks.block(HEADER_OFFSET, 'HD', 6, 16)
  if (header === undefined) return
  if (header.data.byteLength > 12 && (header.data.getUint8(12) & 1) !== 0) {
    tell(
      'mdf-local-time',
      'warning',
      { byteOffset: HEADER_OFFSET },
      'the recording states local time without a zone; it is shown as if it were UTC',
      'Take the hour with care.',
    )
  }
  const descriptions = yield* readDataGroups(header.links[0] ?? 0, identity.unfinished, blocks, tell)
  if (identity.unfinished) {
    const all = descriptions.flatMap((description) => [description.parts, ...description.elsewhere.values()])
    if ((identity.flags & LAST_LENGTH_UNTRUE) !== 0) openLastPart(all)
  }
  const withFrames = descriptions.filter(({ groups }) => groups.some((group) => group.layout !== undefined))
  if (withFrames.length === 0) {
    tell(
      'mdf-no-frames',
      'error',
      { byteOffset: HEADER_OFFSET },
      'the file describes no CAN frames (bus logging)',
      'Export the raw bus traffic, not measured signals.',
    )
    return
  }
  const horizon = new Horizon()
  const start = startTime(header)
  const pairInOrder = identity.unfinished && (identity.flags & REFERENCES_UNTRUE) !== 0
  const cursors = withFrames.map((description) => {
    const run = new DataRun(description.parts, tell, horizon)
    const elsewhere = new Map(
      [...description.elsewhere].map(([link, parts]) => [link, new DataRun(parts, tell, horizon)] as const),
    )
    return new GroupCursor({ ...description, run, elsewhere, pairInOrder }, start, tell)
  })
  const walkers = cursors.map((cursor) => (cursor.mixed ? new TimeOrder(cursor) : cursor))
  yield* merge(walkers, (frame) => sink.frame(frame))
  report(cursors, identity.unfinished, tell)
  const late = walkers.reduce((sum, walker) => sum + (walker instanceof TimeOrder ? walker.late : 0), 0)
  if (late > 0) {
    tell(
      'mdf-late-frames',
      'warning',
      { byteOffset: 0 },
      `${late} frames stand so far from their place in time that they are shown late`,
      'Do not rely on the order of frames around jumps back in time.',
    )
  }
}

function* readIdentity(tell: Tell): Asking<{ unfinished: boolean; flags: number } | undefined> {
  const bytes = yield { offset: 0, length: ID_BYTES, forgetBefore: 0 }
  const text = String.fromCharCode(...bytes.subarray(0, 16))
  if (bytes.length < ID_BYTES) {
    tell(
      'mdf-cut',
      'error',
      { byteOffset: bytes.length },
      'the recording ends inside its first block',
      'Get the whole file.',
    )
    return undefined
  }
  const unfinished = text.startsWith('UnFinMF ')
  if (!unfinished && !text.startsWith('MDF     ')) {
    tell('mdf-version', 'error', { byteOffset: 0 }, 'this is no MDF file', 'Choose another file.')
    return undefined
  }
  const version = (bytes[28] ?? 0) | ((bytes[29] ?? 0) << 8)
  if (version < 400 || version >= 500) {
    const stated = /^[0-9]\.[0-9]{2}/.exec(text.slice(8))?.[0] ?? 'of unknown number'
    tell(
      'mdf-version',
      'error',
      { byteOffset: 28 },
      `MDF version ${stated} is not read: it has no bus logging, its records are measured signals; that came with version 4.1`,
      'Export the raw bus traffic from where it was recorded, as MDF 4.1, pcapng or candump text. Converting this file does not bring the frames back.',
    )
    return undefined
  }
  const flags = (bytes[60] ?? 0) | ((bytes[61] ?? 0) << 8)
  if (unfinished) {
    tell(
      'mdf-not-finalised',
      'note',
      { byteOffset: 0 },
      'the recorder did not finish the file; its counts are ignored and it is read to the end',
      'Nothing to do.',
    )
  }
  return { unfinished, flags }
}

function* readDataGroups(
  first: number,
  unfinished: boolean,
  blocks: BlockReader,
  tell: Tell,
): Asking<DataDescription[]> {
  const layouts = new LayoutReader(blocks, tell)
  const partReader = new PartReader(blocks, tell)
  const found: DataDescription[] = []
  const seen = new Set<number>()
  for (let offset = first; offset !== 0 && found.length < MOST_GROUPS && !seen.has(offset); ) {
    seen.add(offset)
    const block = yield* blocks.block(offset, 'DG', 4, 1)
    if (block === undefined) break
    const [next = 0, firstGroup = 0, dataLink = 0] = block.links
    const groups: Group[] = []
    for (
      let groupOffset = firstGroup;
      groupOffset !== 0 && groups.length < MOST_GROUPS && !seen.has(groupOffset);
    ) {
      seen.add(groupOffset)
      const read = yield* layouts.group(groupOffset)
      if (read === undefined) break
      groups.push(read.group)
      groupOffset = read.next
    }
    found.push(yield* describe(groups, block.data.getUint8(0), dataLink, unfinished, partReader))
    offset = next
  }
  return found
}

function* describe(
  groups: Group[],
  idBytes: number,
  dataLink: number,
  unfinished: boolean,
  partReader: PartReader,
): Asking<DataDescription> {
  const variableGroups = new Map(
    groups.filter((group) => group.variable).map((group) => [group.offset, group] as const),
  )
  const elsewhere = new Map<number, Part[]>()
  // Data of groups without CAN frames is not listed, unless the last block of the file must be found.
  const wanted = unfinished || groups.some((group) => group.layout !== undefined)
  for (const group of groups) {
    const bytes = group.layout?.bytes
    if (bytes?.kind !== 'elsewhere' || variableGroups.has(bytes.link) || elsewhere.has(bytes.link)) continue
    elsewhere.set(bytes.link, (yield* partReader.list(bytes.link)).parts)
  }
  const { parts, valuesOnly } = wanted ? yield* partReader.list(dataLink) : { parts: [], valuesOnly: false }
  const stored = valuesOnly ? groups.map(withoutInvalidation) : groups
  return { groups: stored, idBytes, parts, elsewhere, variableGroups }
}

function withoutInvalidation(group: Group): Group {
  return { ...group, recordBytes: group.recordBytes - group.invalidationBytes }
}

/** What is worth saying at the end: frames without bytes, other buses, counts that differ. */
function report(cursors: readonly GroupCursor[], unfinished: boolean, tell: Tell): void {
  let others = 0
  let firstOther: Group | undefined
  for (const cursor of cursors) {
    cursor.report()
    for (const { group, count } of cursor.counts()) {
      if (group.layout === undefined && !group.variable && count > 0) {
        others += count
        firstOther ??= group
      }
      if (!unfinished && count !== group.cycleCount) {
        tell(
          'mdf-count-differs',
          'warning',
          { byteOffset: group.offset },
          `group "${group.name}" states ${group.cycleCount} records; ${count} were read`,
          'Some of the recording is missing or was written twice.',
        )
      }
    }
  }
  if (firstOther !== undefined) {
    tell(
      'mdf-other-records',
      'note',
      { byteOffset: firstOther.offset },
      `${others} records of other buses or signals are passed over; the first group is "${firstOther.name}"`,
      'Nothing to do.',
    )
  }
}
