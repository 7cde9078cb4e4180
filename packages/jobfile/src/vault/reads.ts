/** @module Two separate reads of the same memory, held against each other before a backup counts as proven. */
import type { Finding } from '@shearline/bus'
import { SecretDigest } from './digest.ts'
import { type ByteSource, piecesOf } from './streams.ts'

export type ReadFindingCode =
  | 'read-empty'
  | 'read-too-small'
  | 'read-one-value'
  | 'read-mostly-blank'
  | 'reads-differ-in-size'
  | 'reads-differ'

/** One read as it was found; nothing in here tells its content. */
export interface ReadTaken {
  readonly bytes: number
  /** Keyed digest; the key must be the one that goes into the sealed file. */
  readonly digest: string
}

export interface ReadComparison {
  /** True when both reads are equal and may be what they are meant to be. */
  readonly proven: boolean
  readonly first: ReadTaken
  readonly second: ReadTaken
  readonly findings: readonly Finding<ReadFindingCode>[]
}

/** Smaller reads are told. Common practice, no source: the smallest memories in use hold 128 bytes. */
export const readLeastBytes = 128
/** Share of 00 and FF bytes above which a read is told. Common practice, no source. */
const mostlyBlank = 0.95

/**
 * Compares two reads piece by piece under one key of 32 random bytes, and looks whether they can be true: not empty,
 * not one value throughout, not tiny, not nearly all 00 or FF. Never whole in memory.
 */
export async function compareReads(
  first: ByteSource,
  second: ByteSource,
  key: Uint8Array,
): Promise<ReadComparison> {
  const a = new Tally(key)
  const b = new Tally(key)
  let differsAt: number | null = null
  const left = new Cursor(piecesOf(first()))
  const right = new Cursor(piecesOf(second()))
  for (;;) {
    await left.fill()
    await right.fill()
    const length = Math.min(left.piece.length, right.piece.length)
    if (length === 0) break
    const at = a.digest.bytes
    const one = left.take(length)
    const other = right.take(length)
    a.take(one)
    b.take(other)
    if (differsAt !== null) continue
    const place = one.findIndex((byte, index) => byte !== other[index])
    if (place >= 0) differsAt = at + place
  }
  for (const [cursor, tally] of [
    [left, a],
    [right, b],
  ] as const)
    for (; cursor.piece.length > 0; await cursor.fill()) tally.take(cursor.take(cursor.piece.length))

  const findings = [...a.findings('first read'), ...b.findings('second read')]
  if (a.digest.bytes !== b.digest.bytes)
    findings.push({
      code: 'reads-differ-in-size',
      severity: 'error',
      where: { part: 'second read' },
      what: `The first read has ${a.digest.bytes} bytes, the second ${b.digest.bytes}.`,
      doNext: 'Read both again with the same settings.',
    })
  else if (differsAt !== null)
    findings.push({
      code: 'reads-differ',
      severity: 'error',
      where: { part: 'second read', byteOffset: differsAt },
      what: `The reads differ from byte ${differsAt} on.`,
      doNext: 'Check contact and supply, then read twice again. Do not write anything yet.',
    })
  const proven = !findings.some(({ severity }) => severity === 'error')
  return { proven, first: a.taken(), second: b.taken(), findings }
}

/** Pieces of a stream, cut where they are wanted. */
class Cursor {
  piece: Uint8Array = new Uint8Array(0)
  readonly #pieces: AsyncGenerator<Uint8Array>

  constructor(pieces: AsyncGenerator<Uint8Array>) {
    this.#pieces = pieces
  }

  /** Has a piece when one is left. */
  async fill(): Promise<void> {
    if (this.piece.length > 0) return
    const { value, done } = await this.#pieces.next()
    if (done !== true) this.piece = value
  }

  take(length: number): Uint8Array {
    const taken = this.piece.subarray(0, length)
    this.piece = this.piece.subarray(length)
    return taken
  }
}

/** Counts what makes a read implausible. */
class Tally {
  readonly digest: SecretDigest
  #firstByte = -1
  #oneValue = true
  #blank = 0

  constructor(key: Uint8Array) {
    this.digest = new SecretDigest(key)
  }

  take(piece: Uint8Array): void {
    this.digest.update(piece)
    if (this.#firstByte < 0) this.#firstByte = piece[0] ?? -1
    for (const byte of piece) {
      if (byte !== this.#firstByte) this.#oneValue = false
      if (byte === 0x00 || byte === 0xff) this.#blank++
    }
  }

  taken(): ReadTaken {
    return { bytes: this.digest.bytes, digest: this.digest.end() }
  }

  findings(part: string): Finding<ReadFindingCode>[] {
    const say = (
      code: ReadFindingCode,
      severity: Finding['severity'],
      what: string,
      doNext: string,
    ): Finding<ReadFindingCode>[] => [{ code, severity, where: { part }, what, doNext }]
    const bytes = this.digest.bytes
    if (bytes === 0) return say('read-empty', 'error', 'The file is empty.', 'Read again.')
    if (this.#oneValue) {
      const value = this.#firstByte === 0 ? '00' : this.#firstByte === 0xff ? 'FF' : 'the same'
      const what = `All ${bytes} bytes are ${value}: the memory was not read.`
      return say('read-one-value', 'error', what, 'Check contact, supply and the chosen memory; read again.')
    }
    if (bytes < readLeastBytes)
      return say(
        'read-too-small',
        'warning',
        `It has only ${bytes} bytes.`,
        'Make sure that this is the whole memory.',
      )
    if (this.#blank >= bytes * mostlyBlank) {
      const percent = Math.floor((100 * this.#blank) / bytes)
      const what = `${percent} % of its bytes are 00 or FF.`
      return say('read-mostly-blank', 'warning', what, 'Make sure that the right memory was read.')
    }
    return []
  }
}
