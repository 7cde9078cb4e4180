import { useDesk } from '../../job/desk.ts'
import { Part } from '../../job/Part.tsx'
import { Reason } from '../../keys/Differences.tsx'
import { SupplyReading } from '../../supply/SupplyReading.tsx'
import { volts } from '../../words/amounts.ts'
import { t } from '../../words/index.ts'
import { Session } from './Session.tsx'

/** The session as it goes: opened, guided one step at a time, broken off and brought back, or closed. */
export function TeachChapter() {
  return (
    <>
      <Session />
      <SupplyReading during="session" />
      <BelowFloor />
    </>
  )
}

function BelowFloor() {
  const { state } = useDesk()
  const { setting, minimumVolts } = state.supply
  if (setting === null || minimumVolts === null || minimumVolts >= setting.floorVolts) return null
  const explained = !state.tumblers.some((tumbler) =>
    tumbler.needs.some((need) => need.code === 'supply-below-floor'),
  )
  return (
    <Part
      title={t('supply.below', { minimum: volts(minimumVolts), floor: volts(setting.floorVolts) })}
      need="supply-below-floor"
      settled={explained}
      more={t('differences.again')}
    >
      <Reason code="supply-below-floor" />
    </Part>
  )
}
