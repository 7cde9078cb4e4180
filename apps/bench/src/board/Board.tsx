import type { JobSummary } from '@shearline/jobfile'
import { useDeferredValue, useMemo, useState } from 'react'
import { addressOf } from '../app/route.ts'
import { Words } from '../form/Words.tsx'
import { FindFromBoard } from '../keys/FindFromBoard.tsx'
import { t } from '../words/index.ts'
import { day, dayKey, ownZone } from '../words/instants.ts'
import { arrange, matching } from './arrange.ts'
import css from './board.module.css'
import { Cards } from './Cards.tsx'
import { useSummaries } from './useSummaries.ts'
import { useUnsent } from './useUnsent.ts'

/** With fewer jobs than this nobody needs to search. */
const worthSearching = 12

/** The day's jobs, each as its cylinder and its one next step; earlier days below. */
export function Board() {
  const jobs = useSummaries()
  const unsent = useUnsent()
  const [sought, setSought] = useState('')
  const words = useDeferredValue(sought)
  const now = new Date()
  const today = dayKey(now, ownZone())
  const { day: ofDay, earlier } = useMemo(() => arrange(jobs ?? [], today), [jobs, today])
  const ready = ofDay.filter((job) => job.inLine).length
  return (
    <div className={css.board}>
      <div className={css.top}>
        <div>
          <h1 className={css.title}>{day(now.toISOString(), ownZone())}</h1>
          {jobs !== null && jobs.length > 0 && (
            <p className={css.quiet}>{t('board.day', { open: ofDay.length - ready, ready })}</p>
          )}
        </div>
        <div className={css.ways}>
          {jobs !== null && jobs.length > 0 && <FindFromBoard className={css.way} />}
          <a className={css.way} href={addressOf({ page: 'rules' })}>
            {t('rules.link')}
          </a>
          <a className={css.way} href={addressOf({ page: 'keeping' })}>
            {t('keeping.link')}
          </a>
          <a className={css.way} href={addressOf({ page: 'practice', exercise: null })}>
            {t('practice.link')}
          </a>
          <a className={css.newJob} href={addressOf({ page: 'new' })}>
            {t('board.new')}
          </a>
        </div>
      </div>
      {jobs !== null && jobs.length >= worthSearching && (
        <search className={css.search}>
          <Words
            label={t('board.find')}
            hint={t('board.find.hint')}
            value={sought}
            onChange={setSought}
            optional
          />
        </search>
      )}
      {jobs?.length === 0 && <Empty />}
      {words.trim() === '' ? (
        <>
          <Cards jobs={ofDay} unsent={unsent} />
          {earlier.length > 0 && (
            <section className={css.earlier} aria-labelledby="earlier">
              <h2 id="earlier" className={css.subtitle}>
                {t('board.earlier')}
              </h2>
              <Cards jobs={earlier} unsent={unsent} />
            </section>
          )}
        </>
      ) : (
        <Found jobs={[...ofDay, ...earlier]} words={words} unsent={unsent} />
      )}
    </div>
  )
}

function Found({
  jobs,
  words,
  unsent,
}: {
  readonly jobs: readonly JobSummary[]
  readonly words: string
  readonly unsent: ReadonlyMap<string, number>
}) {
  const found = matching(jobs, words)
  return (
    <section className={css.earlier} aria-labelledby="found">
      <h2 id="found" className={css.subtitle} role="status">
        {t('board.found', { count: found.length })}
      </h2>
      <Cards key={words} jobs={found} unsent={unsent} />
    </section>
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
