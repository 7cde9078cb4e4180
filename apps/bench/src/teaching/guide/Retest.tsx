import type { KeyFunction } from '@shearline/keywork'
import { useState } from 'react'
import formCss from '../../form/form.module.css'
import { useDesk } from '../../job/desk.ts'
import { Tag } from '../../keys/Tag.tsx'
import { say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import { problemWords } from '../../words/problem.ts'
import css from '../teaching.module.css'
import { starting, startsBy } from './starting.ts'

/** After a break-off: every key here is tried again, because only trying says what the car accepts now. */
export function Retest() {
  const { state, record } = useDesk()
  const [problem, setProblem] = useState('')
  if (state.retest.length === 0) return null
  const lay = async (key: string, name: KeyFunction, outcome: 'works' | 'fails') => {
    try {
      setProblem('')
      await record([{ kind: 'function-tested', body: { key, function: name, phase: 'after', outcome } }])
    } catch (error) {
      setProblem(problemWords(error))
    }
  }
  const done = state.retest.filter((each) => each.done).length
  return (
    <section className={css.retest} aria-label={t('retest.title')} data-need="retest-after-break">
      <h3>{t('retest.count', { done, of: state.retest.length })}</h3>
      <p className={css.under}>{t('retest.why')}</p>
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
      <ul>
        {state.retest.map((each) => {
          const key = state.keys.find((one) => one.id === each.key)
          if (key === undefined) return null
          const name = startsBy(key)
          const cells = state.grid.rows.find((row) => row.key === key.id)?.after ?? []
          const works = cells.some((cell) => starting.includes(cell.function) && cell.outcome === 'works')
          return (
            <li
              key={key.id}
              className={css.retestKey}
              data-need={each.done ? undefined : `retest-after-break:${key.id}`}
            >
              <Tag letter={key.id} colour={key.colour} />
              <span>
                {say(`function.${name}`)}
                {each.done && `: ${say(works ? 'outcome.works' : 'outcome.fails')}`}
              </span>
              {!each.done && (
                <span className={css.pair}>
                  <button
                    type="button"
                    className={formCss.plain}
                    aria-label={t('retest.starts-named', { key: key.id })}
                    onClick={() => void lay(key.id, name, 'works')}
                  >
                    {t('retest.starts')}
                  </button>
                  <button
                    type="button"
                    className={formCss.plain}
                    aria-label={t('retest.not-named', { key: key.id })}
                    onClick={() => void lay(key.id, name, 'fails')}
                  >
                    {t('retest.not')}
                  </button>
                </span>
              )}
            </li>
          )
        })}
      </ul>
    </section>
  )
}
