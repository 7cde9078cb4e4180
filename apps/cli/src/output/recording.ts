import { createHash } from 'node:crypto'
import { basename } from 'node:path'
import {
  type DecodeChoices,
  type DecodeListener,
  type DecodeResult,
  decodeCapture,
  type Finding,
} from '@shearline/bus'
import { CouldNot, sayFinding } from './answer.ts'
import { recordingPieces, sizeOf } from './input.ts'
import { Progress } from './progress.ts'

const fatal = new Set(['format-unknown', 'csv-not-understood'])

/** What reading a recording came to, beside what its listeners were told. */
export interface ReadRecording {
  readonly result: DecodeResult
  readonly name: string
  readonly bytes: number
  readonly sha256: string
}

/**
 * Decodes a recording piece by piece; findings go to standard error as they come. Between two pieces it waits for
 * `drained`, so that output never piles up in memory. Throws CouldNot when the file cannot be read or no format fits.
 */
export async function readRecording(
  file: string,
  listener: DecodeListener,
  choices: DecodeChoices = {},
  drained: () => Promise<void> = async () => {},
  hashed = true,
): Promise<ReadRecording> {
  const size = await sizeOf(file)
  const progress = new Progress(basename(file), size)
  const hash = hashed ? createHash('sha256') : undefined
  let bytes = 0
  const finding = (found: Finding) => {
    listener.finding?.(found)
    // What ends the command is said once, by the command.
    if (fatal.has(found.code)) return
    progress.done()
    sayFinding(file, found)
  }
  const decoding = decodeCapture({ ...choices, ...listener, finding })
  for await (const piece of recordingPieces(file, size)) {
    hash?.update(piece)
    bytes += piece.length
    decoding.push(piece)
    progress.at(bytes)
    await drained()
  }
  const result = decoding.end()
  progress.done()
  if (result.recognised.format === 'unknown') {
    throw new CouldNot(
      `${file} is not a recording that can be read: ${result.recognised.reason}.`,
      'Give a candump, pcap, pcapng, MDF 4 or CSV recording.',
    )
  }
  if (result.summary.findings['csv-not-understood'] !== undefined) {
    throw new CouldNot(
      `${file} is a table, but no column of it was found to hold the identifier or the data bytes.`,
      'Give its columns names like time, id, data, or export the recording in another format.',
    )
  }
  return {
    result,
    name: file === '-' ? 'standard input' : basename(file),
    bytes,
    sha256: hash?.digest('hex') ?? '',
  }
}

/** Waits until standard output has taken what was written. */
export function stdoutDrained(): Promise<void> {
  if (!process.stdout.writableNeedDrain) return Promise.resolve()
  return new Promise((resolve) => process.stdout.once('drain', resolve))
}
