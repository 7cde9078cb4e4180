import { type Fact, isKnownKind } from '@shearline/jobfile'
import { useState } from 'react'
import formCss from '../../form/form.module.css'
import { useDesk } from '../../job/desk.ts'
import { factSentence } from '../../job/fact-sentence.ts'
import { Withdraw } from '../../job/Withdraw.tsx'
import { t } from '../../words/index.ts'

/** Takes back the last fact of a kind that was noted by mistake. It stays on record, withdrawn, with the reason. */
export function TakeBack({
  kind,
  named,
}: {
  readonly kind: 'key-taught' | 'broke-off' | 'step-done'
  /** What the fact is about: its key, or its step. */
  readonly named?: string
}) {
  const { facts, state } = useDesk()
  const [asking, setAsking] = useState(false)
  const corrected = new Set(state.corrections.map((each) => each.fact))
  const fact = facts.findLast(
    (each: Fact) =>
      isKnownKind(each.kind) &&
      each.kind === kind &&
      !corrected.has(each.id) &&
      (named === undefined || each.body.key === named || each.body.step === named),
  )
  if (fact === undefined) return null
  return (
    <>
      <button type="button" className={formCss.plain} onClick={() => setAsking(true)}>
        {t('take-back')}
      </button>
      {asking && <Withdraw fact={fact} words={factSentence(fact)} onClose={() => setAsking(false)} />}
    </>
  )
}
