import { t } from '../words/index.ts'
import { clock, day, dayKey } from '../words/instants.ts'
import { useDesk } from './desk.ts'
import css from './job.module.css'

/** Which job this is: title, car, place, when it began in its own zone. */
export function JobHead() {
  const { state, zone, job } = useDesk()
  const { opened, openedAt, vin } = state
  const today = openedAt !== null && dayKey(openedAt, zone) === dayKey(new Date(), zone)
  return (
    <header className={css.head}>
      <div className={css.titleRow}>
        <h1 className={css.title}>{opened?.title ?? job}</h1>
        {opened?.demo && <span className={css.invented}>{t('board.invented')}</span>}
      </div>
      {opened !== null && (
        <p className={css.quiet}>
          {opened.vehicle}
          {vin !== null && (
            <>
              {' '}
              <code className="tail">…{vin.slice(-6)}</code>
            </>
          )}{' '}
          · {opened.place}
          {openedAt !== null &&
            ` · ${t('job.since', { when: today ? clock(openedAt, zone) : `${day(openedAt, zone)}, ${clock(openedAt, zone)}` })}`}
        </p>
      )}
    </header>
  )
}
