import { Amount } from '../form/Amount.tsx'
import { Choice } from '../form/Choice.tsx'
import formCss from '../form/form.module.css'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import type { PowerDraft } from './plan.ts'

export interface FieldsProps {
  readonly draft: PowerDraft
  readonly change: (part: Partial<PowerDraft>) => void
}

const kinds = ['flooded', 'efb', 'agm', 'gel', 'lithium', 'unknown'] as const
const uses = ['charged', 'drained', 'unknown'] as const
const engines = ['petrol', 'diesel', 'unknown'] as const
const answers = ['yes', 'no', 'unknown'] as const

/** The battery as found. An empty field is "not known": the band then gets wider. */
export function BatteryFields({ draft, change }: FieldsProps) {
  return (
    <>
      <p className={formCss.hint}>{t('power.not-known')}</p>
      <Choice
        label={t('plan.battery')}
        value={draft.kind}
        onChange={(kind) => change({ kind })}
        options={kinds.map((one) => [one, say(`battery.${one}`)])}
      />
      <div className={formCss.row}>
        <Amount
          label={t('power.rest')}
          unit="V"
          hint={t('power.rest.hint')}
          value={draft.restVolts}
          onChange={(restVolts) => change({ restVolts })}
          most={60}
          step={0.1}
          decimals={2}
          start={12.5}
          optional
        />
        <Amount
          label={t('power.hours')}
          unit="h"
          hint={t('power.hours.hint')}
          value={draft.hoursAtRest}
          onChange={(hoursAtRest) => change({ hoursAtRest })}
          most={1000}
          decimals={1}
          start={8}
          optional
        />
      </div>
      <Choice
        label={t('power.use')}
        value={draft.lastUse}
        onChange={(lastUse) => change({ lastUse })}
        options={uses.map((one) => [one, t(`power.use.${one}`)])}
      />
      <div className={formCss.row}>
        <Amount
          label={t('power.capacity')}
          unit="Ah"
          value={draft.capacityAmpereHours}
          onChange={(capacityAmpereHours) => change({ capacityAmpereHours })}
          least={1}
          most={400}
          step={5}
          decimals={1}
          start={60}
          optional
        />
        <Amount
          label={t('power.age')}
          value={draft.ageYears}
          onChange={(ageYears) => change({ ageYears })}
          most={50}
          decimals={1}
          start={4}
          optional
        />
        <Amount
          label={t('power.temperature')}
          unit="°C"
          value={draft.temperatureCelsius}
          onChange={(temperatureCelsius) => change({ temperatureCelsius })}
          least={-60}
          most={80}
          step={5}
          decimals={1}
          start={10}
          optional
        />
        <Amount
          label={t('power.cranking')}
          unit="A"
          value={draft.coldCrankingAmperes}
          onChange={(coldCrankingAmperes) => change({ coldCrankingAmperes })}
          least={50}
          most={3000}
          step={20}
          start={600}
          optional
        />
      </div>
      <Choice
        label={t('power.engine')}
        value={draft.engine}
        onChange={(engine) => change({ engine })}
        options={engines.map((one) => [one, t(`power.engine.${one}`)])}
      />
      <Choice
        label={t('power.monitored')}
        hint={t('power.monitored.hint')}
        value={draft.monitored}
        onChange={(monitored) => change({ monitored })}
        options={answers.map((one) => [one, t(`power.answer.${one}`)])}
      />
      <Choice
        label={t('power.bad')}
        hint={t('power.bad.hint')}
        value={draft.knownBad ? 'yes' : 'no'}
        onChange={(bad) => change({ knownBad: bad === 'yes' })}
        options={[
          ['no', t('no')],
          ['yes', t('yes')],
        ]}
      />
    </>
  )
}
