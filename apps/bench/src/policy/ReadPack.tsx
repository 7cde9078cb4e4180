import type { PolicyPackResult } from '@shearline/jobfile'
import { useId, useState } from 'react'
import captureCss from '../capture/capture.module.css'
import formCss from '../form/form.module.css'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import css from './policy.module.css'

/** Reads a pack from a JSON file: kept when every place is right, else every wrong place is named and nothing kept. */
export function ReadPack({ onRead }: { readonly onRead: (value: unknown) => Promise<PolicyPackResult> }) {
  const id = useId()
  const [result, setResult] = useState<PolicyPackResult | null>(null)
  const [problem, setProblem] = useState('')
  const read = async (file: File) => {
    setResult(null)
    setProblem('')
    let value: unknown
    try {
      value = JSON.parse(await file.text())
    } catch (error) {
      setProblem(t('rules.not-json', { what: error instanceof Error ? error.message : String(error) }))
      return
    }
    try {
      setResult(await onRead(value))
    } catch (error) {
      setProblem(problemWords(error))
    }
  }
  return (
    <section className={formCss.form}>
      <div className={formCss.field}>
        <div className={formCss.foot}>
          <input
            id={id}
            className="sr"
            type="file"
            accept="application/json,.json"
            aria-describedby={`${id}-hint`}
            onChange={(event) => {
              const file = event.target.files?.[0]
              event.target.value = ''
              if (file !== undefined) void read(file)
            }}
          />
          <label className={captureCss.pick} htmlFor={id}>
            {t('rules.read-file')}
          </label>
        </div>
        <p className={formCss.hint} id={`${id}-hint`}>
          {t('rules.read-file.hint')}
        </p>
      </div>
      <p role="status">{result?.ok === true ? t('rules.read', { name: result.pack.name }) : ''}</p>
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
      {result?.ok === false && (
        <div className={formCss.problem} role="alert">
          <p>{t('rules.troubles', { count: result.troubles.length })}</p>
          <ul className={css.troubles}>
            {result.troubles.map(({ path, what, doNext }) => (
              <li key={`${path} ${what}`}>
                <code>{path}</code>: {t('rules.trouble', { what, doNext })}
              </li>
            ))}
          </ul>
        </div>
      )}
    </section>
  )
}
