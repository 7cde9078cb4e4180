import type { VaultRecipient } from '@shearline/jobfile'
import { useEffect, useState } from 'react'
import { Several } from '../form/Several.tsx'
import { ownRecipients } from '../vault/recipients.ts'
import { listMark } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import css from './recording.module.css'

interface Props {
  /** To whom the file will be sealed; null: the file itself is not kept. */
  readonly to: readonly string[] | null
  readonly onChange: (to: readonly string[] | null) => void
}

/** Whether the file itself is kept too, sealed (decision 0011). Not asked for, it is not kept (decision 0005). */
export function KeepSealed({ to, onChange }: Props) {
  const [recipients, setRecipients] = useState<readonly VaultRecipient[] | null>(null)
  const [problem, setProblem] = useState('')
  useEffect(() => {
    ownRecipients().then(setRecipients, (error: unknown) => setProblem(problemWords(error)))
  }, [])
  if (problem !== '') return <p role="alert">{problem}</p>
  if (recipients === null) return null
  if (recipients.length === 0)
    return (
      <p className={css.hint}>
        {t('recording.sealed.nobody')} <a href="#/device">{t('vault.seal.to-device')}</a>
      </p>
    )
  return (
    <Several
      label={t('recording.sealed')}
      hint={t('recording.sealed.hint', { names: recipients.map(({ name }) => name).join(listMark()) })}
      value={to === null ? [] : ['sealed']}
      onChange={(next) => onChange(next.length === 0 ? null : recipients.map(({ recipient }) => recipient))}
      options={[['sealed', t('recording.sealed.do')]]}
    />
  )
}
