import { closeSync, createReadStream, openSync, readSync, statSync } from 'node:fs'
import { CouldNot } from './answer.ts'
import { ReadAhead } from './read-ahead.ts'

/** Size of the pieces a file is read in. */
const pieceBytes = 1 << 20

/** Total bytes of a file, or null for standard input. Throws CouldNot when it cannot be read. */
export function sizeOf(file: string): number | null {
  if (file === '-') return null
  try {
    const found = statSync(file)
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

/** Places a recording is read into where its reader has none of its own: they stay in the processor's cache. */
const ownRooms = () => Array.from({ length: 2 }, () => new Uint8Array(1 << 18))

/**
 * The pieces of a recording, by turns in places of the same length (`rooms`, two or more): each piece is valid until
 * the next is asked for, and while it is used the next ones are read on another processor.
 */
export async function* recordingPieces(
  file: string,
  size: number | null,
  rooms: readonly Uint8Array[] = ownRooms(),
  count: (piece: Uint8Array) => void = () => {},
): AsyncGenerator<Uint8Array> {
  if (size === null) {
    for await (const piece of piecesOf(file)) {
      count(piece)
      yield piece
    }
    return
  }
  let open: number | undefined
  let ahead: ReadAhead | undefined
  try {
    open = openSync(file, 'r')
    ahead = new ReadAhead(open, rooms)
    for (;;) {
      const { room, length } = await ahead.next()
      if (length === 0) return
      const piece = room.subarray(0, length)
      count(piece)
      yield piece
      ahead.giveBack(room)
    }
  } catch (error) {
    throw asCouldNot(file, error)
  } finally {
    await ahead?.end()
    if (open !== undefined) closeSync(open)
  }
}

/** Whether a file begins as one packed with gzip does (RFC 1952). */
export function isPacked(file: string): boolean {
  let open: number | undefined
  try {
    open = openSync(file, 'r')
    const head = new Uint8Array(3)
    return readSync(open, head) === 3 && head[0] === 0x1f && head[1] === 0x8b && head[2] === 8
  } catch (error) {
    throw asCouldNot(file, error)
  } finally {
    if (open !== undefined) closeSync(open)
  }
}

/** Unpacked bytes that come at once. */
const unpackedPieceBytes = 1 << 17

/** Packed bytes that are unpacked at once: a finding's place is that of the first of them. */
const packedPieceBytes = 1 << 16

/**
 * What is inside a file packed with gzip, unpacked by Node on another processor while this one reads. Each piece is
 * valid until the next is asked for. `count` is told the packed pieces, `damaged` where the file ends too early or is damaged, and why; what came before is given.
 */
export async function* unpackedPieces(
  file: string,
  count: (piece: Uint8Array) => void,
  damaged: (offset: number, reason: string) => void,
): AsyncGenerator<Uint8Array> {
  const { createGunzip } = await import('node:zlib')
  const packed = createReadStream(file, { highWaterMark: packedPieceBytes })
  const gunzip = createGunzip({ chunkSize: unpackedPieceBytes })
  let fault: unknown
  packed.on('data', (piece) => count(piece as Uint8Array))
  packed.on('error', (error) => gunzip.destroy(error))
  packed.pipe(gunzip)
  try {
    for await (const piece of gunzip) {
      yield piece as Uint8Array
      letGo(piece as Uint8Array)
    }
  } catch (error) {
    fault = error
  } finally {
    packed.destroy()
  }
  if (fault === undefined) return
  const { code = '', message } = fault as NodeJS.ErrnoException
  if (!code.startsWith('Z_')) throw asCouldNot(file, fault)
  damaged(gunzip.bytesWritten, message)
}

/**
 * Gives the memory of a used piece back at once: the collector sees only the small object in front of it, and would let
 * a hundred of them wait. A piece that ends before its memory does shares it with the next.
 */
function letGo({ buffer, byteOffset, byteLength }: Uint8Array): void {
  if (buffer instanceof ArrayBuffer && byteOffset + byteLength === buffer.byteLength) buffer.transfer(0)
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
      `${file === '-' ? 'Standard input' : file} is not JSON: ${(error as Error).message}.`,
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
