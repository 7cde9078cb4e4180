import { useState } from 'react'
import formCss from '../form/form.module.css'
import { useDesk, useUnsentFacts } from '../job/desk.ts'
import css from '../job/job.module.css'
import { keepPlace } from '../job/keep-place.ts'
import { Part } from '../job/Part.tsx'
import { refresh } from '../sync/live.ts'
import { needWords } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { clock, day } from '../words/instants.ts'
import { problemWords } from '../words/problem.ts'
import { SealedDocument } from './SealedDocument.tsx'
import { NotInLine, NotProven, sealHere } from './sealing.ts'

/** How long sealing waits for what others recorded, before it seals what is here. Milliseconds. */
const patience = 3_000

const sealing = new Set(['not-sealed', 'changed-since-seal'])

/** Seals the document over everything on record, and opens it. What is still open is said first. */
export function SealPart() {
  const { state, job, signedBy, zone } = useDesk()
  const unsent = useUnsentFacts()
  const [busy, setBusy] = useState(false)
  const [problem, setProblem] = useState('')
  const [anyway, setAnyway] = useState(false)
  const open = state.tumblers.flatMap((tumbler) => tumbler.needs).filter((need) => !sealing.has(need.code))
  const { seal } = state

  const go = async () => {
    keepPlace()
    setBusy(true)
    setProblem('')
    try {
      await signedBy()
      // What others recorded belongs under the seal, but no connection must not keep it waiting.
      await Promise.race([refresh(job), new Promise((resolve) => setTimeout(resolve, patience))])
      await sealHere({ job, evenIfNotReady: anyway })
    } catch (error) {
      setProblem(sealProblem(error))
    } finally {
      setBusy(false)
    }
  }

  return (
    <Part
      title={t('seal.title')}
      need="not-sealed changed-since-seal seal-the-document"
      about={
        seal !== null && (
          <p>
            {t('seal.sealed', {
              day: day(seal.at, zone),
              time: clock(seal.at, zone),
              by: seal.by,
              count: seal.count,
            })}{' '}
            {state.factsSinceSeal > 0 && t('seal.changed', { count: state.factsSinceSeal })}
          </p>
        )
      }
    >
      {open.length > 0 && (
        <>
          <p>{t('seal.open', { count: open.length })}</p>
          <ul className={css.openList}>
            {open.map((need, index) => (
              // Two needs may share code and chapter; the list is rebuilt whole on every change.
              // biome-ignore lint/suspicious/noArrayIndexKey: the list is rebuilt whole
              <li key={index}>{needWords(need)}</li>
            ))}
          </ul>
          <label className={css.check}>
            <input type="checkbox" checked={anyway} onChange={(event) => setAnyway(event.target.checked)} />
            {t('seal.anyway')}
          </label>
        </>
      )}
      {unsent.size > 0 && <p>{t('seal.unsent', { count: unsent.size })}</p>}
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
      <div className={formCss.foot}>
        <button
          type="button"
          className={seal === null || state.factsSinceSeal > 0 ? formCss.submit : formCss.plain}
          disabled={busy || (open.length > 0 && !anyway)}
          onClick={() => void go()}
        >
          {seal === null ? t('seal.go') : t('seal.again')}
        </button>
        <span role="status">{busy ? t('seal.busy') : ''}</span>
      </div>
      {seal !== null && <SealedDocument />}
    </Part>
  )
}

function sealProblem(error: unknown): string {
  if (error instanceof NotInLine) return t('seal.not-in-line')
  if (error instanceof NotProven) return t('seal.not-proven')
  return problemWords(error)
}
