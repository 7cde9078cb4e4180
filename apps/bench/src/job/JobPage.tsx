import { addressOf } from '../app/route.ts'
import { t } from '../words/index.ts'
import { JobDesk } from './JobDesk.tsx'
import css from './job.module.css'
import { useJob } from './useJob.ts'

/** One job, from this device's own record at once and from the server when it can be reached. */
export default function JobPage({ job }: { readonly job: string }) {
  const { open, asked } = useJob(job)
  if (open === null || (open.facts.length === 0 && !asked))
    return <p className={css.note}>{t('job.reading')}</p>
  if (open.facts.length === 0) {
    return (
      <div className={css.note}>
        <h1>{t('job.unknown')}</h1>
        <p>{t('job.unknown.what', { job })}</p>
        <a href={addressOf({ page: 'board' })}>{t('job.to-board')}</a>
      </div>
    )
  }
  return <JobDesk job={job} open={open} />
}
