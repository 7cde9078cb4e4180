import { backupProven, secretSealed, type VaultRecipient } from '@shearline/jobfile'
import { type ChangeEvent, type FormEvent, useEffect, useId, useState } from 'react'
import captureCss from '../capture/capture.module.css'
import formCss from '../form/form.module.css'
import { Words } from '../form/Words.tsx'
import { useDesk } from '../job/desk.ts'
import { listMark } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import { ownRecipients } from './recipients.ts'
import css from './vault.module.css'
import { proveReads } from './work.ts'

/** Two files of two separate reads: compared here, sealed here, and only the sealed form is kept. */
export function SealReads({ onDone }: { readonly onDone: () => void }) {
  const { record } = useDesk()
  const [recipients, setRecipients] = useState<readonly VaultRecipient[] | null>(null)
  const [what, setWhat] = useState('')
  const [first, setFirst] = useState<File | null>(null)
  const [second, setSecond] = useState<File | null>(null)
  const [problems, setProblems] = useState<readonly string[]>([])
  const [busy, setBusy] = useState(false)
  useEffect(() => {
    ownRecipients().then(setRecipients, (error: unknown) => setProblems([problemWords(error)]))
  }, [])
  if (recipients === null) return null
  if (recipients.length === 0)
    return (
      <p>
        {t('vault.seal.no-recipient')} <a href="#/device">{t('vault.seal.to-device')}</a>
      </p>
    )
  const seal = async (event: FormEvent) => {
    event.preventDefault()
    if (first === null || second === null || busy) return
    if (isSame(first, second)) return setProblems([t('vault.seal.same-file')])
    setBusy(true)
    try {
      const keys = recipients.map(({ recipient }) => recipient)
      const answer = await proveReads(first, second, what, keys)
      if (answer.what === 'not-proven') {
        setProblems(answer.comparison.findings.map((found) => `${found.what} ${found.doNext}`))
        return
      }
      const { comparison, kept, sealed } = answer.proven
      const blob = { sha256: kept.blob, blob: sealed, name: t('vault.sealed-file'), sent: false }
      await record([secretSealed(kept), backupProven(comparison, kept)], [blob])
      onDone()
    } catch (error) {
      setProblems([problemWords(error)])
    } finally {
      setBusy(false)
    }
  }
  return (
    <form className={formCss.form} onSubmit={(event) => void seal(event)}>
      <p>{t('vault.seal.about', { names: recipients.map(({ name }) => name).join(listMark()) })}</p>
      <Words label={t('backup.what')} hint={t('backup.what.hint')} value={what} onChange={setWhat} />
      <Pick label={t('vault.seal.first')} file={first} onPick={setFirst} />
      <Pick label={t('vault.seal.second')} file={second} onPick={setSecond} />
      {problems.map((words) => (
        <p key={words} className={formCss.problem} role="alert">
          {words}
        </p>
      ))}
      <div className={formCss.foot}>
        <button type="submit" className={formCss.submit} disabled={busy || first === null || second === null}>
          {busy ? t('vault.seal.busy') : t('vault.seal.do')}
        </button>
      </div>
    </form>
  )
}

/** A browser does not say which file it is; the same name, size and time is the same read chosen twice. */
function isSame(first: File, second: File): boolean {
  return (
    first.name === second.name && first.size === second.size && first.lastModified === second.lastModified
  )
}

function Pick({
  label,
  file,
  onPick,
}: {
  readonly label: string
  readonly file: File | null
  readonly onPick: (file: File) => void
}) {
  const id = useId()
  const pick = (event: ChangeEvent<HTMLInputElement>) => {
    const picked = event.target.files?.[0]
    event.target.value = ''
    if (picked !== undefined) onPick(picked)
  }
  return (
    <div className={css.pick}>
      <input id={id} className="sr" type="file" onChange={pick} aria-label={label} />
      <label htmlFor={id} className={captureCss.pick}>
        {label}
      </label>
      <span className={formCss.hint} role="status">
        {file === null ? t('vault.seal.none') : t('vault.seal.picked', { name: file.name, count: file.size })}
      </span>
    </div>
  )
}
