import type { FaultLine, ScanPhase } from '@shearline/keywork'
import { say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import css from './lives.module.css'
import { lifeWord } from './words.ts'

/** The picture in words, for whoever would rather read or hear it. */
export function LifeTable({
  lines,
  taken,
  compared,
}: {
  readonly lines: readonly FaultLine[]
  readonly taken: readonly ScanPhase[]
  readonly compared: boolean
}) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard
    <div className={css.scroll} tabIndex={0}>
      <table className={css.table}>
        <thead>
          <tr>
            <th scope="col">{t('faults.column.code')}</th>
            <th scope="col">{t('faults.column.unit')}</th>
            {taken.map((phase) => (
              <th key={phase} scope="col">
                {say(`phase.${phase}`)}
              </th>
            ))}
            {compared && <th scope="col">{t('faults.column.class')}</th>}
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <tr key={`${line.unit} ${line.code}`}>
              <th scope="row">
                <code>{line.code}</code>
              </th>
              <td>{line.unit}</td>
              {taken.map((phase) => (
                <td key={phase}>{lifeWord(line.life.find((state) => state.phase === phase))}</td>
              ))}
              {compared && <td>{say(`fault-class.${line.class}`)}</td>}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
