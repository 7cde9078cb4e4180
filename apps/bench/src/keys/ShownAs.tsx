import { useState } from 'react'
import formCss from '../form/form.module.css'
import { Words } from '../form/Words.tsx'
import { useDesk } from '../job/desk.ts'
import { RecordForm } from '../job/Part.tsx'
import { recorded } from '../power/recorded.ts'
import type { Draft } from '../sync/write.ts'
import { t } from '../words/index.ts'

/** How the car itself shows each key on the bench: many cars do so only once the equipment is connected. */
export function ShownAs() {
  const desk = useDesk()
  const labels = recorded(desk, 'key-labelled')
  const keys = desk.state.keys.filter((key) => key.onBench)
  const [written, setWritten] = useState<Readonly<Record<string, string>>>({})
  if (keys.length === 0) return null
  const drafts = (): readonly Draft[] | null => {
    const changed = keys.flatMap((key): Draft[] => {
      const words = written[key.id]?.trim()
      if (words === undefined || words === '' || words === key.shownAs) return []
      // A label is recorded anew as it stands, with what the car shows.
      const label = labels.findLast(({ body }) => body.key === key.id)?.body
      return label === undefined ? [] : [{ kind: 'key-labelled', body: { ...label, shownAs: words } }]
    })
    return changed.length === 0 ? null : changed
  }
  return (
    <details className={formCss.more}>
      <summary>{t('keys.shown-as.title')}</summary>
      <RecordForm submit={t('keys.shown-as.record')} drafts={drafts} onDone={() => setWritten({})}>
        <p className={formCss.hint}>{t('keys.shown-as.hint')}</p>
        {keys.map((key) => (
          <Words
            key={key.id}
            label={t('rehearsal.key', { key: key.id })}
            value={written[key.id] ?? key.shownAs ?? ''}
            onChange={(words) => setWritten({ ...written, [key.id]: words })}
            maxLength={60}
            optional
          />
        ))}
      </RecordForm>
    </details>
  )
}
