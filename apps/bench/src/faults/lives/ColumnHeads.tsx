import { say } from '../../words/engine.ts'
import { clock, day } from '../../words/instants.ts'
import type { Column } from './columns.ts'
import css from './lives.module.css'
import { columnWidth } from './StrandPicture.tsx'

/**
 * The heads above the strands: a moment is written once over all of its scans, below it the clock of each scan, and
 * its day where that is another than the one before. Screen readers hear the same at each strand.
 */
export function ColumnHeads({
  columns,
  keptAt,
  zone,
}: {
  readonly columns: readonly Column[]
  /** When each scan was recorded, UTC, in the order of the record. */
  readonly keptAt: readonly string[]
  readonly zone: string
}) {
  const moments = columns.filter((column, index) => column.phase !== columns[index - 1]?.phase)
  const timed = columns.map((column) => {
    const at = column.scan === null ? undefined : keptAt[column.scan]
    return { key: column.key, clock: at && clock(at, zone), day: at && day(at, zone) }
  })
  return (
    <div aria-hidden="true">
      <p className={css.heads}>
        <span />
        {moments.map(({ key, phase }) => {
          const scans = columns.filter((column) => column.phase === phase).length
          return (
            <span key={key} className={css.head} style={{ width: columnWidth * scans }}>
              <span>{say(`phase.${phase}`)}</span>
            </span>
          )
        })}
      </p>
      {timed.some((one) => one.clock !== undefined) && (
        <p className={css.heads}>
          <span />
          {timed.map((one, index) => (
            <span key={one.key} className={css.head} style={{ width: columnWidth }}>
              {one.day !== timed[index - 1]?.day && <span>{one.day}</span>}
              <span>{one.clock}</span>
            </span>
          ))}
        </p>
      )}
    </div>
  )
}
