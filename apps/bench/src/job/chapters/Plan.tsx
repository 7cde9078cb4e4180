import type { Body } from '@shearline/jobfile'
import { useState } from 'react'
import { Amount } from '../../form/Amount.tsx'
import { Choice } from '../../form/Choice.tsx'
import { Words } from '../../form/Words.tsx'
import { KeyCards } from '../../keys/KeyCards.tsx'
import { volts } from '../../words/amounts.ts'
import { say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import { Consent } from '../Consent.tsx'
import { useDesk } from '../desk.ts'
import { Part, RecordForm, useFresh } from '../Part.tsx'
import { Rehearsal } from '../Rehearsal.tsx'
import { RulePart } from '../Rule.tsx'

/** What will happen, before it happens: rule, power, rehearsal, and the customer's word about absent keys. */
export function PlanChapter() {
  const { state } = useDesk()
  const drops = state.teaching.rule === null || !state.teaching.rule.kind.startsWith('append')
  const someAbsent = state.absentKeys.length > 0 || (state.tally.unaccounted ?? 0) > 0
  return (
    <>
      <RulePart />
      <FloorPart />
      <KeyCards origin="new" />
      <Rehearsal />
      {drops && someAbsent && <Consent about="absent-keys-stop" need="consent-absent-keys" />}
    </>
  )
}

const batteries = ['flooded', 'efb', 'agm', 'gel', 'lithium', 'unknown'] as const

function FloorPart() {
  const { state } = useDesk()
  const { setting } = state.supply
  const [fresh, renew] = useFresh()
  return (
    <Part
      title={t('plan.power')}
      need="supply-floor-missing"
      settled={setting !== null}
      more={t('plan.power.again')}
      about={
        setting !== null && (
          <p>
            {t('plan.power.set', {
              volts: volts(setting.floorVolts),
              source: setting.floorSource,
              battery: say(`battery.${setting.battery}`),
            })}
          </p>
        )
      }
    >
      <FloorForm key={fresh} onDone={renew} />
    </Part>
  )
}

function FloorForm({ onDone }: { readonly onDone: () => void }) {
  const [floorVolts, setFloor] = useState<number | null>(12)
  const [floorSource, setSource] = useState(t('plan.floor.usual'))
  const [battery, setBattery] = useState<Body<'supply-set'>['battery'] | null>('unknown')
  return (
    <RecordForm
      submit={t('record')}
      onDone={onDone}
      drafts={() =>
        floorVolts === null || battery === null
          ? null
          : [{ kind: 'supply-set', body: { floorVolts, floorSource, battery } }]
      }
    >
      <Amount
        label={t('plan.floor')}
        unit="V"
        hint={t('plan.floor.hint')}
        value={floorVolts}
        onChange={setFloor}
        most={60}
        step={0.1}
        decimals={2}
      />
      <Words label={t('plan.floor.source')} value={floorSource} onChange={setSource} />
      <Choice
        label={t('plan.battery')}
        value={battery}
        onChange={setBattery}
        options={batteries.map((one) => [one, say(`battery.${one}`)])}
      />
    </RecordForm>
  )
}
