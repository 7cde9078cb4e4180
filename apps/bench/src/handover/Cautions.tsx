import type { Body, Code } from '@shearline/jobfile'
import { useState } from 'react'
import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import css from '../job/job.module.css'
import { Part } from '../job/Part.tsx'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'

type Caution = Body<'caution-read'>['caution']

/** The cautions this job calls for, each short, each acknowledged by name of who read it. */
export function Cautions() {
  const { state, record } = useDesk()
  const [problem, setProblem] = useState('')
  const read = (caution: string) => {
    record([{ kind: 'caution-read', body: { caution: caution as Caution } }]).then(
      () => setProblem(''),
      (error: unknown) => setProblem(problemWords(error)),
    )
  }
  return (
    <Part title={t('cautions.title')} need="caution-not-read">
      <ul className={css.steps}>
        {state.cautionsWanted.map((caution) => {
          const done = state.cautionsRead.includes(caution)
          return (
            <li
              key={caution}
              className={css.rehearsed}
              data-need={done ? undefined : `caution-not-read:${caution}`}
            >
              <span>
                <strong>{say(`caution.${caution}` as Code)}.</strong>{' '}
                {say(`caution-means.${caution}` as Code)}
              </span>
              {done ? (
                <span className={css.small}>{t('cautions.read')}</span>
              ) : (
                <span className={formCss.foot}>
                  <button
                    type="button"
                    className={formCss.plain}
                    aria-label={t('cautions.acknowledge-named', {
                      caution: say(`caution.${caution}` as Code),
                    })}
                    onClick={() => read(caution)}
                  >
                    {t('cautions.acknowledge')}
                  </button>
                </span>
              )}
            </li>
          )
        })}
      </ul>
      <p className={css.small}>{say('caution.defers')}</p>
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
    </Part>
  )
}
