import { canBeCorrected, type Fact } from '@shearline/jobfile'
import { useEffect, useState } from 'react'
import formCss from '../form/form.module.css'
import { factSentence } from '../job/fact-sentence.ts'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import css from './capture.module.css'

/** How long the notice stands, milliseconds. Afterwards every fact can still be withdrawn where it stands on record. */
const standsFor = 20_000

/**
 * What was just recorded, with the way to take it back at once. Taking back is a correction: the fact stays on record,
 * struck through.
 */
export function TakeBack({
  facts,
  onTakeBack,
  onClose,
}: {
  readonly facts: readonly Fact[]
  readonly onTakeBack: (facts: readonly Fact[]) => Promise<void>
  readonly onClose: () => void
}) {
  const [problem, setProblem] = useState('')
  const [held, setHeld] = useState(false)
  const open = facts.filter((fact) => canBeCorrected(fact.kind))
  const first = open[0]
  useEffect(() => {
    if (held || facts.length === 0) return
    const timer = setTimeout(onClose, standsFor)
    return () => clearTimeout(timer)
  }, [facts, held, onClose])
  return (
    <div className={css.undo} role="status">
      {first !== undefined && (
        // biome-ignore lint/a11y/noStaticElementInteractions: only keeps the notice while it is under a finger or focused
        <div
          className={css.undoStrip}
          onFocus={() => setHeld(true)}
          onBlur={() => setHeld(false)}
          onPointerEnter={() => setHeld(true)}
          onPointerLeave={() => setHeld(false)}
        >
          <span>{problem === '' ? t('undo.done', { what: factSentence(first) }) : problem}</span>
          <button
            type="button"
            className={formCss.plain}
            onClick={() => void onTakeBack(open).catch((error: unknown) => setProblem(problemWords(error)))}
          >
            {t('undo.do')}
          </button>
          <button type="button" className={css.close} aria-label={t('undo.close')} onClick={onClose}>
            ×
          </button>
        </div>
      )}
    </div>
  )
}
