import { useDesk } from '../job/desk.ts'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { cellOf } from './FunctionGridTable.tsx'
import css from './keys.module.css'
import { OutcomeShape } from './OutcomeShape.tsx'
import { Tag } from './Tag.tsx'

/** What each key can do as far as it is known now: after the work where tested, else before it. */
export function LiveGrid() {
  const { grid, keys } = useDesk().state
  if (keys.length === 0) return <p className={css.note}>{t('grid.no-keys')}</p>
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard
    <section className={`${css.gridScroll} ${css.small}`} aria-label={t('live.keys.table')} tabIndex={0}>
      <table className={css.grid}>
        <caption className="sr">{t('live.keys')}</caption>
        <thead>
          <tr>
            <td />
            {keys.map((key) => (
              <th key={key.id} scope="col">
                <Tag letter={key.id} colour={key.colour} />
                <span className={css.headNote}>
                  {key.origin === 'new' ? t('keys.new') : key.onBench ? '' : t('keys.away')}
                </span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {grid.functions.map((name) => (
            <tr key={name}>
              <th scope="row">{say(`function.${name}`)}</th>
              {keys.map((key) => {
                const after = cellOf(grid.rows, key.id, 'after', name)
                const before = cellOf(grid.rows, key.id, 'before', name)
                const cell = after?.outcome === 'open' && before !== undefined ? before : after
                const outcome = cell === undefined ? 'open' : cell.lost ? 'lost' : cell.outcome
                return (
                  <td key={key.id}>
                    <span className={css.cell} data-outcome={outcome}>
                      <OutcomeShape outcome={outcome} />
                      {t(`cell.${outcome}`)}
                    </span>
                  </td>
                )
              })}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
