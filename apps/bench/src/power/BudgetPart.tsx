import { useMemo, useState } from 'react'
import formCss from '../form/form.module.css'
import { useDesk } from '../job/desk.ts'
import { Part, RecordForm } from '../job/Part.tsx'
import { volts } from '../words/amounts.ts'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { BatteryFields } from './BatteryFields.tsx'
import { refusalWords } from './finding-words.ts'
import { LimitFields } from './LimitFields.tsx'
import { PowerPicture } from './PowerPicture.tsx'
import { draftOf, inputOf, type PowerDraft, settingOf } from './plan.ts'
import css from './power.module.css'
import { StepFields } from './StepFields.tsx'
import { StepTable } from './StepTable.tsx'
import { SupplyFields } from './SupplyFields.tsx'
import { draftWords } from './step-words.ts'
import { usePower } from './usePower.ts'
import { Verdict, Warnings } from './Verdict.tsx'

/** Will it hold? What is known of battery, work and supply, the verdict, and the curve with its band. */
export function BudgetPart() {
  const { state } = useDesk()
  const { setting } = state.supply
  const [changed, setChanged] = useState<PowerDraft | null>(null)
  const onRecord = useMemo(() => draftOf(state, draftWords()), [state])
  const draft = changed ?? onRecord
  const input = useMemo(() => inputOf(draft), [draft])
  const { told, busy } = usePower('battery' in input ? { what: 'budget', input } : null)
  const change = (part: Partial<PowerDraft>) => setChanged({ ...draft, ...part })
  return (
    <Part
      title={t('power.title')}
      need="supply-floor-missing"
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
      <RecordForm
        submit={setting?.budget === undefined ? t('power.record') : t('power.record.again')}
        onDone={() => setChanged(null)}
        drafts={() => {
          const body = told === null || busy ? null : settingOf(draft, told)
          return body === null ? null : [{ kind: 'supply-set', body }]
        }}
      >
        {told === null ? (
          <p role="status">{'battery' in input ? t('power.computing') : null}</p>
        ) : (
          <>
            <Verdict answer={told} busy={busy} />
            <PowerPicture answer={told} />
            <StepTable answer={told} />
            <Warnings answer={told} />
          </>
        )}
        {'path' in input && (
          <p className={formCss.problem} role="alert">
            {refusalWords(input)}
          </p>
        )}
        <Fold title={t('power.battery')} open={setting?.budget === undefined}>
          <BatteryFields draft={draft} change={change} />
        </Fold>
        <Fold title={t('power.steps')}>
          <StepFields draft={draft} change={change} />
        </Fold>
        <Fold title={t('power.supply')}>
          <SupplyFields draft={draft} change={change} />
        </Fold>
        <Fold title={t('power.limits')}>
          <LimitFields draft={draft} change={change} />
        </Fold>
      </RecordForm>
    </Part>
  )
}

function Fold({
  title,
  open = false,
  children,
}: {
  readonly title: string
  readonly open?: boolean
  readonly children: React.ReactNode
}) {
  return (
    <details className={formCss.more} open={open}>
      <summary>{title}</summary>
      <div className={css.stepList}>{children}</div>
    </details>
  )
}
