import { type ChapterName, cautionsDue } from '@shearline/jobfile'
import { useId } from 'react'
import { useDesk } from '../job/desk.ts'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { CautionCard } from './CautionCard.tsx'
import css from './cautions.module.css'

/** The cautions that matter in a chapter and nobody has read yet, at its head. They go when they are read. */
export function DueHere({ chapter }: { readonly chapter: ChapterName }) {
  const { state } = useDesk()
  const id = useId()
  const due = cautionsDue(state, chapter)
  // The hand-over lists them all anyway.
  if (due.length === 0 || chapter === 'handover') return null
  return (
    <section className={css.due} aria-labelledby={id}>
      <h3 className={css.dueTitle} id={id}>
        {t('cautions.here', { count: due.length })}
      </h3>
      <ul className={css.cards}>
        {due.map(({ caution }) => (
          <CautionCard key={caution} caution={caution} need={false} />
        ))}
      </ul>
      <p className={css.defers}>{say('caution.defers')}</p>
    </section>
  )
}
