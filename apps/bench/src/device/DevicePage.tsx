import { type Language, languages } from '@shearline/jobfile'
import { type FormEvent, useEffect, useState } from 'react'
import { useSending } from '../app/SendingSign.tsx'
import { Choice } from '../form/Choice.tsx'
import formCss from '../form/form.module.css'
import { Words } from '../form/Words.tsx'
import type { Self } from '../sync/database.ts'
import { sendNow } from '../sync/outbox.ts'
import { chosenTheme, showTheme, type Theme, themes } from '../tokens/theme.ts'
import { Recipients } from '../vault/Recipients.tsx'
import { size } from '../words/amounts.ts'
import { language, t } from '../words/index.ts'
import { chooseLanguage, ownNames } from '../words/languages.ts'
import { problemWords } from '../words/problem.ts'
import css from './device.module.css'
import { RoomLine } from './Room.tsx'
import { ownDevice, renameDevice } from './self.ts'

/** This device: who works with it, its name and key, the light it is read in, what is kept and what is sent. */
export default function DevicePage() {
  const [self, setSelf] = useState<Self | null>(null)
  const [problem, setProblem] = useState('')
  useEffect(() => {
    ownDevice().then(setSelf, (error: unknown) => setProblem(problemWords(error)))
  }, [])
  return (
    <div className={css.page}>
      <h1 className={css.title}>{t('device.title')}</h1>
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
      {self !== null && <Names key={self.device} self={self} onChanged={setSelf} />}
      <Tongue />
      <Light />
      <SendingDetail />
      <Recipients />
      {self !== null && <Kept self={self} />}
    </div>
  )
}

function Names({ self, onChanged }: { readonly self: Self; readonly onChanged: (self: Self) => void }) {
  const [by, setBy] = useState(self.by)
  const [name, setName] = useState(self.name)
  const [saved, setSaved] = useState(false)
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    onChanged(await renameDevice({ by: by.trim(), name: name.trim() }))
    setSaved(true)
  }
  return (
    <form className={formCss.form} onSubmit={(event) => void keep(event)} onChange={() => setSaved(false)}>
      <Words label={t('device.by')} hint={t('device.by.hint')} value={by} onChange={setBy} />
      <Words label={t('device.name')} hint={t('device.name.hint')} value={name} onChange={setName} />
      <div className={formCss.foot}>
        <button type="submit" className={formCss.submit}>
          {t('device.keep')}
        </button>
        <span role="status">{saved ? t('saved.here') : ''}</span>
      </div>
    </form>
  )
}

function Tongue() {
  const [problem, setProblem] = useState('')
  const choose = (next: Language) => {
    chooseLanguage(next).catch((error: unknown) => setProblem(problemWords(error)))
  }
  return (
    <div className={formCss.form}>
      <Choice
        label={t('device.language')}
        hint={t('device.language.hint')}
        value={language()}
        onChange={choose}
        options={languages.map((one) => [one, ownNames[one]])}
      />
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
    </div>
  )
}

function Light() {
  const [theme, setTheme] = useState<Theme>(chosenTheme)
  const choose = (next: Theme) => {
    showTheme(next)
    setTheme(next)
  }
  return (
    <div className={formCss.form}>
      <Choice
        label={t('device.light')}
        hint={t('device.light.hint')}
        value={theme}
        onChange={choose}
        options={themes.map((one) => [one, t(`theme.${one}`)])}
      />
    </div>
  )
}

function SendingDetail() {
  const sending = useSending()
  return (
    <section className={formCss.form} aria-labelledby="sending-title">
      <h2 id="sending-title" className={css.subtitle}>
        {t('device.sending')}
      </h2>
      <p>{t(`sending.full.${sending.state}`, { facts: sending.facts, blobs: sending.blobs })}</p>
      {sending.uploading !== null && (
        <div className={formCss.field}>
          <p id="upload-words">
            {t('sending.upload', {
              name: sending.uploading.name,
              sent: size(sending.uploading.sent),
              whole: size(sending.uploading.whole),
            })}
          </p>
          <progress
            aria-labelledby="upload-words"
            value={sending.uploading.sent}
            max={sending.uploading.whole}
          />
        </div>
      )}
      {sending.refusal !== null && (
        <div className={formCss.problem}>
          <p>{t('sending.refusal', { what: sending.refusal.what, code: sending.refusal.code })}</p>
          <p>{sending.refusal.doNext}</p>
        </div>
      )}
      {sending.state !== 'sent' && (
        <button type="button" className={formCss.plain} onClick={() => void sendNow()}>
          {t('sending.try')}
        </button>
      )}
    </section>
  )
}

function Kept({ self }: { readonly self: Self }) {
  const [lasting, setLasting] = useState<boolean | null>(null)
  useEffect(() => {
    void navigator.storage?.persisted?.().then(setLasting)
  }, [])
  return (
    <section className={formCss.form} aria-labelledby="kept-title">
      <h2 id="kept-title" className={css.subtitle}>
        {t('device.kept')}
      </h2>
      <p>{t('device.key')}</p>
      <p>
        <code className={css.id}>{self.device}</code>
      </p>
      <p>{t('device.facts', { count: self.head.seq })}</p>
      <RoomLine />
      {lasting !== null && <p>{lasting ? t('device.lasting') : t('device.not-lasting')}</p>}
      {lasting === false && (
        <div className={formCss.foot}>
          <button
            type="button"
            className={formCss.plain}
            onClick={() => void navigator.storage.persist().then(setLasting)}
          >
            {t('device.ask-lasting')}
          </button>
        </div>
      )}
    </section>
  )
}
