import type { Body } from '@shearline/jobfile'
import { useState } from 'react'
import { Amount } from '../form/Amount.tsx'
import { Choice } from '../form/Choice.tsx'
import { useDesk } from '../job/desk.ts'
import { Part, RecordForm, useFresh } from '../job/Part.tsx'
import { AfterPart } from '../power/AfterPart.tsx'
import { Watch } from '../power/Watch.tsx'
import { volts as voltsWords } from '../words/amounts.ts'
import { t } from '../words/index.ts'

type During = Body<'supply-read'>['during']

const needs: Readonly<Record<During, string>> = {
  rest: 'supply-at-rest-missing',
  session: 'supply-during-missing',
  after: 'supply-after-missing',
}

/** The supply at one time of the job: a reading typed from the meter; the watch during the work; what is left after. */
export function SupplyReading({ during }: { readonly during: During }) {
  return during === 'session' ? <Session /> : <Once during={during} />
}

function Session() {
  return (
    <Part title={t('supply.session')} need={needs.session}>
      <Watch />
    </Part>
  )
}

function Once({ during }: { readonly during: 'rest' | 'after' }) {
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
          <>
            <p>{t('supply.last', { volts: voltsWords(last.volts), count: readings.length })}</p>
            {during === 'after' && <AfterPart />}
          </>
        )
      }
    >
      <ReadingForm key={fresh} during={during} onDone={renew} />
    </Part>
  )
}

function ReadingForm({ during, onDone }: { readonly during: 'rest' | 'after'; readonly onDone: () => void }) {
  const [volts, setVolts] = useState<number | null>(null)
  const [removed, setRemoved] = useState<'yes' | 'no' | null>(null)
  return (
    <RecordForm
      submit={t('record')}
      onDone={onDone}
      drafts={() =>
        volts === null
          ? null
          : [
              {
                kind: 'supply-read',
                body: {
                  volts,
                  during,
                  source: 'meter',
                  ...(removed === null ? {} : { supplyRemoved: removed === 'yes' }),
                },
              },
            ]
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
        start={12.5}
      />
      {during === 'after' && (
        <Choice
          label={t('power.after.off')}
          value={removed}
          onChange={setRemoved}
          options={[
            ['yes', t('yes')],
            ['no', t('no')],
          ]}
          optional
        />
      )}
    </RecordForm>
  )
}
