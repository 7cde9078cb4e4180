import type { PowerAnswer } from '@shearline/keywork'
import { number, volts } from '../words/amounts.ts'
import { t } from '../words/index.ts'
import { findingWords, verdictWords } from './finding-words.ts'
import css from './power.module.css'

/** A shape for each verdict, so that colour is never alone: a bar that holds, a plug, a barred square. */
const shapes = {
  go: 'M3 9H21M3 15H21',
  'connect-supply': 'M9 3V9M15 3V9M6 9H18V13A6 6 0 0 1 6 13ZM12 19V22',
  stop: 'M5 5H19V19H5ZM5 19 19 5',
} as const

/** Go, connect a supply, or stop; why; and the charge with its honest band. */
export function Verdict({ answer, busy }: { readonly answer: PowerAnswer; readonly busy: boolean }) {
  const { stateOfCharge, minimumVolts, crossing, reasons, withSupply } = answer
  const percent = (share: number) => number(share * 100)
  return (
    <div className={css.verdict} data-verdict={answer.verdict} aria-busy={busy}>
      <p className={css.verdictWords} role="status">
        <svg className={css.verdictShape} viewBox="0 0 24 24" aria-hidden="true">
          <path d={shapes[answer.verdict]} />
        </svg>
        <strong>{verdictWords(answer)}</strong>
      </p>
      {reasons.map((reason) => (
        <p key={reason.code}>{findingWords('power-reason', reason)}</p>
      ))}
      {crossing?.medianMinutes != null && (
        <p>{t('power.crosses', { minutes: Math.round(crossing.medianMinutes), step: crossing.step })}</p>
      )}
      {withSupply !== null && answer.verdict === 'connect-supply' && (
        <p>
          {t('power.with-supply', {
            amperes: withSupply.amperes,
            volts: volts(withSupply.volts),
            low: volts(Math.round(withSupply.minimumVolts.low * 10) / 10),
          })}
        </p>
      )}
      <dl className={css.figures}>
        <div>
          <dt>{t('power.charge')}</dt>
          <dd>
            {t('power.percent', { percent: percent(stateOfCharge.mid) })}{' '}
            <span>
              {t('power.band', { low: percent(stateOfCharge.low), high: percent(stateOfCharge.high) })}
            </span>
          </dd>
        </div>
        <div>
          <dt>{t('power.lowest')}</dt>
          <dd>
            {volts(Math.round(minimumVolts.mid * 10) / 10)}{' '}
            <span>
              {t('power.band', {
                low: number(minimumVolts.low, 1, 1),
                high: number(minimumVolts.high, 1, 1),
              })}
            </span>
          </dd>
        </div>
      </dl>
      <p className={css.small}>{t('power.band.why')}</p>
    </div>
  )
}

/** What should be known beside the verdict: the first three, the rest folded away. */
export function Warnings({ answer }: { readonly answer: PowerAnswer }) {
  const words = answer.warnings.map((warning) => findingWords('power-warning', warning))
  if (words.length === 0) return null
  return (
    <ul className={css.warnings} aria-label={t('power.warnings')}>
      {words.map((each) => (
        <li key={each}>{each}</li>
      ))}
    </ul>
  )
}
