import type { PowerAnswer } from '@shearline/keywork'
import formCss from '../form/form.module.css'
import { number, volts } from '../words/amounts.ts'
import { t } from '../words/index.ts'
import css from './power.module.css'

/** The steps of the plan in words: from when to when, the lowest volts, the chance of crossing the floor there. */
export function StepTable({ answer }: { readonly answer: PowerAnswer }) {
  return (
    <details className={formCss.more}>
      <summary>{t('power.table')}</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard */}
      <section className={css.scroll} tabIndex={0} aria-label={t('power.table')}>
        <table className={css.table}>
          <thead>
            <tr>
              <th scope="col">{t('power.table.step')}</th>
              <th scope="col">{t('power.table.minutes')}</th>
              <th scope="col">{t('power.table.draws')}</th>
              <th scope="col">{t('power.table.lowest')}</th>
              <th scope="col">{t('power.table.chance')}</th>
            </tr>
          </thead>
          <tbody>
            {answer.steps.map((step, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: two steps may have the same name; their place tells them apart
              <tr key={index}>
                <th scope="row">
                  {index + 1}. {step.name}
                </th>
                <td>{t('power.range', { low: number(step.fromMinutes), high: number(step.toMinutes) })}</td>
                <td>
                  {t('power.range', {
                    low: number(step.loadAmperes.low),
                    high: t('power.amperes', { amperes: number(step.loadAmperes.high) }),
                  })}
                </td>
                <td>
                  {t('power.range', {
                    low: number(step.minimumVolts.low, 1, 1),
                    high: volts(Math.round(step.minimumVolts.high * 10) / 10),
                  })}
                </td>
                <td>{t('power.percent', { percent: number(step.chanceOfCrossing * 100) })}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  )
}
