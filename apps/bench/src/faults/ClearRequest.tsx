import { useState } from 'react'
import { Several } from '../form/Several.tsx'
import { Consent } from '../job/Consent.tsx'
import { useDesk } from '../job/desk.ts'
import { RecordForm } from '../job/Part.tsx'
import { t } from '../words/index.ts'

/** Records that the technician asked control units to clear, with their own equipment, after the scan was saved. */
export function ClearRequest({ onDone }: { readonly onDone: () => void }) {
  const { state } = useDesk()
  const offered = [...new Set(state.faults.faults.filter((line) => !line.airbag).map((line) => line.unit))]
  const [units, setUnits] = useState<readonly string[]>([])
  return (
    <>
      <Consent about="clear-faults" />
      <RecordForm
        submit={t('clear.record')}
        onDone={onDone}
        drafts={() =>
          units.length === 0 ? null : [{ kind: 'clear-requested', body: { units: [...units] } }]
        }
      >
        <Several
          label={t('clear.units')}
          hint={t('clear.airbag')}
          value={units}
          onChange={setUnits}
          options={offered.map((unit) => [unit, unit])}
        />
      </RecordForm>
    </>
  )
}
