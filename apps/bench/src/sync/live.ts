/** @module What happens elsewhere: live updates from the server, and a regular look for lines that carry none. */
import { waitBefore } from './backoff.ts'
import { announce } from './changes.ts'
import { fetchAll, fetchFacts } from './read.ts'

/** A look of its own, for proxies that hold back live updates. Milliseconds. */
const lookEvery = 60_000
/** Several facts of one device arrive as several updates: one look is enough for them. Milliseconds. */
const gatherFor = 250

/** Listens for changes until the returned function is called; tries again for as long as the page is open. */
export function listenLive(openJob: () => string | null): () => void {
  let source: EventSource | null = null
  let tries = 0
  let timer: ReturnType<typeof setTimeout> | undefined
  let gathering: ReturnType<typeof setTimeout> | undefined
  const look = () => {
    clearTimeout(gathering)
    gathering = setTimeout(() => void catchUp(), gatherFor)
  }
  const hear = (event: MessageEvent<string>) => {
    const job = jobOf(event.data)
    announce({ what: 'jobs' })
    if (job !== null && job === openJob()) void refresh(job)
    look()
  }
  const open = () => {
    source = new EventSource('/api/events')
    source.addEventListener('message', hear)
    source.addEventListener('open', () => {
      tries = 0
      announce({ what: 'outbox' })
      announce({ what: 'jobs' })
      look()
    })
    source.addEventListener('error', () => {
      // The browser reconnects after a lost line, but gives up for good when the server answers with an error.
      if (source?.readyState !== EventSource.CLOSED) return
      timer = setTimeout(open, waitBefore(tries++, Math.random()))
    })
  }
  const lookIfSeen = () => {
    if (document.visibilityState === 'visible') look()
  }
  const regular = setInterval(lookIfSeen, lookEvery)
  document.addEventListener('visibilitychange', lookIfSeen)
  open()
  return () => {
    clearTimeout(timer)
    clearTimeout(gathering)
    clearInterval(regular)
    document.removeEventListener('visibilitychange', lookIfSeen)
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

/** Brings everything here that others recorded; a server out of reach changes nothing. */
async function catchUp(): Promise<void> {
  try {
    await fetchAll((job) => announce({ what: 'job', job }))
  } catch {
    // Out of reach: the device's own copies stand, and the next update or look tries again.
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
