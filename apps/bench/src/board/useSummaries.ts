import type { JobSummary } from '@shearline/jobfile'
import { startTransition, useEffect, useState } from 'react'
import { onChange } from '../sync/changes.ts'
import { fetchSummaries, keptSummaries } from '../sync/read.ts'

/** Jobs as this device knows them, refreshed from the server when it can be reached; null until first read. */
export function useSummaries(): readonly JobSummary[] | null {
  const [jobs, setJobs] = useState<readonly JobSummary[] | null>(null)
  useEffect(() => {
    let live = true
    const read = async () => {
      const kept = await keptSummaries()
      if (live) startTransition(() => setJobs(kept))
    }
    const refresh = async () => {
      await read()
      // Out of reach: the board stays as this device knows it, and the header says what is not sent.
      await fetchSummaries().then(read, () => undefined)
    }
    void refresh()
    const stop = onChange((change) => {
      if (change.what === 'jobs') void refresh()
    })
    return () => {
      live = false
      stop()
    }
  }, [])
  return jobs
}
