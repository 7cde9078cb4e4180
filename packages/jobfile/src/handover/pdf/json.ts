/** @module Finds where JSON text ends, or the byte at which it stops being JSON (RFC 8259). */

export type JsonScan = { readonly end: number } | { readonly errorAt: number }

const numberForm = /^-?(0|[1-9]\d*)(\.\d+)?([eE][+-]?\d+)?$/
const literals = ['true', 'false', 'null']

/** Scans one JSON value that begins at `from`. Works without recursion, so that no nesting can exhaust it. */
export function scanJson(bytes: Uint8Array, from = 0): JsonScan {
  const scanner = new Scanner(bytes, from)
  return scanner.run() ? { end: scanner.at } : { errorAt: Math.min(scanner.at, bytes.length) }
}

/** What may come next: a value, a key or the end of an object, what follows a value. */
type Expectation = 'value' | 'first-value' | 'key' | 'first-key' | 'after'

class Scanner {
  readonly #bytes: Uint8Array
  readonly #open: number[] = []
  at: number

  constructor(bytes: Uint8Array, from: number) {
    this.#bytes = bytes
    this.at = from
  }

  run(): boolean {
    let expected: Expectation | null = 'value'
    while (expected !== null) {
      this.#skipBlanks()
      const next: Expectation | null = this.#step(expected)
      if (next === 'after' && this.#open.length === 0) return true
      expected = next
    }
    return false
  }

  /** Takes what is expected; null where something else stands. */
  #step(expected: Expectation): Expectation | null {
    const byte = this.#bytes[this.at]
    if (byte === undefined) return null
    const character = String.fromCharCode(byte)
    if (expected === 'after') return this.#after(character)
    if (expected === 'key' || expected === 'first-key') {
      if (character === '}' && expected === 'first-key') return this.#close()
      if (character !== '"' || !this.#string()) return null
      this.#skipBlanks()
      if (this.#bytes[this.at] !== 0x3a) return null
      this.at++
      return 'value'
    }
    if (character === ']' && expected === 'first-value') return this.#close()
    if (character === '{' || character === '[') {
      this.#open.push(byte)
      this.at++
      return character === '{' ? 'first-key' : 'first-value'
    }
    if (character === '"') return this.#string() ? 'after' : null
    return this.#plain() ? 'after' : null
  }

  #after(character: string): Expectation | null {
    const inObject = this.#open.at(-1) === 0x7b
    if (character === ',') {
      this.at++
      return inObject ? 'key' : 'value'
    }
    return character === (inObject ? '}' : ']') ? this.#close() : null
  }

  #close(): 'after' {
    this.#open.pop()
    this.at++
    return 'after'
  }

  #string(): boolean {
    for (this.at++; this.at < this.#bytes.length; this.at++) {
      const byte = this.#bytes[this.at] ?? 0
      if (byte === 0x22) {
        this.at++
        return true
      }
      if (byte < 0x20) return false
      if (byte === 0x5c && !this.#escape()) return false
    }
    return false
  }

  #escape(): boolean {
    this.at++
    const kind = String.fromCharCode(this.#bytes[this.at] ?? 0)
    if (kind !== 'u') return '"\\/bfnrt'.includes(kind)
    for (let digit = 0; digit < 4; digit++) {
      this.at++
      if (!/^[0-9a-fA-F]$/.test(String.fromCharCode(this.#bytes[this.at] ?? 0))) return false
    }
    return true
  }

  #plain(): boolean {
    const from = this.at
    let word = ''
    for (; this.at < this.#bytes.length; this.at++) {
      const character = String.fromCharCode(this.#bytes[this.at] ?? 0)
      if (!/[\w.+-]/.test(character)) break
      word += character
    }
    if (literals.includes(word) || numberForm.test(word)) return true
    this.at = from
    return false
  }

  #skipBlanks(): void {
    for (; this.at < this.#bytes.length; this.at++) {
      const byte = this.#bytes[this.at] ?? 0
      if (byte !== 0x20 && byte !== 0x09 && byte !== 0x0a && byte !== 0x0d) return
    }
  }
}
