/** @module Looks through every job kept here for what is due for deletion, away from the page. */
import { type Due, dueInJob, type JobSummary, type RetentionPack } from '@shearline/jobfile'
import { database } from '../sync/database.ts'

/** One thing due, with the job's name. */
export interface DueLine {
  readonly title: string
  readonly zone: string
  readonly due: Due
}

export type DueAnswer =
  | { readonly what: 'looked'; readonly jobs: number }
  | { readonly what: 'done'; readonly lines: readonly DueLine[] }
  | { readonly what: 'failed'; readonly why: string }

addEventListener('message', (event: MessageEvent<{ now: number; pack: RetentionPack }>) => {
  look(event.data.now, event.data.pack).catch((error: unknown) =>
    postMessage({ what: 'failed', why: error instanceof Error ? error.message : String(error) }),
  )
})

async function look(now: number, pack: RetentionPack): Promise<void> {
  const db = await database()
  const lines: DueLine[] = []
  const summaries: readonly JobSummary[] = await db.getAll('summaries')
  let jobs = 0
  for (const { job, title, zone } of summaries) {
    const facts = await db.getAllFromIndex('facts', 'job', job)
    for (const due of dueInJob(job, facts, now, pack)) lines.push({ title, zone, due })
    postMessage({ what: 'looked', jobs: ++jobs } satisfies DueAnswer)
  }
  lines.sort((a, b) => a.due.until - b.due.until)
  postMessage({ what: 'done', lines } satisfies DueAnswer)
}
