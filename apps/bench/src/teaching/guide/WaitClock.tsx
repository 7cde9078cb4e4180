import { t } from '../../words/index.ts'
import { lasting, running } from '../rehearsal/lasting.ts'
import css from '../teaching.module.css'
import { useNow } from './useNow.ts'

/**
 * What is left of a waiting time. It counts from an instant on record, so closing the page or the tablet changes
 * nothing. `since` null: the waiting has not begun.
 */
export function WaitClock({
  since,
  seconds,
}: {
  readonly since: string | null
  readonly seconds: number | null
}) {
  const now = useNow()
  if (since === null) return <p>{t('wait.not-begun', { time: lasting(seconds) })}</p>
  const gone = (now - Date.parse(since)) / 1000
  if (seconds === null)
    return (
      <p className={css.clock}>
        <span role="timer">{running(gone)}</span> <span className={css.under}>{t('wait.no-figure')}</span>
      </p>
    )
  const left = seconds - gone
  return (
    <p className={css.clock} data-over={left <= 0}>
      <span role="timer">{running(Math.ceil(left))}</span>{' '}
      <span className={css.under}>
        {left > 0 ? t('wait.left', { time: lasting(seconds) }) : t('wait.over')}
      </span>
    </p>
  )
}
