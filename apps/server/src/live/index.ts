/** @module Server-sent events: which job got facts. */
import type { Store } from '@shearline/store'
import type { Context } from 'hono'
import { type SSEStreamingApi, streamSSE } from 'hono/streaming'

/** Milliseconds between signs of life; shorter than what proxies and sleeping tablets take for a dead line. */
const signOfLifeMilliseconds = 20_000

/** Sends `{ job }` whenever facts of a job arrive, here or by another process, until the reader goes away. */
export function liveJobs(c: Context, store: Store): Response {
  return streamSSE(c, async (stream) => {
    const end = store.onJobs((jobs) => {
      for (const job of jobs) void stream.writeSSE({ data: JSON.stringify({ job }) })
    })
    const life = setInterval(() => void stream.write(': here\n\n'), signOfLifeMilliseconds)
    try {
      // Headers reach the browser with the first bytes: it then knows that it is connected.
      await stream.write(': here\n\n')
      await gone(stream)
    } finally {
      clearInterval(life)
      end()
    }
  })
}

function gone(stream: SSEStreamingApi): Promise<void> {
  return new Promise((resolve) => {
    stream.onAbort(resolve)
    if (stream.aborted) resolve()
  })
}
