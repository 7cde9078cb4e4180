/** @module Reads PDF objects (ISO 32000-1, 7.3) as far as our own files use them. Never throws. */
import { latin1 } from './bytes.ts'

export class Name {
  readonly name: string
  constructor(name: string) {
    this.name = name
  }
}
export class Ref {
  readonly object: number
  constructor(object: number) {
    this.object = object
  }
}
/** A string; its bytes one character each. */
export class Text {
  readonly text: string
  constructor(text: string) {
    this.text = text
  }
}
/** An operator of a content stream or a word the object syntax does not know. */
export class Word {
  readonly word: string
  constructor(word: string) {
    this.word = word
  }
}
export type Dictionary = ReadonlyMap<string, PdfValue>
export type PdfValue = null | boolean | number | Name | Ref | Text | Word | readonly PdfValue[] | Dictionary

const blanks = new Set([0, 9, 10, 12, 13, 32])
const delimiters = new Set([...'()<>[]{}/%'].map((character) => character.charCodeAt(0)))
const digits = new Set([...'0123456789'].map((character) => character.charCodeAt(0)))
/** Deeper nesting than any file of ours has; stops a crafted file from using up the stack. */
const deepest = 60

/** Reads values one after another from a place in the bytes. */
export class ObjectReader {
  readonly bytes: Uint8Array
  at: number
  constructor(bytes: Uint8Array, at = 0) {
    this.bytes = bytes
    this.at = at
  }

  /** The next value, or undefined at the end or where nothing readable stands. */
  read(depth = 0): PdfValue | undefined {
    this.skipBlanks()
    const byte = this.bytes[this.at]
    if (byte === undefined || depth > deepest) return undefined
    const character = String.fromCharCode(byte)
    if (character === '/') return this.#name()
    if (character === '(') return this.#literal()
    if (character === '[') return this.#array(depth)
    if (character === '<')
      return this.bytes[this.at + 1] === byte ? this.#dictionary(depth) : this.#hexadecimal()
    if (delimiters.has(byte)) {
      this.at++
      return new Word(character)
    }
    return this.#word()
  }

  skipBlanks(): void {
    for (;;) {
      const byte = this.bytes[this.at]
      if (byte === undefined) return
      if (byte === 0x25) while (this.at < this.bytes.length && !this.#lineEnd()) this.at++
      else if (!blanks.has(byte)) return
      else this.at++
    }
  }

  #lineEnd(): boolean {
    return this.bytes[this.at] === 10 || this.bytes[this.at] === 13
  }

  #run(): string {
    const from = this.at
    for (; this.at < this.bytes.length; this.at++) {
      const byte = this.bytes[this.at] ?? 0
      if (blanks.has(byte) || delimiters.has(byte)) break
    }
    return latin1(this.bytes, from, this.at)
  }

  #name(): Name {
    this.at++
    const raw = this.#run()
    return new Name(
      raw.replace(/#([0-9a-fA-F]{2})/g, (_, hex) => String.fromCharCode(Number.parseInt(hex, 16))),
    )
  }

  #word(): PdfValue {
    const word = this.#run()
    if (/^[+-]?(\d+\.?\d*|\.\d+)$/.test(word)) return this.#reference(word) ?? Number(word)
    if (word === 'true' || word === 'false') return word === 'true'
    return word === 'null' ? null : new Word(word)
  }

  /** `12 0 R` is one value, not three. */
  #reference(word: string): Ref | null {
    if (!/^\d+$/.test(word)) return null
    const generation = this.#past(this.at, blanks)
    const blank = this.#past(generation, digits)
    const letter = this.#past(blank, blanks)
    if (generation === this.at || blank === generation || letter === blank) return null
    const after = this.bytes[letter + 1]
    if (this.bytes[letter] !== 0x52) return null
    if (after !== undefined && !blanks.has(after) && !delimiters.has(after)) return null
    this.at = letter + 1
    return new Ref(Number(word))
  }

  /** The first place at or after `at` whose byte is not one of `kind`. */
  #past(at: number, kind: ReadonlySet<number>): number {
    let place = at
    while (kind.has(this.bytes[place] ?? -1)) place++
    return place
  }

  #literal(): Text {
    let text = ''
    let open = 0
    for (; this.at < this.bytes.length; this.at++) {
      const character = String.fromCharCode(this.bytes[this.at] ?? 0)
      if (character === '\\') {
        this.at++
        text += escaped(String.fromCharCode(this.bytes[this.at] ?? 0))
        continue
      }
      if (character === '(' && open++ === 0) continue
      if (character === ')' && --open === 0) break
      text += character
    }
    this.at++
    return new Text(text)
  }

  #hexadecimal(): Text {
    const from = ++this.at
    while (this.at < this.bytes.length && this.bytes[this.at] !== 0x3e) this.at++
    const digits = latin1(this.bytes, from, this.at).replace(/[^0-9a-fA-F]/g, '')
    this.at++
    const pairs = digits.match(/.{1,2}/g) ?? []
    return new Text(
      pairs.map((pair) => String.fromCharCode(Number.parseInt(pair.padEnd(2, '0'), 16))).join(''),
    )
  }

  #array(depth: number): readonly PdfValue[] {
    this.at++
    const values: PdfValue[] = []
    for (;;) {
      const value = this.read(depth + 1)
      if (value === undefined || (value instanceof Word && value.word === ']')) return values
      values.push(value)
    }
  }

  #dictionary(depth: number): Dictionary {
    this.at += 2
    const entries = new Map<string, PdfValue>()
    for (;;) {
      const key = this.read(depth + 1)
      if (key === undefined) return entries
      if (key instanceof Word && key.word === '>') {
        if (this.bytes[this.at] === 0x3e) this.at++
        return entries
      }
      if (!(key instanceof Name)) continue
      const value = this.read(depth + 1)
      if (value === undefined) return entries
      entries.set(key.name, value)
    }
  }
}

function escaped(character: string): string {
  const known: Readonly<Record<string, string>> = { n: '\n', r: '\r', t: '\t', b: '\b', f: '\f' }
  return known[character] ?? character
}

export function isDictionary(value: PdfValue | undefined): value is Dictionary {
  return value instanceof Map
}
