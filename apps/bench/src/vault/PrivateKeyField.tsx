import { type ChangeEvent, useId, useState } from 'react'
import captureCss from '../capture/capture.module.css'
import formCss from '../form/form.module.css'
import { t } from '../words/index.ts'
import css from './vault.module.css'

/** More than any file of a private key holds; what is longer was chosen by mistake. */
const MOST_BYTES = 65_536

/** A private key, pasted or taken from its file. Nobody can read it over a shoulder unless it is asked to be shown. */
export function PrivateKeyField(props: {
  readonly value: string
  readonly onChange: (words: string) => void
  readonly onProblem: (words: string) => void
}) {
  const id = useId()
  const [shown, setShown] = useState(false)
  const take = async (event: ChangeEvent<HTMLInputElement>) => {
    const file = event.target.files?.[0]
    event.target.value = ''
    if (file === undefined) return
    if (file.size > MOST_BYTES) return props.onProblem(t('vault.open.identity.no-key', { name: file.name }))
    props.onChange(await file.text())
    props.onProblem('')
  }
  return (
    <div className={formCss.field}>
      <label className={formCss.label} htmlFor={id}>
        {t('vault.open.identity')}
      </label>
      <textarea
        id={id}
        className={`${formCss.input} ${formCss.mono} ${shown ? '' : css.veiled}`}
        rows={3}
        value={props.value}
        onChange={(event) => props.onChange(event.target.value)}
        autoComplete="off"
        autoCapitalize="off"
        spellCheck={false}
        required
      />
      <p className={formCss.hint}>{t('vault.open.identity.hint')}</p>
      <div className={css.pick}>
        <input id={`${id}-file`} className="sr" type="file" onChange={(event) => void take(event)} />
        <label htmlFor={`${id}-file`} className={captureCss.pick}>
          {t('vault.open.identity.file')}
        </label>
        <button type="button" className={formCss.plain} onClick={() => setShown(!shown)}>
          {shown ? t('vault.open.identity.hide') : t('vault.open.identity.show')}
        </button>
      </div>
    </div>
  )
}
