/** @module The server's live updates: says which job changed somewhere else. */
import { announce } from './changes.ts'
import { fetchFacts } from './read.ts'

/** Listens for changes until the returned function is called. The browser reconnects by itself. */
export function listenLive(openJob: () => string | null): () => void {
  const source = new EventSource('/api/events')
  const hear = (event: MessageEvent<string>) => {
    const job = jobOf(event.data)
    announce({ what: 'jobs' })
    if (job !== null && job === openJob()) void refresh(job)
  }
  source.addEventListener('message', hear)
  source.addEventListener('job', hear)
  source.addEventListener('open', () => {
    announce({ what: 'outbox' })
    announce({ what: 'jobs' })
  })
  return () => source.close()
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
