import { type ChangeEvent, useId, useState } from 'react'
import captureCss from '../capture/capture.module.css'
import formCss from '../form/form.module.css'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import { hashFile } from './work.ts'

/** A hash given by hand or made from a file on this device; the file itself is neither kept nor sent. */
export function HashedFile({
  label,
  value,
  onChange,
}: {
  readonly label: string
  readonly value: string
  readonly onChange: (hash: string) => void
}) {
  const id = useId()
  const [note, setNote] = useState('')
  const pick = (event: ChangeEvent<HTMLInputElement>) => {
    const file = event.target.files?.[0]
    event.target.value = ''
    if (file === undefined) return
    setNote(t('hash.working', { name: file.name }))
    hashFile(file).done.then(
      (hash) => {
        onChange(hash)
        setNote(t('hash.done', { name: file.name }))
      },
      (error: unknown) => setNote(problemWords(error)),
    )
  }
  return (
    <div className={formCss.field}>
      <label className={formCss.label} htmlFor={id}>
        {label}
      </label>
      <input
        id={id}
        className={`${formCss.input} ${formCss.mono}`}
        value={value}
        onChange={(event) => onChange(event.target.value.trim().toLowerCase())}
        required
        pattern="[0-9a-f]{64}"
        title={t('hash.form')}
        autoComplete="off"
        spellCheck={false}
      />
      <div className={formCss.foot}>
        <input
          id={`${id}-file`}
          className="sr"
          type="file"
          onChange={pick}
          aria-label={t('hash.pick-named', { label })}
        />
        <label htmlFor={`${id}-file`} className={captureCss.pick}>
          {t('hash.pick')}
        </label>
        <span className={formCss.hint} role="status">
          {note}
        </span>
      </div>
    </div>
  )
}
