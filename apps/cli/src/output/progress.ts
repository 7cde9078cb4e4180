import { fstatSync } from 'node:fs'
import { say } from './answer.ts'

/** Milliseconds between two lines of progress, so that a log stays readable. */
const everyMilliseconds = 500

/**
 * Progress of a long task on standard error, only when it is a terminal: `decode 12.5 of 40.0 MB, 31 %`.
 * Call `at` often; it draws at most twice a second. `done` wipes the line.
 */
export class Progress {
  readonly #task: string
  readonly #total: number | null
  #drawn = 0

  readonly #shown = isTerminal()

  constructor(task: string, totalBytes: number | null) {
    this.#task = task
    this.#total = totalBytes
  }

  at(bytes: number): void {
    if (!this.#shown) return
    const now = Date.now()
    if (now - this.#drawn < everyMilliseconds) return
    this.#drawn = now
    const megabytes = (count: number) => (count / 1e6).toFixed(1)
    const share =
      this.#total === null || this.#total === 0
        ? ''
        : ` of ${megabytes(this.#total)} MB, ${Math.floor((100 * bytes) / this.#total)} %`
    process.stderr.write(`\r\u001b[K${this.#task} ${megabytes(bytes)}${share === '' ? ' MB' : share}`)
  }

  done(): void {
    if (this.#drawn > 0) process.stderr.write('\r\u001b[K')
  }

  /** Says a lasting line without mixing it with the progress line. */
  say(line: string): void {
    this.done()
    say(line)
  }
}

/** Whether standard error is a terminal. Asked of the file first: the stream behind it takes its time to load. */
function isTerminal(): boolean {
  try {
    return fstatSync(2).isCharacterDevice() && process.stderr.isTTY
  } catch {
    return false
  }
}
