import { canBeCorrected, type Fact } from '@shearline/jobfile'
import { useState } from 'react'
import formCss from '../form/form.module.css'
import { t } from '../words/index.ts'
import { clock } from '../words/instants.ts'
import { useDesk, useUnsentFacts } from './desk.ts'
import { factSentence } from './fact-sentence.ts'
import css from './job.module.css'
import { Withdraw } from './Withdraw.tsx'

/** One fact as it stands on record: what, when, by whom, whether it is sent, and the way to withdraw it. */
export function RecordLine({ fact }: { readonly fact: Fact }) {
  const { state, zone } = useDesk()
  const unsent = useUnsentFacts()
  const [asking, setAsking] = useState(false)
  const correction = state.corrections.findLast((one) => one.fact === fact.id)
  const words = factSentence(fact)
  return (
    <li className={css.recordLine}>
      <span className={css.recordWords}>
        {correction?.stands === 'applied' ? <del>{words}</del> : words}
        <span className={css.small}>
          {clock(fact.at, zone)} · {fact.by} · {unsent.has(fact.id) ? t('saved.here') : t('saved.sent')}
        </span>
        {correction !== undefined && (
          <span className={css.small}>
            {t('record.corrected', {
              action: correction.action,
              by: correction.by,
              reason: correction.reason,
            })}
          </span>
        )}
      </span>
      {correction === undefined && canBeCorrected(fact.kind) && (
        <button
          type="button"
          className={formCss.plain}
          aria-label={t('record.withdraw-named', { what: words })}
          onClick={() => setAsking(true)}
        >
          {t('record.withdraw')}
        </button>
      )}
      {asking && <Withdraw fact={fact} words={words} onClose={() => setAsking(false)} />}
    </li>
  )
}
