/**
 * @module The kept messages of a recording, found by time, kind and words without holding them all.
 *
 * One pass over the kept lines notes for each message where its line stands, when it was and what it can be found by:
 * about 25 bytes a message. The lines themselves are read again when they are shown.
 */
import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex } from '@noble/hashes/utils.js'
import type { MessageLine } from '@shearline/bus'
import { BlobBytes } from './blob-bytes.ts'
import { Column } from './column.ts'
import { filterBits, filtersPassed } from './filters.ts'
import { messageOf } from './kept-message.ts'
import type { LogAnswer, LogQuestion } from './log-messages.ts'
import { readFile } from './read-file.ts'
import { type Strip, StripGatherer } from './strip.ts'

/** Different texts to search kept at most; beyond these a message is found by identifier and service only. */
const mostTexts = 50_000
/** Bytes between two signs of progress. */
const stride = 1 << 20
const lineEnd = 0x0a

/** The kept lines are not those the job's record names. */
export class NotTheKept extends Error {}

/** A recording's kept messages, ready to be asked. */
export class MessageLog {
  readonly strip: Strip
  readonly #bytes: BlobBytes
  readonly #index: Index

  private constructor(strip: Strip, bytes: BlobBytes, index: Index) {
    this.strip = strip
    this.#bytes = bytes
    this.#index = index
  }

  /**
   * Reads kept lines (`keptLine` of the job file) once. Throws `NotTheKept` when their SHA-256 is another one, and
   * `SyntaxError` when a line is no message.
   */
  static async read(
    blob: Blob,
    expected: string,
    progress: (bytes: number, messages: number) => void,
  ): Promise<MessageLog> {
    const hasher = sha256.create()
    const index = new Index()
    let bytes = 0
    let told = 0
    await readFile(blob, (chunk) => {
      hasher.update(chunk)
      index.push(chunk)
      bytes += chunk.length
      if (bytes - told < stride) return
      told = bytes
      progress(bytes, index.length)
    })
    if (bytesToHex(hasher.digest()) !== expected) throw new NotTheKept()
    return new MessageLog(index.strip.end(), new BlobBytes(blob), index)
  }

  /** The messages that fit a question, by their number, and how dense all messages are in its span. */
  ask({ from, to, filter, words, slices }: LogQuestion): LogAnswer {
    const { seconds, texts, bits, length } = this.#index
    const wanted = filterBits[filter]
    const fits = this.#index.textsWith(words)
    const matches = new Uint32Array(length)
    const total = new Array<number>(slices).fill(0)
    const refused = new Array<number>(slices).fill(0)
    const perSecond = slices / Math.max(to - from, Number.EPSILON)
    let count = 0
    for (let message = 0; message < length; message++) {
      const time = seconds.at(message)
      if (time < from || time > to) continue
      const passed = bits.at(message)
      const slice = Math.min(slices - 1, Math.floor((time - from) * perSecond))
      total[slice] = (total[slice] ?? 0) + 1
      if ((passed & filterBits.refused) !== 0) refused[slice] = (refused[slice] ?? 0) + 1
      if ((passed & wanted) !== 0 && fits(texts.at(message))) matches[count++] = message
    }
    return { from, to, matches: matches.slice(0, count), total, refused }
  }

  /** The lines of some messages, in the order asked for. */
  async lines(messages: readonly number[]): Promise<MessageLine[]> {
    const lines: MessageLine[] = []
    for (const message of messages) {
      const text = await this.#bytes.text(this.#index.offsets.at(message), this.#index.lengths.at(message))
      lines.push(JSON.parse(text) as MessageLine)
    }
    return lines
  }
}

/** What is noted of each message. */
class Index {
  readonly strip: StripGatherer = new StripGatherer()
  readonly seconds: Column = new Column(Float64Array)
  readonly offsets: Column = new Column(Float64Array)
  readonly lengths: Column = new Column(Uint32Array)
  readonly texts: Column = new Column(Uint32Array)
  readonly bits: Column = new Column(Uint8Array)
  readonly #known = new Map<string, number>()
  readonly #decoder = new TextDecoder()
  /** The beginning of a line whose end has not come yet. */
  #rest = new Uint8Array(0)
  #offset = 0

  get length(): number {
    return this.seconds.length
  }

  push(chunk: Uint8Array): void {
    let from = 0
    for (;;) {
      const end = chunk.indexOf(lineEnd, from)
      if (end < 0) break
      const piece = chunk.subarray(from, end)
      this.#line(this.#rest.length === 0 ? piece : joined(this.#rest, piece))
      this.#rest = new Uint8Array(0)
      from = end + 1
    }
    if (from < chunk.length) this.#rest = joined(this.#rest, chunk.subarray(from))
  }

  /** Says of a text's number whether it holds the words, looking at each different text once. */
  textsWith(words: string): (text: number) => boolean {
    const wanted = words.trim().toLowerCase()
    if (wanted === '') return () => true
    const holds = new Uint8Array(this.#known.size)
    for (const [text, number] of this.#known) if (text.includes(wanted)) holds[number] = 1
    return (text) => holds[text] === 1
  }

  #line(bytes: Uint8Array): void {
    const line = JSON.parse(this.#decoder.decode(bytes)) as MessageLine
    this.seconds.push(this.strip.message(messageOf(line)))
    this.offsets.push(this.#offset)
    this.lengths.push(bytes.length)
    this.texts.push(this.#textOf(line))
    this.bits.push(filtersPassed(line))
    this.#offset += bytes.length + 1
  }

  #textOf(line: MessageLine): number {
    const short = [line.id, line.service, line.name, line.subFunction?.name, line.nrc?.name]
    const long = [
      ...short,
      ...(line.dids ?? []).slice(0, 8).flatMap((did) => [did.did, did.name]),
      ...(line.dtcs ?? []).slice(0, 32).map((dtc) => dtc.code),
    ]
    const all = this.#known.size < mostTexts ? long : short
    const text = all
      .filter((part) => part !== undefined)
      .join('\n')
      .toLowerCase()
    const known = this.#known.get(text)
    if (known !== undefined) return known
    const number = this.#known.size
    this.#known.set(text, number)
    return number
  }
}

function joined(first: Uint8Array, second: Uint8Array): Uint8Array<ArrayBuffer> {
  const both = new Uint8Array(first.length + second.length)
  both.set(first)
  both.set(second, first.length)
  return both
}
