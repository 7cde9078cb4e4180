import { Differences, Reason } from '../../keys/Differences.tsx'
import { FunctionGridTable } from '../../keys/FunctionGridTable.tsx'
import { KeyCount } from '../../keys/KeyCount.tsx'
import { SupplyReading } from '../../supply/SupplyReading.tsx'
import { Retest } from '../../teaching/guide/Retest.tsx'
import { LeastTests } from '../../teaching/proof/LeastTests.tsx'
import { TallyNumbers } from '../../teaching/proof/TallyNumbers.tsx'
import { say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import { useDesk } from '../desk.ts'
import { Part } from '../Part.tsx'

/** Every key again, function by function, the new ones too; the car's count; what a lost function means. */
export function ProveChapter() {
  const { state } = useDesk()
  const open = new Set(
    state.tumblers.flatMap((tumbler) =>
      tumbler.needs
        .filter((need) => need.code === 'function-lost')
        .map((need) => `${need.params.key}:${need.params.function}`),
    ),
  )
  return (
    <>
      <Retest />
      <LeastTests />
      <Part title={t('grid.after')} need="tests-after-open">
        {state.keys.length === 0 ? <p>{t('grid.no-keys')}</p> : <FunctionGridTable phase="after" />}
      </Part>
      {state.grid.lost.map((cell) => {
        const code = `function-lost:${cell.key}:${cell.function}`
        return (
          <Part
            key={code}
            title={t('prove.lost', { key: cell.key, function: say(`function.${cell.function}`) })}
            need={`function-lost ${open.has(`${cell.key}:${cell.function}`) ? `function-lost:${cell.key}` : ''}`}
            settled={!open.has(`${cell.key}:${cell.function}`)}
            more={t('differences.again')}
          >
            <Reason code={code} />
          </Part>
        )
      })}
      <KeyCount when="after" />
      <TallyNumbers />
      <Differences chapter="prove" />
      <SupplyReading during="after" />
    </>
  )
}
