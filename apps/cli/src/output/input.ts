import { closeSync, createReadStream, openSync, readSync } from 'node:fs'
import { stat } from 'node:fs/promises'
import { CouldNot } from './answer.ts'

/** Size of the pieces a file is read in. */
const pieceBytes = 1 << 20

/** Total bytes of a file, or null for standard input. Throws CouldNot when it cannot be read. */
export async function sizeOf(file: string): Promise<number | null> {
  if (file === '-') return null
  try {
    const found = await stat(file)
    if (found.isDirectory()) throw new CouldNot(`${file} is a folder.`, 'Name a file in it.')
    return found.isFile() ? found.size : null
  } catch (error) {
    throw asCouldNot(file, error)
  }
}

/** The pieces of a file, or of standard input for `-`. Throws CouldNot when it cannot be read. */
export async function* piecesOf(file: string): AsyncGenerator<Uint8Array> {
  const source = file === '-' ? process.stdin : createReadStream(file, { highWaterMark: pieceBytes })
  try {
    for await (const piece of source) yield typeof piece === 'string' ? Buffer.from(piece) : piece
  } catch (error) {
    throw asCouldNot(file, error)
  }
}

/** Size of the pieces a recording is read in: they stay in the processor's cache. */
const recordingPieceBytes = 1 << 18

/**
 * The pieces of a recording, all in the same bytes: each is valid until the next is asked for. Read one after the
 * other without waiting in between, which is what a long recording takes the least time with.
 */
export async function* recordingPieces(file: string, size: number | null): AsyncGenerator<Uint8Array> {
  if (size === null) {
    yield* piecesOf(file)
    return
  }
  let open: number | undefined
  try {
    open = openSync(file, 'r')
    const bytes = new Uint8Array(recordingPieceBytes)
    for (let length = readSync(open, bytes); length > 0; length = readSync(open, bytes))
      yield bytes.subarray(0, length)
  } catch (error) {
    throw asCouldNot(file, error)
  } finally {
    if (open !== undefined) closeSync(open)
  }
}

/** A whole file in memory; for documents and plans, not for recordings. */
export async function bytesOf(file: string): Promise<Uint8Array> {
  const pieces: Uint8Array[] = []
  for await (const piece of piecesOf(file)) pieces.push(piece)
  return Buffer.concat(pieces)
}

/** A whole JSON file. Throws CouldNot naming the place where the JSON breaks. */
export async function jsonOf(file: string): Promise<unknown> {
  const text = new TextDecoder().decode(await bytesOf(file))
  try {
    return JSON.parse(text)
  } catch (error) {
    throw new CouldNot(
      `${file} is not JSON: ${(error as Error).message}.`,
      'Mend the file and run the command again.',
    )
  }
}

function asCouldNot(file: string, error: unknown): CouldNot {
  if (error instanceof CouldNot) return error
  const code = (error as NodeJS.ErrnoException).code
  if (code === 'ENOENT') return new CouldNot(`${file} does not exist.`, 'Check the name and the folder.')
  if (code === 'EACCES') return new CouldNot(`${file} may not be read.`, 'Check its permissions.')
  return new CouldNot(
    `${file} could not be read (${(error as Error).message}).`,
    'Check the disk and try again.',
  )
}
