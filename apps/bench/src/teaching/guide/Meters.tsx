import { useDesk } from '../../job/desk.ts'
import { volts } from '../../words/amounts.ts'
import { t } from '../../words/index.ts'
import { running } from '../rehearsal/lasting.ts'
import css from '../teaching.module.css'
import { useNow } from './useNow.ts'

/** Time in the session, the last supply reading against its floor, and what the car counts. */
export function Meters() {
  const { supply, teaching } = useDesk().state
  const now = useNow()
  const reading = supply.readings.findLast((each) => each.during === 'session')
  const floor = supply.setting?.floorVolts
  const since = (at: string) => (now - Date.parse(at)) / 1000
  return (
    <dl className={css.meters}>
      <div>
        <dt>{t('meter.time')}</dt>
        <dd>
          <span role="timer">{teaching.openedAt === null ? '-' : running(since(teaching.openedAt))}</span>
        </dd>
      </div>
      <div data-low={reading !== undefined && floor !== undefined && reading.volts < floor}>
        <dt>{t('meter.supply')}</dt>
        <dd>
          {reading === undefined ? t('meter.none') : volts(reading.volts)}
          {reading !== undefined && (
            <span className={css.under}>
              {floor === undefined
                ? t('meter.no-floor')
                : t(reading.volts < floor ? 'meter.below' : 'meter.above', { floor: volts(floor) })}
              {' · '}
              {t('meter.ago', { time: running(since(reading.at)) })}
            </span>
          )}
        </dd>
      </div>
      <div>
        <dt>{t('meter.count')}</dt>
        <dd>{teaching.carCount ?? t('meter.none')}</dd>
      </div>
    </dl>
  )
}
