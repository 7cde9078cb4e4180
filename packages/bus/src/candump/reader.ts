/** @module Reads candump text, fed in chunks cut anywhere, line by line. */

import type { CaptureReader, CaptureSink } from '../capture/contract.ts'
import type { ScanStore } from '../capture/scan-store.ts'
import type { Severity } from '../finding/index.ts'
import { ReusedFrame } from '../frame/reused.ts'
import { AlikeLines } from './alike-lines.ts'
import { explain, type LineFault } from './faults.ts'
import { LineParser } from './line.ts'

/** Longer lines are reported and skipped: the longest frame candump writes (CAN FD, with date) has about 200 bytes. */
const MAX_LINE_BYTES = 4096

const NEWLINE = 0x0a
const RETURN = 0x0d

/** Opens a reader of candump text. Findings carry the line number, counted from 1, never the line's bytes. */
export function openCandump(sink: CaptureSink, store: ScanStore): CaptureReader {
  return new CandumpReader(sink, store)
}

class CandumpReader implements CaptureReader {
  readonly #sink: CaptureSink
  readonly #store: ScanStore
  readonly #frame: ReusedFrame = new ReusedFrame()
  readonly #parser: LineParser = new LineParser(this.#frame)
  /** The beginning of a line whose end has not come yet. */
  readonly #carry: Uint8Array = new Uint8Array(MAX_LINE_BYTES)
  readonly #carryView: DataView = new DataView(this.#carry.buffer)
  readonly #alike: AlikeLines
  readonly #skips: boolean
  #carried = 0
  #overlong = false
  #line = 1
  #saidTimeless = false

  constructor(sink: CaptureSink, store: ScanStore) {
    this.#sink = sink
    this.#store = store
    this.#alike = new AlikeLines(sink, store)
    this.#skips = this.#alike.isWanted
  }

  push(chunk: Uint8Array): void {
    if (this.#skips) for (const piece of this.#store.pieces(chunk)) this.#push(piece)
    else this.#push(chunk)
  }

  #push(chunk: Uint8Array): void {
    const view = new DataView(chunk.buffer, chunk.byteOffset, chunk.byteLength)
    let start = 0
    while (start < chunk.length) {
      if (this.#skips && this.#carried === 0 && !this.#overlong) {
        this.#alike.line = this.#line
        start = this.#alike.read(chunk, view, start)
        this.#line = this.#alike.line
        if (start === chunk.length) break
      }
      const newline = chunk.indexOf(NEWLINE, start)
      const end = newline === -1 ? chunk.length : newline
      if (newline !== -1 && this.#carried === 0 && !this.#overlong && end - start <= MAX_LINE_BYTES) {
        this.#read(chunk, view, start, end, false)
      } else {
        this.#keep(chunk, start, end)
        if (newline !== -1) this.#finish(false)
      }
      if (newline !== -1) this.#line++
      start = end + 1
    }
    this.#alike.tell()
  }

  end(): void {
    if (this.#carried > 0 || this.#overlong) this.#finish(true)
  }

  #keep(chunk: Uint8Array, start: number, end: number): void {
    if (this.#overlong) return
    if (this.#carried + end - start > MAX_LINE_BYTES) {
      this.#overlong = true
      return
    }
    this.#carry.set(chunk.subarray(start, end), this.#carried)
    this.#carried += end - start
  }

  #finish(last: boolean): void {
    if (this.#overlong) {
      this.#tell('line-too-long', 'error', `the line is longer than ${MAX_LINE_BYTES} bytes`)
    } else {
      this.#read(this.#carry, this.#carryView, 0, this.#carried, last)
    }
    this.#overlong = false
    this.#carried = 0
  }

  #read(bytes: Uint8Array, view: DataView, start: number, end: number, last: boolean): void {
    const stop = end > start && bytes[end - 1] === RETURN ? end - 1 : end
    const fault = this.#parser.parse(bytes, start, stop)
    if (fault !== undefined) {
      this.#report(fault, last)
      return
    }
    this.#frame.where.line = this.#line
    if (this.#parser.timeless && !this.#saidTimeless) {
      this.#saidTimeless = true
      this.#tell(
        'no-time-stamps',
        'warning',
        'the text has no time stamps',
        'Record with candump -L or -t a.',
      )
    }
    if (!this.#skips) {
      this.#sink.frame(this.#frame)
      return
    }
    this.#alike.tell()
    this.#sink.frame(this.#frame)
    this.#alike.learn(this.#frame, bytes, view, start, stop < end)
  }

  #report(fault: LineFault, last: boolean): void {
    const harmless = fault === 'empty' || fault === 'comment'
    const cut = last && fault !== 'comment' ? ' (the last line, without a line end)' : ''
    this.#tell('bad-line', harmless ? 'note' : 'error', `${explain(fault)}${cut}`, undefined, fault)
  }

  #tell(code: string, severity: Severity, what: string, doNext?: string, reason?: string): void {
    this.#sink.finding({
      code,
      severity,
      where: { line: this.#line },
      what,
      doNext:
        doNext ??
        (severity === 'note' ? 'Nothing.' : 'Look at this line in the recording; the others were read.'),
      ...(reason === undefined ? {} : { params: { reason } }),
    })
  }
}
