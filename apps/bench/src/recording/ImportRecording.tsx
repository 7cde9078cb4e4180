import { type ChangeEvent, useId } from 'react'
import { t } from '../words/index.ts'
import { useImport } from './importing.ts'
import css from './recording.module.css'

/** Picks a recording from this device's files. */
export function ImportRecording() {
  const start = useImport()
  const id = useId()
  const pick = (event: ChangeEvent<HTMLInputElement>) => {
    const file = event.target.files?.[0]
    if (file !== undefined) start(file)
    // The same file may be picked again after a cancel.
    event.target.value = ''
  }
  return (
    <div className={css.pick}>
      <input id={id} className="sr" type="file" onChange={pick} />
      <label htmlFor={id} className={css.pickLabel}>
        {t('recording.pick')}
      </label>
      <span className={css.hint}>{t('recording.pick.hint')}</span>
    </div>
  )
}
