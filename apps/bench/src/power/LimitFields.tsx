import { Amount } from '../form/Amount.tsx'
import { Choice } from '../form/Choice.tsx'
import formCss from '../form/form.module.css'
import { Words } from '../form/Words.tsx'
import { t } from '../words/index.ts'
import type { FieldsProps } from './BatteryFields.tsx'

/** Floor, target and stop with where they come from. */
export function LimitFields({ draft, change }: FieldsProps) {
  return (
    <>
      <Choice
        label={t('power.who-says')}
        hint={t('power.who-says.hint')}
        value={draft.makerSays ? 'maker' : 'own'}
        onChange={(who) => change({ makerSays: who === 'maker' })}
        options={[
          ['own', t('power.who-says.own')],
          ['maker', t('power.who-says.maker')],
        ]}
      />
      <div className={formCss.row}>
        <Amount
          label={t('plan.floor')}
          unit="V"
          hint={t('plan.floor.hint')}
          value={draft.floorVolts}
          onChange={(floorVolts) => change({ floorVolts })}
          least={6}
          most={16}
          step={0.1}
          decimals={2}
          start={12}
        />
        <Amount
          label={t('power.target')}
          unit="V"
          hint={t('power.target.hint')}
          value={draft.targetVolts}
          onChange={(targetVolts) => change({ targetVolts })}
          least={10}
          most={16}
          step={0.1}
          decimals={2}
          start={13.6}
          optional
        />
        <Amount
          label={t('power.stop')}
          unit="V"
          hint={t('power.stop.hint')}
          value={draft.stopVolts}
          onChange={(stopVolts) => change({ stopVolts })}
          least={5}
          most={16}
          step={0.1}
          decimals={2}
          start={11.5}
          optional
        />
      </div>
      <Words
        label={draft.makerSays ? t('power.maker.source') : t('plan.floor.source')}
        value={draft.floorSource}
        onChange={(floorSource) => change({ floorSource })}
      />
      {!draft.makerSays && (
        <Words
          label={t('power.target.source')}
          value={draft.targetSource}
          onChange={(targetSource) => change({ targetSource })}
          optional
        />
      )}
    </>
  )
}
