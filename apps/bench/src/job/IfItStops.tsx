import { useMemo } from 'react'
import { t } from '../words/index.ts'
import { useDesk } from './desk.ts'
import { ifItStops } from './if-it-stops.ts'
import css from './job.module.css'

/** One sentence about keys and one about the way back, whatever stage the job is in. */
export function IfItStops() {
  const { state } = useDesk()
  const { keys, wayBack, note } = useMemo(() => ifItStops(state), [state])
  return (
    <section className={css.stops} aria-labelledby="stops-title">
      <h2 id="stops-title" className={css.stopsTitle}>
        {state.teaching.breakOff === null ? t('stops.title') : t('stops.title-stopped')}
      </h2>
      <p>
        {keys} <span className={css.quiet}>{wayBack}</span>
      </p>
      {note !== '' && <p className={css.small}>{note}</p>}
    </section>
  )
}
