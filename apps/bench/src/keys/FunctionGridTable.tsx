import type { GridCell, KeyFunction, TestOutcome, TestPhase } from '@shearline/keywork'
import { useState } from 'react'
import { Choice } from '../form/Choice.tsx'
import formCss from '../form/form.module.css'
import { Words } from '../form/Words.tsx'
import { useDesk } from '../job/desk.ts'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import { GridCellButton } from './GridCellButton.tsx'
import css from './keys.module.css'
import { Tag } from './Tag.tsx'

const answers = ['works', 'fails', 'not-applicable', 'not-tested'] as const

/**
 * Every key by every function. An answer is chosen once and then laid into cells with one tap each; what was
 * tapped wrongly is tapped again with another answer, and both stay on record.
 */
export function FunctionGridTable({ phase }: { readonly phase: TestPhase }) {
  const { state, record } = useDesk()
  const { grid, keys } = state
  const [answer, setAnswer] = useState<TestOutcome | null>('works')
  const [because, setBecause] = useState('')
  const [present, setPresent] = useState(false)
  const [problem, setProblem] = useState('')
  const shown = keys.filter((key) => phase === 'after' || key.origin === 'existing')

  const lay = async (key: string, name: KeyFunction) => {
    if (answer === null) return
    const reason = answer === 'not-tested' ? because.trim() : ''
    if (answer === 'not-tested' && reason === '') {
      setProblem(t('grid.because-needed'))
      return
    }
    try {
      setProblem('')
      const body = {
        key,
        function: name,
        phase,
        outcome: answer,
        ...(reason === '' ? {} : { because: reason }),
      }
      await record([
        { kind: 'function-tested', body: phase === 'after' ? { ...body, customerPresent: present } : body },
      ])
    } catch (error) {
      setProblem(problemWords(error))
    }
  }

  return (
    <div className={css.gridBox}>
      <Choice
        label={t('grid.answer')}
        hint={t('grid.answer.hint')}
        value={answer}
        onChange={setAnswer}
        options={answers.map((one) => [one, say(`outcome.${one}`)])}
      />
      {answer === 'not-tested' && <Words label={t('grid.because')} value={because} onChange={setBecause} />}
      {phase === 'after' && (
        <label className={css.check}>
          <input type="checkbox" checked={present} onChange={(event) => setPresent(event.target.checked)} />
          {t('grid.present')}
        </label>
      )}
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
      <div className={css.gridScroll}>
        <table className={css.grid}>
          <caption className="sr">{t(`grid.${phase}`)}</caption>
          <thead>
            <tr>
              <td />
              {shown.map((key) => (
                <th key={key.id} scope="col">
                  <Tag letter={key.id} colour={key.colour} />
                  <span className={css.headNote}>
                    {key.origin === 'new' ? t('keys.new') : key.onBench ? '' : t('keys.away')}
                  </span>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {grid.functions.map((name) => (
              <tr key={name}>
                <th scope="row">{say(`function.${name}`)}</th>
                {shown.map((key) => (
                  <td key={key.id}>
                    <GridCellButton
                      cell={cellOf(grid.rows, key.id, phase, name)}
                      onTap={() => void lay(key.id, name)}
                      answer={answer}
                    />
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </div>
  )
}

/** The cell of a key and function, if the grid has one. */
export function cellOf(
  rows: readonly {
    readonly key: string
    readonly before: readonly GridCell[]
    readonly after: readonly GridCell[]
  }[],
  key: string,
  phase: TestPhase,
  name: KeyFunction,
): GridCell | undefined {
  return rows.find((row) => row.key === key)?.[phase].find((cell) => cell.function === name)
}
