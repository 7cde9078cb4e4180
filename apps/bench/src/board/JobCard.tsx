import type { JobSummary } from '@shearline/jobfile'
import { memo } from 'react'
import { addressOf } from '../app/route.ts'
import { Thumbnail } from '../cylinder/Thumbnail.tsx'
import { chapterWord, nextWords } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { clock, day, dayKey, ownZone } from '../words/instants.ts'
import css from './board.module.css'

interface Card {
  readonly summary: JobSummary
  readonly unsent: number
}

/** One job on the board: its cylinder, where and which car, when it last moved, and the one next step. */
export const JobCard = memo(function JobCard({ summary, unsent }: Card) {
  const { job, title, place, vehicle, vinTail, zone, lastAt } = summary
  const sameDay = dayKey(lastAt, zone) === dayKey(new Date(), zone)
  const when = sameDay ? clock(lastAt, zone) : `${day(lastAt, zone)}, ${clock(lastAt, zone)}`
  return (
    <a className={css.card} href={addressOf({ page: 'job', job })}>
      <span className={css.thumb}>
        <Thumbnail summary={summary} />
        {summary.demo && <span className={css.invented}>{t('board.invented')}</span>}
      </span>
      <span className={css.cardWords}>
        <span className={css.cardTitle}>{title}</span>
        <span className={css.quiet}>
          {vehicle} {vinTail !== '' && <code className="tail">…{vinTail}</code>}
        </span>
        <span className={css.quiet}>
          {t('board.where', { place, when })}
          {zone !== ownZone() && ` (${zone.split('/').at(-1)?.replaceAll('_', ' ') ?? zone})`}
        </span>
        {unsent > 0 && <span className={css.quiet}>{t('board.unsent', { count: unsent })}</span>}
      </span>
      <span className={css.next}>
        <span className={css.nextChapter}>{chapterWord(summary.next.chapter)}</span>
        {nextWords(summary.next)}
      </span>
    </a>
  )
}, same)

/** Summaries are read anew from the store each time: only a changed one is drawn again. */
function same(before: Card, after: Card): boolean {
  return before.unsent === after.unsent && JSON.stringify(before.summary) === JSON.stringify(after.summary)
}
