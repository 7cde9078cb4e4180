import { directionOf, type Language, type SheetOffer } from '@shearline/jobfile'
import { useEffect, useId, useState } from 'react'
import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import jobCss from '../job/job.module.css'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import { inWorker } from './in-worker.ts'
import { recordHere } from './record-here.ts'
import css from './sheets.module.css'

interface Made {
  readonly address: string
  readonly message: string | null
}

/** One sheet: what it would say, and the file once it is made. */
export function SheetRow({ offer, language }: { readonly offer: SheetOffer; readonly language: Language }) {
  const { job } = useDesk()
  const { sheet, title, preview } = offer
  const [made, setMade] = useState<Made | null>(null)
  const [busy, setBusy] = useState(false)
  const [problem, setProblem] = useState('')
  const address = made?.address

  useEffect(() => () => (address === undefined ? undefined : URL.revokeObjectURL(address)), [address])

  const make = async () => {
    setBusy(true)
    setProblem('')
    try {
      const record = await recordHere(job)
      const madeAt = new Date().toISOString()
      const { pdf, message } = await inWorker({ what: 'sheet', sheet, record, language, madeAt })
      setMade({ address: URL.createObjectURL(new Blob([pdf], { type: 'application/pdf' })), message })
    } catch (error) {
      setProblem(problemWords(error))
    } finally {
      setBusy(false)
    }
  }

  return (
    <li className={css.sheet}>
      <div className={css.words} lang={language} dir={directionOf(language)}>
        <strong>{title}</strong>
        <span>{preview}</span>
      </div>
      <div className={formCss.foot}>
        {made === null ? (
          <button
            type="button"
            className={formCss.plain}
            disabled={busy}
            aria-label={t('sheets.make-named', { sheet: title })}
            onClick={() => void make()}
          >
            {t('sheets.make')}
          </button>
        ) : (
          <>
            <a
              className={jobCss.open}
              href={made.address}
              target="_blank"
              rel="noopener"
              aria-label={t('sheets.open-named', { sheet: title })}
            >
              {t('sheets.open')}
            </a>
            <a
              className={jobCss.open}
              href={made.address}
              download={`${job}-${sheet}-${language}.pdf`}
              aria-label={t('sheets.save-named', { sheet: title })}
            >
              {t('sheets.save')}
            </a>
          </>
        )}
        <span role="status">{busy ? t('sheets.busy') : ''}</span>
      </div>
      {made?.message != null && <Message words={made.message} language={language} />}
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
    </li>
  )
}

/** The words of a message, to be copied into whatever the customer reads. */
function Message({ words, language }: { readonly words: string; readonly language: Language }) {
  const id = useId()
  const [told, setTold] = useState('')
  const copy = () =>
    navigator.clipboard.writeText(words).then(
      () => setTold(t('sheets.copied')),
      () => setTold(t('sheets.not-copied')),
    )
  return (
    <div className={formCss.field}>
      <label className={formCss.label} htmlFor={id}>
        {t('sheets.message')}
      </label>
      <textarea
        id={id}
        className={formCss.input}
        readOnly
        rows={5}
        value={words}
        lang={language}
        dir={directionOf(language)}
      />
      <div className={formCss.foot}>
        <button type="button" className={formCss.plain} onClick={() => void copy()}>
          {t('sheets.copy')}
        </button>
        <span role="status">{told}</span>
      </div>
    </div>
  )
}
