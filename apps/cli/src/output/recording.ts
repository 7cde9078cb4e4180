import type { Hash } from 'node:crypto'
import { basename } from 'node:path'
import {
  type DecodeChoices,
  type DecodeListener,
  type DecodeOptions,
  type DecodeResult,
  decodeCapture,
  decodeMdf,
  type Finding,
  packedDamage,
} from '@shearline/bus'
import { CouldNot, sayFinding } from './answer.ts'
import { isPacked, recordingPieces, sizeOf, unpackedPieces } from './input.ts'
import { openMdf } from './mdf-file.ts'
import { Progress } from './progress.ts'

/** Findings after which nothing of a recording is read, however long it goes on. */
const fatal = new Set(['format-unknown', 'csv-not-understood', 'csv-column-unknown', 'mdf-version'])

/** What reading a recording came to, beside what its listeners were told. */
export interface ReadRecording {
  readonly result: DecodeResult
  readonly name: string
  readonly bytes: number
  readonly sha256: string
}

/**
 * Decodes a recording piece by piece; findings go to standard error as they come. Before each piece it calls
 * `write`, so that output never piles up in memory. Throws CouldNot when the file cannot be read or no format fits.
 */
export async function readRecording(
  file: string,
  listener: DecodeListener,
  choices: DecodeChoices & Pick<DecodeOptions, 'columns'> = {},
  write: () => void = () => {},
  hashed = true,
): Promise<ReadRecording> {
  const size = sizeOf(file)
  const progress = new Progress(basename(file), size)
  const hash: Hash | undefined = hashed ? (await import('node:crypto')).createHash('sha256') : undefined
  let bytes = 0
  let hopeless: Finding | undefined
  const finding = (found: Finding) => {
    listener.finding?.(found)
    // What ends the command is said once, by the command.
    if (fatal.has(found.code)) {
      hopeless ??= found
      return
    }
    progress.done()
    sayFinding(file, found)
  }
  const packed = size !== null && isPacked(file)
  const options: DecodeOptions = {
    ...choices,
    ...listener,
    finding,
    ...(packed ? { unpackedFrom: 'gzip' } : {}),
  }
  const count = (piece: Uint8Array) => {
    hash?.update(piece)
    bytes += piece.length
    progress.at(bytes)
  }
  const mdf = size === null ? undefined : openMdf(file, size)
  let result: DecodeResult
  if (mdf === undefined) {
    const decoding = decodeCapture(options)
    const pieces = packed
      ? unpackedPieces(file, count, (offset, reason) => decoding.finding(packedDamage(offset, reason)))
      : recordingPieces(file, size, decoding.rooms, count)
    for await (const piece of pieces) {
      decoding.push(piece)
      if (hopeless !== undefined) break
      write()
    }
    result = decoding.end()
  } else {
    if (hash !== undefined) for await (const piece of recordingPieces(file, size)) hash.update(piece)
    bytes = mdf.size
    result = mdf.decode(
      (source) => decodeMdf(source, options),
      (read) => {
        progress.at(read)
        write()
      },
    )
  }
  progress.done()
  throwIfHopeless(file, hopeless)
  if (result.recognised.format === 'unknown' || result.summary.findings['format-unknown'] !== undefined) {
    const reason =
      result.recognised.format === 'unknown'
        ? result.recognised.reason
        : 'it is packed, and what is inside is of no known format'
    throw new CouldNot(
      `${file} is not a recording that can be read: ${reason}.`,
      'Give a candump, pcap, pcapng, MDF 4 or CSV recording.',
    )
  }
  if (choices.columns !== undefined) throwIfNoTable(file, result)
  return {
    result,
    name: file === '-' ? 'standard input' : basename(file),
    bytes,
    sha256: hash?.digest('hex') ?? '',
  }
}

/** Ends the command before anything is printed that a mistaken reading gave. */
function throwIfHopeless(file: string, found: Finding | undefined): void {
  if (found === undefined || found.code === 'format-unknown') return
  const byName =
    found.code === 'csv-not-understood' ? ' Or say it with decode --columns time=...,id=...,data=...' : ''
  throw new CouldNot(`${file}: ${found.what}.`, `${found.doNext}${byName}`)
}

/** Columns were named: the recording must be a table, and they must give frames. */
function throwIfNoTable(file: string, { recognised, summary }: DecodeResult): void {
  if (recognised.format !== 'csv' && recognised.format !== 'gzip')
    throw new CouldNot(
      `${file} is no table but ${recognised.format}: it has no columns to name.`,
      'Leave --columns out.',
    )
  if (summary.frames === 0)
    throw new CouldNot(
      `No line of ${file} gives a frame with these columns.`,
      'Look at what is said of its lines above, and name the columns anew.',
    )
}
