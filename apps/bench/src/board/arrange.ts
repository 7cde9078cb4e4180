/** @module Which jobs stand where on the board. */
import type { JobSummary } from '@shearline/jobfile'
import { dayKey } from '../words/instants.ts'

/** The jobs that moved on a day (in their own zone's calendar), open ones first, and the earlier ones, latest first. */
export function arrange(
  jobs: readonly JobSummary[],
  today: string,
): { readonly day: readonly JobSummary[]; readonly earlier: readonly JobSummary[] } {
  const day: JobSummary[] = []
  const earlier: JobSummary[] = []
  for (const job of jobs) (dayKey(job.lastAt, job.zone) === today ? day : earlier).push(job)
  return { day: day.sort(openFirst), earlier: earlier.sort(openFirst) }
}

function openFirst(a: JobSummary, b: JobSummary): number {
  return Number(a.inLine) - Number(b.inLine) || (a.lastAt < b.lastAt ? 1 : a.lastAt > b.lastAt ? -1 : 0)
}

/** Jobs that hold every one of some words in title, place, car or the last characters of the VIN, whatever the case. */
export function matching(jobs: readonly JobSummary[], words: string): readonly JobSummary[] {
  const parts = words
    .toLocaleLowerCase()
    .split(/\s+/)
    .filter((part) => part !== '')
  return jobs.filter(({ title, place, vehicle, vinTail }) => {
    const text = `${title} ${place} ${vehicle} ${vinTail}`.toLocaleLowerCase()
    return parts.every((part) => text.includes(part))
  })
}
