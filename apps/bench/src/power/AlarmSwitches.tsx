import { useState } from 'react'
import { Several } from '../form/Several.tsx'
import { t } from '../words/index.ts'
import { type AlarmMeans, alarmOn, switchAlarm } from './alarm.ts'

const means: readonly AlarmMeans[] = ['sound', 'vibration']

/** How this device calls when the supply falls below the floor or the stop. */
export function AlarmSwitches() {
  const [on, setOn] = useState(() => means.filter(alarmOn))
  return (
    <Several
      label={t('power.alarm')}
      hint={t('power.alarm.hint')}
      value={on}
      onChange={(next) => {
        for (const one of means) switchAlarm(one, next.includes(one))
        setOn([...next])
      }}
      options={means.map((one) => [one, t(`power.alarm.${one}`)])}
    />
  )
}
