import type { ScanPhase } from '@shearline/keywork'
import { useState } from 'react'
import { Choice } from '../form/Choice.tsx'
import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import { RecordForm, useFresh } from '../job/Part.tsx'
import { ImportRecording } from '../recording/ImportRecording.tsx'
import { forgetShared } from '../shared/store.ts'
import { useSharedFor } from '../shared/useShared.ts'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { Keypad } from './keypad/Keypad.tsx'
import { ReportIn } from './report/ReportIn.tsx'
import type { Source } from './report/source.ts'
import css from './scan-in.module.css'
import { type ScannedUnits, scanDraft } from './scanned.ts'

type Way = 'report' | 'keypad'

/** Every way a scan comes in: a recording, a report from the technician's own equipment, or typed. */
export function ScanIn({ phases }: { readonly phases: readonly ScanPhase[] }) {
  const { job, state } = useDesk()
  const shared = useSharedFor(job)
  // The first scan comes in on arrival, later ones where faults are compared: never in both places.
  const first = !state.scans.some((scan) => scan.phase === 'before')
  const mine = shared !== null && phases.includes('before') === first ? shared : null
  const [chosen, setWay] = useState<Way | null | undefined>(undefined)
  const way = chosen === undefined ? (mine === null ? null : 'report') : chosen
  const [fresh, renew] = useFresh()
  const [kept, setKept] = useState('')
  const pick = (next: Way) => {
    setKept('')
    setWay(way === next ? null : next)
  }
  const done = (phase: ScanPhase, units: ScannedUnits) => {
    setKept(
      t('scan.kept', {
        units: units.length,
        faults: units.reduce((sum, unit) => sum + unit.faults.length, 0),
        phase: say(`phase.${phase}`),
      }),
    )
    setWay(null)
    renew()
    if (mine !== null && way === 'report') void forgetShared(mine.id)
  }
  const keep = (units: ScannedUnits, source: Source | null = null) => (
    <KeepScan phases={phases} units={units} source={source} onDone={done} />
  )
  return (
    <div className={css.ways}>
      <ImportRecording />
      <div className={css.doors}>
        <button
          type="button"
          className={css.door}
          aria-expanded={way === 'report'}
          onClick={() => pick('report')}
        >
          <strong>{t('scan.report')}</strong>
          <span>{t('scan.report.hint')}</span>
        </button>
        <button
          type="button"
          className={css.door}
          aria-expanded={way === 'keypad'}
          onClick={() => pick('keypad')}
        >
          <strong>{t('scan.type')}</strong>
          <span>{t('scan.type.hint')}</span>
        </button>
      </div>
      <p className={kept === '' ? 'sr' : css.kept} role="status">
        {kept}
      </p>
      {way === 'report' && <ReportIn key={`${fresh} ${mine?.id}`} shared={mine} keep={keep} />}
      {way === 'keypad' && <Keypad key={fresh} keep={keep} />}
    </div>
  )
}

/** The last step of every way: which scan it is, and keeping it. */
function KeepScan({
  phases,
  units,
  source,
  onDone,
}: {
  readonly phases: readonly ScanPhase[]
  readonly units: ScannedUnits
  readonly source: Source | null
  readonly onDone: (phase: ScanPhase, units: ScannedUnits) => void
}) {
  const [only] = phases
  const [phase, setPhase] = useState<ScanPhase | null>(
    phases.length === 1 && only !== undefined ? only : null,
  )
  if (units.length === 0) return <p className={formCss.hint}>{t('scan.nothing-to-keep')}</p>
  return (
    <RecordForm
      submit={t('scan.keep')}
      onDone={() => phase !== null && onDone(phase, units)}
      drafts={() => (phase === null ? null : [scanDraft(phase, units, source)])}
      {...(source === null ? {} : { blobs: [source.blob] })}
    >
      {phases.length > 1 && (
        <Choice
          label={t('scan.which')}
          value={phase}
          onChange={setPhase}
          options={phases.map((one) => [one, say(`phase.${one}`)])}
        />
      )}
    </RecordForm>
  )
}
