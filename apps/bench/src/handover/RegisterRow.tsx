import { useState } from 'react'
import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import { inWorker } from './in-worker.ts'
import { recordHere } from './record-here.ts'
import css from './sheets.module.css'

const types = { csv: 'text/csv', json: 'application/json' } as const

/** The row of this job for a register, as a file. */
export function RegisterRow() {
  const { job } = useDesk()
  const [problem, setProblem] = useState('')
  const save = async (form: 'csv' | 'json') => {
    setProblem('')
    try {
      const { text } = await inWorker({ what: 'register', record: await recordHere(job), form })
      const address = URL.createObjectURL(new Blob([text], { type: types[form] }))
      const link = document.createElement('a')
      link.href = address
      link.download = `${job}-register.${form}`
      link.click()
      // The download has its own hold on the bytes by the next turn of the page.
      setTimeout(() => URL.revokeObjectURL(address), 10_000)
    } catch (error) {
      setProblem(problemWords(error))
    }
  }
  return (
    <div className={css.sheet}>
      <div className={css.words}>
        <strong>{t('sheets.register')}</strong>
        <span>{t('sheets.register-about')}</span>
      </div>
      <div className={formCss.foot}>
        <button type="button" className={formCss.plain} onClick={() => void save('csv')}>
          {t('sheets.register-csv')}
        </button>
        <button type="button" className={formCss.plain} onClick={() => void save('json')}>
          {t('sheets.register-json')}
        </button>
      </div>
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
    </div>
  )
}
