import type { Fact } from '@shearline/jobfile'
import { type FormEvent, useState } from 'react'
import { Dialog } from '../form/Dialog.tsx'
import formCss from '../form/form.module.css'
import { Words } from '../form/Words.tsx'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import { useDesk } from './desk.ts'

/** Withdraws a fact: it stays on record, struck through, with who, when and why. */
export function Withdraw({
  fact,
  words,
  onClose,
}: {
  readonly fact: Fact
  readonly words: string
  readonly onClose: () => void
}) {
  const { record } = useDesk()
  const [reason, setReason] = useState('')
  const [problem, setProblem] = useState('')
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    try {
      await record([{ kind: 'corrected', body: { fact: fact.id, action: 'withdrawn', reason } }])
      onClose()
    } catch (error) {
      setProblem(problemWords(error))
    }
  }
  return (
    <Dialog title={t('withdraw.title')} onClose={onClose}>
      <p>{words}</p>
      <form className={formCss.dialogBody} onSubmit={(event) => void keep(event)}>
        <Words label={t('withdraw.reason')} hint={t('withdraw.hint')} value={reason} onChange={setReason} />
        {problem !== '' && (
          <p className={formCss.problem} role="alert">
            {problem}
          </p>
        )}
        <div className={formCss.foot}>
          <button type="submit" className={formCss.submit}>
            {t('record.withdraw')}
          </button>
          <button type="button" className={formCss.plain} onClick={onClose}>
            {t('cancel')}
          </button>
        </div>
      </form>
    </Dialog>
  )
}
