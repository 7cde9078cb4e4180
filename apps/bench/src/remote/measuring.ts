import type { Answer, Ask, Measured } from './messages.ts'

/** What came of a recording: its measurement, or the question how it was made. */
export type Outcome =
  | { readonly what: 'measured'; readonly measured: Measured }
  | Extract<Answer, { what: 'incomplete' }>

/**
 * Measures a recording in a worker of its own. `stop` ends it at once, and with it everything that was read;
 * `done` then never settles.
 */
export function startMeasuring(
  ask: Ask,
  onProgress: (bytes: number) => void,
): { readonly done: Promise<Outcome>; readonly stop: () => void } {
  const worker = new Worker(new URL('./remote.worker.ts', import.meta.url), { type: 'module' })
  const done = new Promise<Outcome>((resolve, reject) => {
    worker.addEventListener('message', ({ data }: MessageEvent<Answer>) => {
      if (data.what === 'progress') return onProgress(data.bytes)
      if (data.what === 'failed') reject(new Error(data.why))
      else resolve(data)
      worker.terminate()
    })
    worker.addEventListener('error', (event) => {
      reject(new Error(event.message))
      worker.terminate()
    })
    worker.postMessage(ask)
  })
  return { done, stop: () => worker.terminate() }
}
