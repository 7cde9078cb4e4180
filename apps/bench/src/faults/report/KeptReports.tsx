import { readScanReport, type ScanPhase } from '@shearline/keywork'
import { useEffect, useMemo, useState } from 'react'
import formCss from '../../form/form.module.css'
import { useDesk } from '../../job/desk.ts'
import { recorded } from '../../power/recorded.ts'
import { blobAnywhere } from '../../recording/kept-blob.ts'
import { say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import { clock, day } from '../../words/instants.ts'
import type { ScannedUnits } from '../scanned.ts'
import { MarkedSource } from './MarkedSource.tsx'
import { linesOfSource } from './marks.ts'
import { noAnswers } from './questions.ts'
import css from './report.module.css'
import { Understood } from './Understood.tsx'

/** Every report that a scan of these moments was read from, beside what was kept of it. */
export function KeptReports({ phases }: { readonly phases: readonly ScanPhase[] }) {
  const desk = useDesk()
  const scans = recorded(desk, 'scan-attached').filter(
    ({ body }) => body.source !== undefined && phases.includes(body.phase),
  )
  if (scans.length === 0) return null
  return (
    <section aria-label={t('report.kept.title')}>
      <h4 className={css.title}>{t('report.kept.title')}</h4>
      {scans.map(({ at, body }) => (
        <KeptReport
          key={at}
          title={t('report.kept.one', {
            phase: say(`phase.${body.phase}`),
            day: day(at, desk.zone),
            time: clock(at, desk.zone),
            name: body.source?.name ?? t('report.kept.pasted'),
          })}
          blob={body.source?.blob ?? ''}
          units={body.units}
        />
      ))}
    </section>
  )
}

function KeptReport({
  title,
  blob,
  units,
}: {
  readonly title: string
  readonly blob: string
  readonly units: ScannedUnits
}) {
  const [open, setOpen] = useState(false)
  return (
    <details className={formCss.more} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{title}</summary>
      {open && <Opened blob={blob} units={units} />}
    </details>
  )
}

function Opened({ blob, units }: { readonly blob: string; readonly units: ScannedUnits }) {
  // undefined while it is being fetched, null when it is nowhere to be had.
  const [text, setText] = useState<string | null | undefined>(undefined)
  useEffect(() => {
    let live = true
    blobAnywhere(blob)
      .then((found) => found?.text() ?? null)
      .then(
        (words) => live && setText(words),
        () => live && setText(null),
      )
    return () => {
      live = false
    }
  }, [blob])
  const report = useMemo(() => readScanReport(text ?? ''), [text])
  if (text === undefined) return <p role="status">{t('report.kept.loading')}</p>
  return (
    <div className={css.review}>
      {text === null ? (
        <p className={formCss.hint}>{t('report.kept.gone')}</p>
      ) : (
        <MarkedSource report={report} lines={linesOfSource(text)} answers={noAnswers} asked={null} />
      )}
      <div className={css.beside}>
        <Understood report={report} units={units} open={false} answers={noAnswers} kept />
      </div>
    </div>
  )
}
