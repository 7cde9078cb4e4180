import { type FormEvent, type ReactNode, useId, useState } from 'react'
import formCss from '../form/form.module.css'
import type { KeptBlob } from '../sync/database.ts'
import type { Draft } from '../sync/write.ts'
import { t } from '../words/index.ts'
import { problemWords } from '../words/problem.ts'
import { useDesk } from './desk.ts'
import css from './job.module.css'

/**
 * One matter of a chapter. `need` names the needs it answers, so that the next step can lead here. Once it is
 * settled its form folds away under `more`.
 */
export function Part({
  title,
  need = '',
  settled = false,
  more,
  children,
  about,
}: {
  readonly title: string
  readonly need?: string
  readonly settled?: boolean
  readonly more?: string
  /** What is on record of it. */
  readonly about?: ReactNode
  readonly children?: ReactNode
}) {
  const id = useId()
  return (
    <section className={css.part} aria-labelledby={id} data-need={need}>
      <h3 className={css.partTitle} id={id}>
        {title}
      </h3>
      {about}
      {settled && children !== undefined ? (
        <details className={formCss.more}>
          <summary>{more ?? t('part.more')}</summary>
          {children}
        </details>
      ) : (
        children
      )}
    </section>
  )
}

/** A form that records facts. It starts anew after each recording. */
export function RecordForm({
  drafts,
  blobs,
  submit,
  onDone,
  children,
  stop = false,
}: {
  /** The facts to record, or null while something is still missing. */
  readonly drafts: () => readonly Draft[] | null
  readonly blobs?: readonly KeptBlob[]
  readonly submit: string
  readonly onDone?: () => void
  readonly children?: ReactNode
  readonly stop?: boolean
}) {
  const { record } = useDesk()
  const [problem, setProblem] = useState('')
  const [busy, setBusy] = useState(false)
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    const facts = drafts()
    if (facts === null || busy) return
    setBusy(true)
    try {
      await record(facts, blobs)
      setProblem('')
      onDone?.()
    } catch (error) {
      setProblem(problemWords(error))
    } finally {
      setBusy(false)
    }
  }
  return (
    <form className={formCss.form} onSubmit={(event) => void keep(event)}>
      {children}
      {problem !== '' && (
        <p className={formCss.problem} role="alert">
          {problem}
        </p>
      )}
      <div className={formCss.foot}>
        <button
          type="submit"
          className={stop ? `${formCss.plain} ${formCss.stop}` : formCss.submit}
          disabled={busy}
        >
          {submit}
        </button>
      </div>
    </form>
  )
}

/** A count that renews a form's fields: use it as their `key`. */
export function useFresh(): readonly [fresh: number, renew: () => void] {
  const [fresh, setFresh] = useState(0)
  return [fresh, () => setFresh((count) => count + 1)]
}
