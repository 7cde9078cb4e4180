import { readScanReport } from '@shearline/keywork'
import {
  type ChangeEvent,
  type DragEvent,
  type ReactNode,
  useEffect,
  useEffectEvent,
  useId,
  useState,
} from 'react'
import formCss from '../../form/form.module.css'
import type { SharedItem } from '../../shared/store.ts'
import { t } from '../../words/index.ts'
import type { ScannedUnits } from '../scanned.ts'
import { ReportReview } from './ReportReview.tsx'
import css from './report.module.css'
import { type Source, sourceOf } from './source.ts'
import { NoText, sourceText } from './source-text.ts'

/** A report pasted, dropped or opened as a file; then what it was understood to say. */
export function ReportIn({
  shared,
  keep,
}: {
  /** What another app shared for this job; read at once. */
  readonly shared: SharedItem | null
  readonly keep: (units: ScannedUnits, source: Source) => ReactNode
}) {
  const id = useId()
  const [text, setText] = useState('')
  const [source, setSource] = useState<Source | null>(null)
  const [busy, setBusy] = useState('')
  const [problem, setProblem] = useState('')
  const take = (words: string) =>
    void sourceOf(words).then(setSource, (error: unknown) => setProblem(problemOf(error)))
  const open = (file: File | undefined) => {
    if (file === undefined) return
    setBusy(t('report.reading', { name: file.name }))
    setProblem('')
    sourceText(file)
      .then((read) => sourceOf(read, file))
      .then(setSource, (error: unknown) => setProblem(problemOf(error)))
      .finally(() => setBusy(''))
  }
  const takeShared = useEffectEvent(() => {
    if (shared === null) return
    if (shared.file === null) take(shared.text)
    else open(shared.file)
  })
  useEffect(() => takeShared(), [])
  const pick = (event: ChangeEvent<HTMLInputElement>) => {
    open(event.target.files?.[0])
    event.target.value = ''
  }
  // The page around this takes dropped files for recordings; here they are reports.
  const own = (event: DragEvent) => {
    event.preventDefault()
    event.stopPropagation()
  }
  const drop = (event: DragEvent) => {
    own(event)
    const dropped = event.dataTransfer.getData('text/plain')
    if (event.dataTransfer.files[0] === undefined && dropped !== '') take(dropped)
    else open(event.dataTransfer.files[0])
  }
  if (source !== null) {
    return (
      <ReportReview
        report={readScanReport(source.text)}
        text={source.text}
        keep={(units) => keep(units, source)}
        onOther={() => {
          setText(source.text)
          setSource(null)
        }}
      />
    )
  }
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping is a quicker way to the button below
    <div className={css.entry} onDragEnter={own} onDragLeave={own} onDragOver={own} onDrop={drop}>
      <label className={formCss.label} htmlFor={id}>
        {t('report.paste')}
      </label>
      <textarea
        id={id}
        className={css.paste}
        value={text}
        onChange={(event) => setText(event.target.value)}
        rows={7}
        spellCheck={false}
        autoComplete="off"
        aria-describedby={`${id}-hint`}
      />
      <p className={formCss.hint} id={`${id}-hint`}>
        {t('report.paste.hint')}
      </p>
      <p className={problem === '' ? 'sr' : formCss.problem} role="status">
        {problem || busy}
      </p>
      <div className={formCss.foot}>
        <button
          type="button"
          className={formCss.submit}
          disabled={text.trim() === ''}
          onClick={() => take(text)}
        >
          {t('report.read')}
        </button>
        <input
          id={`${id}-file`}
          className="sr"
          type="file"
          accept=".txt,.csv,.tsv,.json,.pdf,.log,text/*,application/json,application/pdf"
          onChange={pick}
        />
        <label htmlFor={`${id}-file`} className={css.file}>
          {t('report.open')}
        </label>
        {busy !== '' && <span className={formCss.hint}>{busy}</span>}
      </div>
    </div>
  )
}

function problemOf(error: unknown): string {
  if (!(error instanceof NoText)) return t('report.damaged', { why: String(error) })
  return error.reason === 'damaged'
    ? t('report.damaged', { why: error.message })
    : t(`report.${error.reason}`)
}
