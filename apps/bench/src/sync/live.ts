/** @module The server's live updates: says which job changed somewhere else. */
import { waitBefore } from './backoff.ts'
import { announce } from './changes.ts'
import { fetchFacts } from './read.ts'

/** Listens for changes until the returned function is called; tries again for as long as the page is open. */
export function listenLive(openJob: () => string | null): () => void {
  let source: EventSource | null = null
  let tries = 0
  let timer: ReturnType<typeof setTimeout> | undefined
  const hear = (event: MessageEvent<string>) => {
    const job = jobOf(event.data)
    announce({ what: 'jobs' })
    if (job !== null && job === openJob()) void refresh(job)
  }
  const open = () => {
    source = new EventSource('/api/events')
    source.addEventListener('message', hear)
    source.addEventListener('open', () => {
      tries = 0
      announce({ what: 'outbox' })
      announce({ what: 'jobs' })
      const job = openJob()
      if (job !== null) void refresh(job)
    })
    source.addEventListener('error', () => {
      // The browser reconnects after a lost line, but gives up for good when the server answers with an error.
      if (source?.readyState !== EventSource.CLOSED) return
      timer = setTimeout(open, waitBefore(tries++, Math.random()))
    })
  }
  open()
  return () => {
    clearTimeout(timer)
    source?.close()
  }
}

function jobOf(data: string): string | null {
  try {
    const value: unknown = JSON.parse(data)
    return typeof value === 'object' && value !== null && 'job' in value ? String(value.job) : null
  } catch {
    return null
  }
}

/** Brings the server's facts of a job here; a server out of reach changes nothing. */
export async function refresh(job: string): Promise<void> {
  try {
    if (await fetchFacts(job)) announce({ what: 'job', job })
  } catch {
    // Out of reach: the device's own copy stands, and live updates or the next visit try again.
  }
}
