import { bodyOf } from '@shearline/jobfile'
import { useDesk } from '../../job/desk.ts'
import { listMark } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import { clock } from '../../words/instants.ts'
import css from './clearing.module.css'

/** What is to be done after a clearing, until a scan after an ignition cycle is on record. */
export function AfterClearing() {
  const { state, facts, zone } = useDesk()
  const requests = facts.flatMap((fact) => {
    const read = fact.kind === 'clear-requested' ? bodyOf(fact, 'clear-requested') : null
    return read?.ok === true ? [{ at: fact.at, units: read.body.units }] : []
  })
  const last = requests.at(-1)
  if (last === undefined) return null
  const cleared = new Set(requests.flatMap((request) => request.units))
  const untested = state.faults.faults.filter(
    (line) =>
      cleared.has(line.unit) &&
      line.life
        .findLast((seen) => !seen.claims.includes('unit-not-read'))
        ?.claims.includes('absent-but-untested') === true,
  )
  const cycled = state.scans.some((scan) => scan.phase === 'cycled')
  return (
    <div className={css.next}>
      <p>{t('clear.next.since', { time: clock(last.at, zone), units: last.units.join(listMark()) })}</p>
      {untested.length > 0 && (
        <p>
          <strong>
            {t('clear.next.untested', { codes: untested.map((line) => line.code).join(listMark()) })}
          </strong>
        </p>
      )}
      {!cycled && (
        <>
          <h4 className={css.title}>{t('clear.next')}</h4>
          <ol>
            <li>{t('clear.next.cycle')}</li>
            <li>{t('clear.next.scan')}</li>
          </ol>
        </>
      )}
    </div>
  )
}
