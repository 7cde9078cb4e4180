import type { Answer, Ask, Decoded, Looked, Progress } from './worker-messages.ts'

/** Work under way in a worker of its own; `cancel` ends it at once. */
export interface Work<T> {
  readonly done: Promise<T>
  readonly cancel: () => void
}

/** The person cancelled. */
export class Cancelled extends Error {}

function start<T>(
  ask: Ask,
  read: (answer: Answer) => T | undefined,
  onProgress?: (progress: Progress) => void,
): Work<T> {
  const worker = new Worker(new URL('./recording.worker.ts', import.meta.url), { type: 'module' })
  let cancel: () => void = () => undefined
  const done = new Promise<T>((resolve, reject) => {
    cancel = () => reject(new Cancelled())
    worker.addEventListener('message', (event: MessageEvent<Answer>) => {
      const answer = event.data
      if (answer.what === 'progress') onProgress?.(answer)
      if (answer.what === 'failed') reject(new Error(answer.why))
      const value = read(answer)
      if (value !== undefined) resolve(value)
    })
    worker.addEventListener('error', (event) => reject(new Error(event.message)))
    worker.postMessage(ask)
  }).finally(() => worker.terminate())
  return { done, cancel: () => cancel() }
}

/** Decodes a recording in a worker; `columns` are a person's own for a table. */
export function decodeFile(
  file: File,
  columns: Readonly<Record<string, string>> | null,
  onProgress: (progress: Progress) => void,
): Work<Decoded> {
  return start(
    { what: 'decode', file, columns },
    (answer) => (answer.what === 'decoded' ? answer.decoded : undefined),
    onProgress,
  )
}

/** Tells the format of a file by its first bytes, and the columns of a table. */
export function lookAt(file: File): Work<Looked> {
  return start({ what: 'look', file }, (answer) => (answer.what === 'looked' ? answer.looked : undefined))
}

/** Hashes a file in a worker; the file leaves neither the device nor the page's memory. */
export function hashFile(file: File): Work<string> {
  return start({ what: 'hash', file }, (answer) => (answer.what === 'hashed' ? answer.sha256 : undefined))
}
