import type { Caution } from '@shearline/jobfile'
import { useState } from 'react'
import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import css from './cautions.module.css'

/** One caution: its name, the usual sentence, and the tap that says it was read. */
export function CautionCard({ caution, need }: { readonly caution: Caution; readonly need: boolean }) {
  const { state, record } = useDesk()
  const [problem, setProblem] = useState('')
  const done = state.cautionsRead.includes(caution)
  const read = () => {
    record([{ kind: 'caution-read', body: { caution } }]).then(
      () => setProblem(''),
      (error: unknown) => setProblem(problemWords(error)),
    )
  }
  return (
    <li
      className={css.card}
      data-read={done}
      data-need={done || !need ? undefined : `caution-not-read:${caution}`}
    >
      <svg className={css.mark} viewBox="0 0 24 24" aria-hidden="true">
        {done ? <path d="M5 13l5 5L20 6" /> : <path d="M12 4V14M12 18V20" />}
      </svg>
      <span className={css.words}>
        <strong>{say(`caution.${caution}`)}.</strong> {say(`caution-means.${caution}`)}
      </span>
      {done ? (
        <span className={css.done}>{t('cautions.read')}</span>
      ) : (
        <button
          type="button"
          className={formCss.plain}
          aria-label={t('cautions.acknowledge-named', { caution: say(`caution.${caution}`) })}
          onClick={read}
        >
          {t('cautions.acknowledge')}
        </button>
      )}
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
    </li>
  )
}
