import { useState } from 'react'
import formCss from '../../form/form.module.css'
import { Several } from '../../form/Several.tsx'
import { Consent } from '../../job/Consent.tsx'
import { useDesk } from '../../job/desk.ts'
import { Part, RecordForm } from '../../job/Part.tsx'
import { t } from '../../words/index.ts'
import { AfterClearing } from './AfterClearing.tsx'
import css from './clearing.module.css'
import { clearingOffer } from './offer.ts'

/** Asking for clearing: what may be, what may not and why, and what comes afterwards. */
export function Clearing() {
  const [asking, setAsking] = useState(false)
  return (
    <Part title={t('clear.title')} about={<p>{t('clear.what')}</p>}>
      <AfterClearing />
      {asking ? (
        <Ask onDone={() => setAsking(false)} />
      ) : (
        <div className={formCss.foot}>
          <button type="button" className={formCss.plain} onClick={() => setAsking(true)}>
            {t('clear.ask')}
          </button>
        </div>
      )}
    </Part>
  )
}

function Ask({ onDone }: { readonly onDone: () => void }) {
  const { state } = useDesk()
  const { units: offered, barred } = clearingOffer(state.faults)
  const [units, setUnits] = useState<readonly string[]>([])
  const warnings = [
    'scan-saved' as const,
    'emissions' as const,
    ...(barred.some(({ why }) => why.startsWith('airbag')) ? (['airbag'] as const) : []),
    ...(barred.some(({ why }) => why === 'permanent') ? (['permanent'] as const) : []),
  ]
  return (
    <>
      {barred.length > 0 && (
        <section className={css.barred} aria-label={t('clear.barred')}>
          <h4 className={css.title}>{t('clear.barred')}</h4>
          <ul>
            {barred.map(({ line, why }) => (
              <li key={`${line.unit} ${line.code}`}>
                <svg width="22" height="22" viewBox="0 0 22 22" aria-hidden="true">
                  <circle className={css.ring} cx="11" cy="11" r="8.5" />
                  <path className={css.ring} d="M5 11H17" />
                </svg>
                <span>
                  <code>{line.code}</code> {line.unit}: {t(`clear.barred.${why}`)}
                </span>
              </li>
            ))}
          </ul>
        </section>
      )}
      {offered.length === 0 ? (
        <p>{t('clear.nothing')}</p>
      ) : (
        <>
          <Consent about="clear-faults" />
          <RecordForm
            submit={t('clear.record')}
            onDone={onDone}
            drafts={() =>
              units.length === 0
                ? null
                : [{ kind: 'clear-requested', body: { units: [...units], acknowledged: warnings } }]
            }
          >
            <Several
              label={t('clear.units')}
              hint={t('clear.units.hint')}
              value={units}
              onChange={setUnits}
              options={offered.map((unit) => [unit, unit])}
            />
            {warnings.map((warning) => (
              <Understood key={warning} words={t(warningWords[warning])} />
            ))}
          </RecordForm>
        </>
      )}
    </>
  )
}

/** What each warning says; the record keeps which of them were confirmed. */
const warningWords = {
  'scan-saved': 'clear.caution',
  emissions: 'clear.readiness',
  airbag: 'clear.airbag',
  permanent: 'clear.permanent',
} as const

/** A sentence that has to be ticked before the form can be sent. */
function Understood({ words }: { readonly words: string }) {
  return (
    <label className={css.understood}>
      <input type="checkbox" required />
      <span>{words}</span>
    </label>
  )
}
