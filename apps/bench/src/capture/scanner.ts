/** @module The page's side of the worker that looks for codes. */
import type { FoundCode, ScanAnswer, ScanAsk } from './scan.worker.ts'

export type { FoundCode } from './scan.worker.ts'

/** Looks through one picture at a time; `close` ends the worker and what it holds in memory. */
export class Scanner {
  readonly #worker = new Worker(new URL('./scan.worker.ts', import.meta.url), { type: 'module' })
  #queue: Promise<unknown> = Promise.resolve()

  /** What codes a picture shows; the picture is used up. Rejects when the reader cannot be started. */
  look(picture: ImageBitmap, careful = false): Promise<readonly FoundCode[]> {
    const next = this.#queue.then(() => this.#ask({ picture, careful }))
    this.#queue = next.catch(() => undefined)
    return next
  }

  #ask(ask: ScanAsk): Promise<readonly FoundCode[]> {
    return new Promise((resolve, reject) => {
      const end = new AbortController()
      const listen = { signal: end.signal }
      this.#worker.addEventListener(
        'message',
        (event: MessageEvent<ScanAnswer>) => {
          end.abort()
          if (event.data.what === 'looked') resolve(event.data.found)
          else reject(new Error(event.data.why))
        },
        listen,
      )
      this.#worker.addEventListener(
        'error',
        (event) => {
          end.abort()
          reject(new Error(event.message))
        },
        listen,
      )
      this.#worker.postMessage(ask, [ask.picture])
    })
  }

  close(): void {
    this.#worker.terminate()
  }
}
