import { LOAD_NAMES } from '@shearline/keywork'
import { Amount } from '../form/Amount.tsx'
import formCss from '../form/form.module.css'
import { Several } from '../form/Several.tsx'
import { Words } from '../form/Words.tsx'
import { listMark } from '../words/engine.ts'
import { t } from '../words/index.ts'
import type { FieldsProps } from './BatteryFields.tsx'
import type { DraftStep } from './plan.ts'
import css from './power.module.css'

/** What will be done, how long each part may take, and what is switched on meanwhile. */
export function StepFields({ draft, change }: FieldsProps) {
  const { steps } = draft
  const put = (index: number, part: Partial<DraftStep>) =>
    change({ steps: steps.map((step, place) => (place === index ? { ...step, ...part } : step)) })
  return (
    <>
      <p className={formCss.hint}>{t('power.steps.hint')}</p>
      <ol className={css.stepList}>
        {steps.map((step, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: steps have no identity but their place
          <li key={index} className={css.stepItem}>
            <div className={formCss.row}>
              <Words
                label={t('power.step.name', { number: index + 1 })}
                value={step.name}
                onChange={(name) => put(index, { name })}
              />
              <Amount
                label={t('power.step.minutes')}
                value={step.minutes}
                onChange={(minutes) => put(index, { minutes })}
                least={1}
                most={1440}
                step={5}
                start={10}
              />
            </div>
            <details className={formCss.more}>
              <summary>
                {step.amperes === null && step.loads.length === 0
                  ? t('power.step.on.unknown')
                  : t('power.step.on.what', {
                      loads: [
                        ...step.loads.map((load) => t(`power.load.${load}`)),
                        ...(step.amperes === null ? [] : [t('power.amperes', { amperes: step.amperes })]),
                      ].join(listMark()),
                    })}
              </summary>
              <div className={css.loads}>
                <Several
                  label={t('power.step.on')}
                  value={step.loads}
                  onChange={(loads) => put(index, { loads })}
                  options={LOAD_NAMES.map((load) => [load, t(`power.load.${load}`)])}
                />
                <Amount
                  label={t('power.step.amperes')}
                  unit="A"
                  hint={t('power.step.amperes.hint')}
                  value={step.amperes}
                  onChange={(amperes) => put(index, { amperes })}
                  most={2000}
                  decimals={1}
                  start={10}
                  optional
                />
              </div>
            </details>
            {steps.length > 1 && (
              <div className={formCss.foot}>
                <button
                  type="button"
                  className={formCss.plain}
                  onClick={() => change({ steps: steps.filter((_, place) => place !== index) })}
                >
                  {t('power.step.remove', { name: step.name })}
                </button>
              </div>
            )}
          </li>
        ))}
      </ol>
      <div className={formCss.foot}>
        <button
          type="button"
          className={formCss.plain}
          onClick={() =>
            change({
              steps: [
                ...steps,
                { name: t('power.step.more'), minutes: 10, loads: ['ignition-on'], amperes: null },
              ],
            })
          }
        >
          {t('power.step.add')}
        </button>
      </div>
    </>
  )
}
