/** @module Opens a recording's kept messages in a worker and asks it. */
import type { MessageLine } from '@shearline/bus'
import type { LogAnswer, LogAsk, LogQuestion, LogReply } from './log-messages.ts'
import type { Strip } from './strip.ts'

/** The kept messages cannot be shown: they are others than the record names, or cannot be read. */
export class LogFailed extends Error {
  readonly why: 'other-bytes' | 'unreadable'
  constructor(why: 'other-bytes' | 'unreadable', words: string) {
    super(words)
    this.why = why
  }
}

/** A recording's messages, held by a worker of its own until `close`. */
export interface OpenLog {
  readonly strip: Strip
  readonly ask: (question: LogQuestion) => Promise<LogAnswer>
  /** Brings the lines of messages here. */
  readonly lines: (messages: readonly number[]) => Promise<readonly MessageLine[]>
  /** A line that was brought before: what stands in the list is there at once when it is opened. */
  readonly known: (message: number) => MessageLine | undefined
}

/** Lines kept on the page; beyond these the ones brought first are let go. */
const mostKnown = 2000

/** A log being opened; `close` ends the worker at once, opened or not. */
export interface Opening {
  readonly log: Promise<OpenLog>
  readonly close: () => void
}

/** Opens kept messages that the record knows by `sha256`. */
export function openLog(
  blob: Blob,
  sha256: string,
  onProgress: (bytes: number, messages: number) => void = () => undefined,
): Opening {
  const worker = new Worker(new URL('./log.worker.ts', import.meta.url), { type: 'module' })
  const answers = new Map<number, (answer: LogAnswer) => void>()
  const lines = new Map<number, (lines: readonly MessageLine[]) => void>()
  const known = new Map<number, MessageLine>()
  let ticket = 0
  const say = (message: LogAsk) => worker.postMessage(message)
  const log = new Promise<OpenLog>((resolve, reject) => {
    worker.addEventListener('error', (event) => reject(new LogFailed('unreadable', event.message)))
    worker.addEventListener('message', ({ data }: MessageEvent<LogReply>) => {
      if (data.what === 'progress') onProgress(data.bytes, data.messages)
      else if (data.what === 'failed') reject(new LogFailed(data.why, data.words))
      else if (data.what === 'answer') taken(answers, data.ticket)?.(data.answer)
      else if (data.what === 'lines') taken(lines, data.ticket)?.(data.lines)
      else
        resolve({
          strip: data.strip,
          ask: (question) =>
            new Promise((settle) => {
              answers.set(++ticket, settle)
              say({ what: 'question', ticket, question })
            }),
          lines: (messages) =>
            new Promise((settle) => {
              lines.set(++ticket, (came) => {
                keep(known, messages, came)
                settle(came)
              })
              say({ what: 'lines', ticket, messages })
            }),
          known: (message) => known.get(message),
        })
    })
    say({ what: 'open', blob, sha256 })
  })
  return { log, close: () => worker.terminate() }
}

function keep(
  known: Map<number, MessageLine>,
  messages: readonly number[],
  came: readonly MessageLine[],
): void {
  came.forEach((line, index) => {
    const message = messages[index]
    if (message !== undefined) known.set(message, line)
  })
  for (const first of known.keys()) {
    if (known.size <= mostKnown) return
    known.delete(first)
  }
}

function taken<V>(waiting: Map<number, V>, ticket: number): V | undefined {
  const value = waiting.get(ticket)
  waiting.delete(ticket)
  return value
}
