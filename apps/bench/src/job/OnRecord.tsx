import type { ChapterName } from '@shearline/jobfile'
import { useState } from 'react'
import formCss from '../form/form.module.css'
import { t } from '../words/index.ts'
import { chapterOf } from './chapter-of.ts'
import { useDesk } from './desk.ts'
import css from './job.module.css'
import { RecordLine } from './RecordLine.tsx'

/** Every fact of a chapter as it stands on record, with the way to withdraw it. */
export function OnRecord({ chapter }: { readonly chapter: ChapterName }) {
  const { facts } = useDesk()
  const [open, setOpen] = useState(false)
  const own = facts.filter((fact) => chapterOf(fact) === chapter)
  if (own.length === 0) return null
  return (
    <details className={formCss.more} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{t('record.count', { count: own.length })}</summary>
      {open && (
        <ol className={css.record}>
          {own.map((fact) => (
            <RecordLine key={fact.id} fact={fact} />
          ))}
        </ol>
      )}
    </details>
  )
}
