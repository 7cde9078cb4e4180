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

  constructor(task: string, totalBytes: number | null) {
    this.#task = task
    this.#total = totalBytes
  }

  at(bytes: number): void {
    if (!process.stderr.isTTY) return
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
