/** @module Reads the directory of a zip as this package writes it; anything else is answered with why it is not. */

/** Bytes that need not be in memory: a file, or an array. */
export interface ByteAccess {
  readonly size: number
  /** The bytes from `from` up to and without `to`; both lie inside. */
  read(from: number, to: number): Promise<Uint8Array>
}

/** Access to bytes in memory. */
export function accessTo(bytes: Uint8Array): ByteAccess {
  return { size: bytes.length, read: async (from, to) => bytes.subarray(from, to) }
}

/** A file of a zip and where its bytes stand. */
export interface ZipEntry {
  readonly name: string
  readonly from: number
  readonly to: number
}

export type ZipDirectory =
  | { readonly entries: readonly ZipEntry[] }
  | { readonly wrongAt: number; readonly what: string }

const endSize = 22
const centralSize = 46
const localSize = 30

/** True when bytes begin like a zip. */
export function looksLikeZip(bytes: Uint8Array): boolean {
  return bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] === 0x03 && bytes[3] === 0x04
}

/** The files of a zip in the order of its directory (PKWARE APPNOTE 4.3). Never throws on malformed bytes. */
export async function readDirectory(access: ByteAccess): Promise<ZipDirectory> {
  const { size } = access
  const wrong = (wrongAt: number, what: string): ZipDirectory => ({ wrongAt, what })
  if (size < endSize) return wrong(0, 'The file is cut off.')
  const end = view(await access.read(size - endSize, size))
  if (end.getUint32(0, true) !== 0x06054b50)
    return wrong(
      size - endSize,
      'The end of the zip is not there: the file was cut off, or bytes were added.',
    )
  const count = end.getUint16(10, true)
  const length = end.getUint32(12, true)
  const start = end.getUint32(16, true)
  if (start + length + endSize !== size)
    return wrong(size - endSize, 'The end of the zip does not say where its directory stands.')
  const directory = await access.read(start, start + length)
  const fields = view(directory)
  const entries: ZipEntry[] = []
  let at = 0
  for (let index = 0; index < count; index++) {
    if (at + centralSize > length || fields.getUint32(at, true) !== 0x02014b50)
      return wrong(start + at, `The directory of the zip is broken at its file ${index + 1}.`)
    const nameLength = fields.getUint16(at + 28, true)
    const bytes = fields.getUint32(at + 24, true)
    const local = fields.getUint32(at + 42, true)
    const name = new TextDecoder().decode(directory.subarray(at + centralSize, at + centralSize + nameLength))
    const from = local + localSize + nameLength
    if (fields.getUint16(at + 10, true) !== 0 || from + bytes > start)
      return wrong(start + at, `The directory of the zip places "${name}" where it cannot be.`)
    entries.push({ name, from, to: from + bytes })
    at += centralSize + nameLength
  }
  if (at !== length) return wrong(start + at, 'The directory of the zip holds more than its files.')
  return { entries }
}

function view(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
}

const pieceBytes = 1 << 20

/** The bytes of a file in pieces. */
export async function* piecesOfEntry(access: ByteAccess, { from, to }: ZipEntry): AsyncGenerator<Uint8Array> {
  for (let at = from; at < to; at += pieceBytes) yield access.read(at, Math.min(at + pieceBytes, to))
}
