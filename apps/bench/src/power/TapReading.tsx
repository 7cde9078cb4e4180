import { useState } from 'react'
import { Amount } from '../form/Amount.tsx'
import formCss from '../form/form.module.css'
import { RecordForm, useFresh } from '../job/Part.tsx'
import { volts as voltsWords } from '../words/amounts.ts'
import { t } from '../words/index.ts'
import css from './power.module.css'

const OFFERED = [0.2, 0.1, 0, -0.1, -0.2, -0.3] as const

/** A reading in two taps: the figure nearest to what is expected, then record. Any other is typed. */
export function TapReading({ expected }: { readonly expected: number }) {
  const [fresh, renew] = useFresh()
  return <TapForm key={fresh} expected={expected} onDone={renew} />
}

function TapForm({ expected, onDone }: { readonly expected: number; readonly onDone: () => void }) {
  const [volts, setVolts] = useState<number | null>(null)
  // Offered figures stand still while one is being chosen.
  const [around] = useState(expected)
  return (
    <RecordForm
      submit={volts === null ? t('record') : t('power.tap.record', { volts: voltsWords(volts) })}
      onDone={onDone}
      drafts={() =>
        volts === null ? null : [{ kind: 'supply-read', body: { volts, during: 'session', source: 'typed' } }]
      }
    >
      <fieldset>
        <legend className={formCss.label}>{t('power.tap')}</legend>
        <div className={css.taps}>
          {OFFERED.map((offset) => {
            const value = Math.round((around + offset) * 10) / 10
            return (
              <button
                key={offset}
                type="button"
                className={css.tap}
                aria-pressed={volts === value}
                onClick={() => setVolts(value)}
              >
                {voltsWords(value)}
              </button>
            )
          })}
        </div>
      </fieldset>
      <details className={formCss.more}>
        <summary>{t('power.tap.other')}</summary>
        <Amount
          label={t('supply.volts')}
          unit="V"
          value={volts}
          onChange={setVolts}
          most={60}
          step={0.1}
          decimals={2}
          start={around}
        />
      </details>
    </RecordForm>
  )
}
