import type { ScanPhase } from '@shearline/keywork'
import { useState } from 'react'
import { Choice } from '../form/Choice.tsx'
import formCss from '../form/form.module.css'
import { Names } from '../form/Names.tsx'
import { Words } from '../form/Words.tsx'
import { RecordForm, useFresh } from '../job/Part.tsx'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'

/** A scan typed from the technician's own equipment, one control unit at a time. */
export function TypedScan({ phases }: { readonly phases: readonly ScanPhase[] }) {
  const [fresh, renew] = useFresh()
  return (
    <details className={formCss.more}>
      <summary>{t('scan.type')}</summary>
      <TypedScanForm key={fresh} phases={phases} onDone={renew} />
    </details>
  )
}

function TypedScanForm({
  phases,
  onDone,
}: {
  readonly phases: readonly ScanPhase[]
  readonly onDone: () => void
}) {
  const [phase, setPhase] = useState<ScanPhase | null>(phases.length === 1 ? (phases[0] ?? null) : null)
  const [unit, setUnit] = useState('')
  const [codes, setCodes] = useState<readonly string[]>([])
  const faults = codes
    .flatMap((line) => line.split(/[\s,;]+/))
    .filter((code) => code !== '')
    .map((code) => ({ code: code.toUpperCase(), raw: '', status: null }))
  return (
    <RecordForm
      submit={t('scan.record')}
      onDone={onDone}
      drafts={() =>
        phase === null
          ? null
          : [
              {
                kind: 'scan-attached',
                body: { phase, units: [{ unit, time: null, availability: null, faults }] },
              },
            ]
      }
    >
      {phases.length > 1 && (
        <Choice
          label={t('scan.which')}
          value={phase}
          onChange={setPhase}
          options={phases.map((one) => [one, say(`phase.${one}`)])}
        />
      )}
      <Words label={t('scan.unit')} hint={t('scan.unit.hint')} value={unit} onChange={setUnit} />
      <Names label={t('scan.codes')} hint={t('scan.codes.hint')} value={codes} onChange={setCodes} mono />
    </RecordForm>
  )
}
