import { Amount } from '../form/Amount.tsx'
import { Choice } from '../form/Choice.tsx'
import formCss from '../form/form.module.css'
import { t } from '../words/index.ts'
import type { FieldsProps } from './BatteryFields.tsx'

const supplies = ['none', 'supply', 'charger'] as const

/** What feeds the car beside its battery. */
export function SupplyFields({ draft, change }: FieldsProps) {
  return (
    <>
      <Choice
        label={t('power.feeds')}
        hint={t('power.feeds.hint')}
        value={draft.supplyKind}
        onChange={(supplyKind) => change({ supplyKind })}
        options={supplies.map((one) => [one, t(`power.feeds.${one}`)])}
      />
      {draft.supplyKind !== 'none' && (
        <div className={formCss.row}>
          <Amount
            label={t('power.supply.amperes')}
            unit="A"
            value={draft.supplyAmperes}
            onChange={(supplyAmperes) => change({ supplyAmperes })}
            most={2000}
            step={5}
            decimals={1}
            start={30}
            optional
          />
          <Amount
            label={t('power.supply.volts')}
            unit="V"
            hint={t('power.supply.volts.hint')}
            value={draft.supplyVolts}
            onChange={(supplyVolts) => change({ supplyVolts })}
            least={10}
            most={16}
            step={0.1}
            decimals={2}
            start={draft.targetVolts ?? 13.6}
            optional
          />
        </div>
      )}
    </>
  )
}
