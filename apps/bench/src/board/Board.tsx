import type { JobSummary } from '@shearline/jobfile'
import { addressOf } from '../app/route.ts'
import { t } from '../words/index.ts'
import { day, dayKey, ownZone } from '../words/instants.ts'
import css from './board.module.css'
import { JobCard } from './JobCard.tsx'
import { useSummaries } from './useSummaries.ts'
import { useUnsent } from './useUnsent.ts'

/** The day's jobs, each as its cylinder and its one next step; earlier days below. */
export function Board() {
  const jobs = useSummaries()
  const unsent = useUnsent()
  const now = new Date()
  const today = jobs?.filter((job) => dayKey(job.lastAt, job.zone) === dayKey(now, job.zone)) ?? []
  const earlier = jobs?.filter((job) => !today.includes(job)) ?? []
  const ready = today.filter((job) => job.inLine).length
  return (
    <div className={css.board}>
      <div className={css.top}>
        <div>
          <h1 className={css.title}>{day(now.toISOString(), ownZone())}</h1>
          {jobs !== null && jobs.length > 0 && (
            <p className={css.quiet}>{t('board.day', { open: today.length - ready, ready })}</p>
          )}
        </div>
        <a className={css.newJob} href={addressOf({ page: 'new' })}>
          {t('board.new')}
        </a>
      </div>
      {jobs?.length === 0 && <Empty />}
      <Cards jobs={today} unsent={unsent} />
      {earlier.length > 0 && (
        <section className={css.earlier} aria-labelledby="earlier">
          <h2 id="earlier" className={css.subtitle}>
            {t('board.earlier')}
          </h2>
          <Cards jobs={earlier} unsent={unsent} />
        </section>
      )}
    </div>
  )
}

function Cards({
  jobs,
  unsent,
}: {
  readonly jobs: readonly JobSummary[]
  readonly unsent: ReadonlyMap<string, number>
}) {
  if (jobs.length === 0) return null
  const sorted = [...jobs].sort(
    (a, b) => Number(a.inLine) - Number(b.inLine) || (a.lastAt < b.lastAt ? 1 : a.lastAt > b.lastAt ? -1 : 0),
  )
  return (
    <ul className={css.cards}>
      {sorted.map((job) => (
        <li key={job.job}>
          <JobCard summary={job} unsent={unsent.get(job.job) ?? 0} />
        </li>
      ))}
    </ul>
  )
}

function Empty() {
  return (
    <section className={css.empty}>
      <h2 className={css.subtitle}>{t('board.empty.title')}</h2>
      <p>{t('board.empty.what')}</p>
      <ol className={css.steps}>
        <li>{t('board.empty.call')}</li>
        <li>{t('board.empty.arrive')}</li>
        <li>{t('board.empty.seal')}</li>
      </ol>
    </section>
  )
}
