import type { VaultRecipient } from '@shearline/jobfile'
import { type FormEvent, Fragment, useEffect, useId, useState } from 'react'
import formCss from '../form/form.module.css'
import { Words } from '../form/Words.tsx'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import { OfficeRecipients } from './OfficeRecipients.tsx'
import { dropRecipient, nameRecipient, ownRecipients } from './recipients.ts'
import css from './vault.module.css'

/** The firm's recipients: who can open the vehicle secrets that this device seals. */
export function Recipients() {
  const title = useId()
  const [list, setList] = useState<readonly VaultRecipient[]>([])
  const [recipient, setRecipient] = useState('')
  const [name, setName] = useState('')
  const [problem, setProblem] = useState('')
  const show = (work: Promise<readonly VaultRecipient[]>) =>
    work.then(
      (next) => {
        setList(next)
        setProblem('')
        return true
      },
      (error: unknown) => {
        setProblem(problemWords(error))
        return false
      },
    )
  // biome-ignore lint/correctness/useExhaustiveDependencies: read once, when the page opens
  useEffect(() => {
    void show(ownRecipients())
  }, [])
  const add = async (event: FormEvent) => {
    event.preventDefault()
    if (!(await show(nameRecipient({ recipient, name })))) return
    setRecipient('')
    setName('')
  }
  return (
    <form className={formCss.form} aria-labelledby={title} onSubmit={(event) => void add(event)}>
      <h2 id={title} className={css.title}>
        {t('vault.recipients')}
      </h2>
      <p>{t('vault.recipients.about')}</p>
      <ul className={css.list}>
        {list.map((one) => (
          <li key={one.recipient} className={css.row}>
            <span>
              {one.name}
              <code className={css.key}>{one.recipient}</code>
            </span>
            <button
              type="button"
              className={formCss.plain}
              aria-label={t('vault.recipients.remove-named', { name: one.name })}
              onClick={() => void show(dropRecipient(one.recipient))}
            >
              {t('vault.recipients.remove')}
            </button>
          </li>
        ))}
      </ul>
      {list.length === 0 && <p>{t('vault.recipients.none')}</p>}
      <OfficeRecipients here={list} onTake={(one) => void show(nameRecipient(one))} />
      {/* Emptied after a key was added, they are new fields: the old ones would show that something is missing. */}
      <Fragment key={list.length}>
        <Words
          label={t('vault.recipients.key')}
          hint={t('vault.recipients.key.hint')}
          value={recipient}
          onChange={setRecipient}
          mono
          autoCapitalize="none"
        />
        <Words label={t('vault.recipients.name')} value={name} onChange={setName} maxLength={120} />
      </Fragment>
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
      <div className={formCss.foot}>
        <button type="submit" className={formCss.submit}>
          {t('vault.recipients.add')}
        </button>
      </div>
    </form>
  )
}
