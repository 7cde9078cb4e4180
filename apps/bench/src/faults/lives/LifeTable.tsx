import type { FaultLine } from '@shearline/keywork'
import { say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import { type Column, stateIn } from './columns.ts'
import css from './lives.module.css'
import { lifeWord } from './words.ts'

/** The picture in words, for whoever would rather read or hear it. */
export function LifeTable({
  lines,
  columns,
  head,
  compared,
}: {
  readonly lines: readonly FaultLine[]
  readonly columns: readonly Column[]
  readonly head: (column: Column) => string
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
            {columns.map((column) => (
              <th key={column.key} scope="col">
                {head(column)}
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
              {columns.map((column) => (
                <td key={column.key}>{lifeWord(stateIn(line, column))}</td>
              ))}
              {compared && <td>{say(`fault-class.${line.class}`)}</td>}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
