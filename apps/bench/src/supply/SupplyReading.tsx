import type { Body } from '@shearline/jobfile'
import { useState } from 'react'
import { Amount } from '../form/Amount.tsx'
import { useDesk } from '../job/desk.ts'
import { Part, RecordForm, useFresh } from '../job/Part.tsx'
import { volts as voltsWords } from '../words/amounts.ts'
import { t } from '../words/index.ts'

type During = Body<'supply-read'>['during']

const needs: Readonly<Record<During, string>> = {
  rest: 'supply-at-rest-missing',
  session: 'supply-during-missing',
  after: 'supply-after-missing',
}

/** One reading of the supply, typed from the meter. */
export function SupplyReading({ during }: { readonly during: During }) {
  const { state } = useDesk()
  const readings = state.supply.readings.filter((reading) => reading.during === during)
  const last = readings.at(-1)
  const [fresh, renew] = useFresh()
  return (
    <Part
      title={t(`supply.${during}`)}
      need={needs[during]}
      settled={last !== undefined}
      more={t('supply.again')}
      about={
        last !== undefined && (
          <p>{t('supply.last', { volts: voltsWords(last.volts), count: readings.length })}</p>
        )
      }
    >
      <ReadingForm key={fresh} during={during} onDone={renew} />
    </Part>
  )
}

function ReadingForm({ during, onDone }: { readonly during: During; readonly onDone: () => void }) {
  const [volts, setVolts] = useState<number | null>(null)
  return (
    <RecordForm
      submit={t('record')}
      onDone={onDone}
      drafts={() =>
        volts === null ? null : [{ kind: 'supply-read', body: { volts, during, source: 'meter' } }]
      }
    >
      <Amount
        label={t('supply.volts')}
        unit="V"
        hint={t(`supply.${during}.hint`)}
        value={volts}
        onChange={setVolts}
        most={60}
        step={0.1}
        decimals={2}
      />
    </RecordForm>
  )
}
