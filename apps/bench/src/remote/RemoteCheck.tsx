import { lazy, Suspense, useState } from 'react'
import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import { factSentence } from '../job/fact-sentence.ts'
import { Part } from '../job/Part.tsx'
import { t } from '../words/index.ts'

/** Measuring and drawing are wanted on few jobs: loaded when asked for. */
const RemoteDialog = lazy(async () => ({ default: (await import('./RemoteDialog.tsx')).RemoteDialog }))

/** The way to the comparison, in the chapter where the new key is prepared. */
export function RemoteCheck() {
  const { facts, state } = useDesk()
  const [open, setOpen] = useState(false)
  const withdrawn = new Set(
    state.corrections.filter(({ stands }) => stands === 'applied').map(({ fact }) => fact),
  )
  const kept = facts.filter(({ kind, id }) => kind === 'remote-compared' && !withdrawn.has(id))
  return (
    <Part
      title={t('remote.title')}
      about={
        kept.length > 0 && (
          <ul>
            {kept.map((fact) => (
              <li key={fact.id}>{factSentence(fact)}</li>
            ))}
          </ul>
        )
      }
    >
      {kept.length === 0 && <p>{t('remote.why')}</p>}
      <div className={formCss.foot}>
        <button type="button" className={formCss.plain} onClick={() => setOpen(true)}>
          {t('remote.open')}
        </button>
      </div>
      {open && (
        <Suspense>
          <RemoteDialog onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </Part>
  )
}
