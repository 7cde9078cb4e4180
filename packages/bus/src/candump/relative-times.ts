/**
 * @module Console text whose times are pauses (`candump -t d`) or count from the first frame (`-t z`).
 *
 * Both begin with `(000.000000)` and look alike; pauses go up and down, a clock only up. Which it is, is told.
 * Source of the two forms: the public `candump.c` of `can-utils` (cases `d` and `z`; the log layout is never relative).
 */

import type { CaptureReader, CaptureSink } from '../capture/contract.ts'
import type { Finding } from '../finding/index.ts'
import type { CanFrame } from '../frame/index.ts'
import { ReusedFrame } from '../frame/reused.ts'
import { OPEN_BRACKET } from './bytes.ts'
import { LineParser } from './line.ts'

/** What the times of a text are; `undefined`: times of day, or a clock that did not begin with the recording. */
type TimesKind = 'pauses' | 'since-start' | undefined

/** A clock is seldom wrong by more; of pauses, one is soon followed by another half as long. */
const FALL = 0.5

/** A reader that looks at the times in its first bytes and then goes on with the reader that `open` makes. */
export function withRelativeTimes(
  sink: CaptureSink,
  open: (sink: CaptureSink) => CaptureReader,
): CaptureReader {
  let reader: CaptureReader | undefined
  const begin = (head: Uint8Array): CaptureReader => {
    const kind = timesOf(head)
    if (kind !== undefined) sink.finding(kindFinding(kind))
    return open(kind === 'pauses' ? addingUp(sink) : sink)
  }
  return {
    push(chunk) {
      reader ??= begin(chunk)
      reader.push(chunk)
    },
    end() {
      reader ??= begin(new Uint8Array(0))
      reader.end()
    },
  }
}

function timesOf(head: Uint8Array): TimesKind {
  const seconds = consoleTimes(head)
  if (seconds[0] !== 0 || seconds.length < 2) return undefined
  let up = 0
  let down = 0
  let falls = false
  for (let index = 2; index < seconds.length; index++) {
    const before = seconds[index - 1] as number
    const now = seconds[index] as number
    if (now < before) down += before - now
    else up += now - before
    if (now < before * FALL) falls = true
  }
  // Pauses wander about; the little by which two interfaces of one clock differ does not add up.
  const wanders = seconds.length > 3 && down * 4 > up
  return falls || wanders ? 'pauses' : 'since-start'
}

/** Times of the whole lines in the first bytes, in seconds; none when the text is no console text with times. */
function consoleTimes(head: Uint8Array): number[] {
  const frame = new ReusedFrame()
  const parser = new LineParser(frame)
  const times: number[] = []
  for (let start = 0; start < head.length; ) {
    const newline = head.indexOf(0x0a, start)
    const end = newline === -1 ? head.length : newline
    const stop = end > start && head[end - 1] === 0x0d ? end - 1 : end
    if (parser.parse(head, start, stop) === undefined) {
      if (parser.timeless || !head.subarray(start, stop).includes(OPEN_BRACKET)) return []
      times.push(frame.time.seconds + frame.time.nanoseconds / 1e9)
    }
    start = end + 1
  }
  return times
}

/** A sink that adds the pauses up. It is told every frame: none may be skipped, each has its pause. */
function addingUp(sink: CaptureSink): CaptureSink {
  const time = { seconds: 0, nanoseconds: 0, decimals: 0 }
  return {
    frame(frame: CanFrame) {
      const nanoseconds = time.nanoseconds + frame.time.nanoseconds
      time.seconds += frame.time.seconds + (nanoseconds >= 1e9 ? 1 : 0)
      time.nanoseconds = nanoseconds % 1e9
      time.decimals = frame.time.decimals
      sink.frame({ ...frame, time, data: frame.data, where: frame.where })
    },
    doip: (message) => sink.doip(message),
    announcement: (announcement) => sink.announcement(announcement),
    finding: (finding) => sink.finding(finding),
  }
}

function kindFinding(kind: 'pauses' | 'since-start'): Finding {
  const isPauses = kind === 'pauses'
  return {
    code: isPauses ? 'times-are-pauses' : 'times-since-start',
    severity: 'note',
    where: { line: 1 },
    what: isPauses
      ? 'the times go up and down from 0: they are pauses between frames (candump -t d) and are added up'
      : 'the times begin with 0: they count from the first frame (candump -t z)',
    doNext: isPauses
      ? 'A line that cannot be read loses its pause. Record with candump -L or -t a for times of day.'
      : 'Record with candump -L or -t a for times of day.',
  }
}
