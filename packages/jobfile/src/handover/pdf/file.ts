/** @module Finds the objects of a PDF file through its cross-reference table (ISO 32000-1, 7.5.4). Never throws. */
import { indexOf, lastIndexOf, latin1 } from './bytes.ts'
import {
  type Dictionary,
  isDictionary,
  Name,
  ObjectReader,
  type PdfValue,
  Ref,
  Text,
  Word,
} from './objects.ts'

/** An indirect object: its value and, when it is a stream, where the stream's bytes stand in the file. */
export interface IndirectObject {
  readonly value: PdfValue
  readonly stream: { readonly from: number; readonly to: number } | null
}

/** A PDF file with one cross-reference table, as far as our own files need it. */
export class PdfFile {
  readonly bytes: Uint8Array
  /** Byte offset of each object by its number; object 0 is free. */
  readonly offsets: ReadonlyMap<number, number>
  readonly tableAt: number
  readonly trailer: Dictionary
  readonly #read = new Map<number, IndirectObject | null>()

  private constructor(
    bytes: Uint8Array,
    offsets: ReadonlyMap<number, number>,
    tableAt: number,
    trailer: Dictionary,
  ) {
    this.bytes = bytes
    this.offsets = offsets
    this.tableAt = tableAt
    this.trailer = trailer
  }

  /** Opens a file; null when it has no readable table and trailer at its end. */
  static open(bytes: Uint8Array): PdfFile | null {
    const mark = lastIndexOf(bytes, 'startxref')
    if (mark < 0) return null
    const tableAt = new ObjectReader(bytes, mark + 9).read()
    if (typeof tableAt !== 'number' || tableAt < 0 || tableAt >= mark) return null
    const trailerAt = indexOf(bytes, 'trailer', tableAt)
    if (trailerAt < 0 || trailerAt > mark) return null
    const trailer = new ObjectReader(bytes, trailerAt + 7).read()
    if (!isDictionary(trailer)) return null
    const offsets = readTable(latin1(bytes, tableAt, trailerAt))
    return offsets === null ? null : new PdfFile(bytes, offsets, tableAt, trailer)
  }

  /** An object by its number; null when it cannot be read. */
  object(number: number): IndirectObject | null {
    const known = this.#read.get(number)
    if (known !== undefined) return known
    const read = this.#readObject(number)
    this.#read.set(number, read)
    return read
  }

  #readObject(number: number): IndirectObject | null {
    const offset = this.offsets.get(number)
    if (offset === undefined) return null
    const reader = new ObjectReader(this.bytes, offset)
    const [own, generation, word] = [reader.read(), reader.read(), reader.read()]
    if (own !== number || generation !== 0 || !(word instanceof Word) || word.word !== 'obj') return null
    const value = reader.read()
    if (value === undefined) return null
    const length = isDictionary(value) ? this.number(value.get('Length')) : null
    const next = reader.read()
    if (length === null || !(next instanceof Word) || next.word !== 'stream') return { value, stream: null }
    const from = reader.at + (this.bytes[reader.at] === 13 ? 2 : 1)
    const to = from + length
    return { value, stream: to <= this.bytes.length && length >= 0 ? { from, to } : null }
  }

  /** Follows a reference to its value. */
  resolve(value: PdfValue | undefined): PdfValue | undefined {
    return value instanceof Ref ? this.object(value.object)?.value : value
  }

  dictionary(value: PdfValue | undefined): Dictionary | null {
    const found = this.resolve(value)
    return isDictionary(found) ? found : null
  }

  array(value: PdfValue | undefined): readonly PdfValue[] {
    const found = this.resolve(value)
    return Array.isArray(found) ? found : []
  }

  number(value: PdfValue | undefined): number | null {
    const found = this.resolve(value)
    return typeof found === 'number' ? found : null
  }

  /** The catalogue: where everything else hangs. */
  get root(): Dictionary | null {
    return this.dictionary(this.trailer.get('Root'))
  }

  /** References of the pages in order; our page trees are flat. */
  get pages(): readonly Ref[] {
    const kids = this.array(this.dictionary(this.root?.get('Pages'))?.get('Kids'))
    return kids.filter((kid) => kid instanceof Ref)
  }

  /** Attached files by name: the objects of their description and of their bytes. */
  attachments(): ReadonlyMap<string, { readonly description: number; readonly file: number }> {
    const found = new Map<string, { description: number; file: number }>()
    const names = this.dictionary(this.root?.get('Names'))
    const leaves = this.array(this.dictionary(names?.get('EmbeddedFiles'))?.get('Names'))
    for (const leaf of leaves) {
      if (!(leaf instanceof Ref)) continue
      const description = this.dictionary(leaf)
      const name = this.resolve(description?.get('F'))
      const file = this.dictionary(description?.get('EF'))?.get('F')
      if (name instanceof Text && file instanceof Ref)
        found.set(name.text, { description: leaf.object, file: file.object })
    }
    return found
  }
}

function readTable(text: string): ReadonlyMap<number, number> | null {
  const lines = text.split(/\r?\n/)
  if (lines[0]?.trim() !== 'xref') return null
  const offsets = new Map<number, number>()
  let number = 0
  for (const line of lines.slice(1)) {
    const entry = /^(\d{10}) \d{5} ([nf])/.exec(line)
    const section = /^(\d+) (\d+)\s*$/.exec(line)
    if (entry !== null) {
      if (entry[2] === 'n') offsets.set(number, Number(entry[1]))
      number++
    } else if (section !== null) number = Number(section[1])
  }
  return offsets
}

/** The name a dictionary gives itself under a key, such as its Type. */
export function nameOf(dictionary: Dictionary | null, key: string): string | null {
  const value = dictionary?.get(key)
  return value instanceof Name ? value.name : null
}
