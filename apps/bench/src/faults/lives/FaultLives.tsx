import type { FaultLine } from '@shearline/keywork'
import { useId, useState } from 'react'
import { Choice } from '../../form/Choice.tsx'
import formCss from '../../form/form.module.css'
import { useDesk } from '../../job/desk.ts'
import { recorded } from '../../power/recorded.ts'
import { say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import { clock, day } from '../../words/instants.ts'
import { ColumnHeads } from './ColumnHeads.tsx'
import { type Column, hasChanged, momentColumns, scanColumns, stateIn } from './columns.ts'
import { FaultDetail } from './FaultDetail.tsx'
import { LifeTable } from './LifeTable.tsx'
import css from './lives.module.css'
import { nodeKinds, nodeOf } from './node.ts'
import { columnWidth, Shape, StrandPicture } from './StrandPicture.tsx'
import { lifeWord, unitHeading } from './words.ts'

type Filter = 'attention' | 'changed' | 'all' | 'unit'
type Detail = 'moments' | 'scans'

/** Scans as columns, every fault a strand through them, by control unit; a tapped strand tells what may be said. */
export function FaultLives() {
  const desk = useDesk()
  const { state, zone } = desk
  const { faults } = state.faults
  const taken = state.scans.map((scan) => scan.phase)
  const moments = momentColumns(taken)
  const [detail, setDetail] = useState<Detail>('moments')
  const columns = detail === 'moments' ? moments : scanColumns(taken)
  const keptAt = recorded(desk, 'scan-attached').map(({ at }) => at)
  const head = ({ phase, scan }: Column) => {
    const at = scan === null ? undefined : keptAt[scan]
    if (at === undefined) return say(`phase.${phase}`)
    return t('faults.scan-head', { phase: say(`phase.${phase}`), day: day(at, zone), time: clock(at, zone) })
  }
  const compared = moments.some(({ phase }) => phase !== 'before')
  const waits = (line: FaultLine) =>
    compared &&
    line.needsAttention &&
    !state.acknowledged.some((known) => known.unit === line.unit && known.code === line.code)
  const waiting = faults.filter(waits)
  const [filter, setFilter] = useState<Filter | null>(null)
  const [unit, setUnit] = useState('')
  const shownFilter = filter ?? (waiting.length > 0 ? 'attention' : 'all')
  const shown =
    shownFilter === 'attention'
      ? waiting
      : shownFilter === 'changed'
        ? faults.filter(hasChanged)
        : faults.filter((line) => shownFilter === 'all' || unit === '' || line.unit === unit)
  const [tapped, setTapped] = useState<string | null>(null)
  // What waits for a person is open without a tap, so that the next step leads to it.
  const open = tapped ?? (waiting[0] === undefined ? '' : keyOf(waiting[0]))
  const units = [...new Set(faults.map((line) => line.unit))]
  return (
    <div className={css.lives}>
      {compared && (
        <Choice
          label={t('faults.filter')}
          value={shownFilter}
          onChange={setFilter}
          options={[
            ['attention', t('faults.filter.attention', { count: waiting.length })],
            ['changed', t('faults.filter.changed', { count: faults.filter(hasChanged).length })],
            ['all', t('faults.filter.all', { count: faults.length })],
            ['unit', t('faults.filter.unit')],
          ]}
        />
      )}
      {shownFilter === 'unit' && (
        <Choice
          label={t('faults.filter.unit')}
          value={unit}
          onChange={setUnit}
          options={[['', t('faults.filter.unit.any')], ...units.map((one) => [one, one] as const)]}
        />
      )}
      {taken.length > moments.length && (
        <Choice
          label={t('faults.columns')}
          value={detail}
          onChange={setDetail}
          options={[
            ['moments', t('faults.columns.moments', { count: moments.length })],
            ['scans', t('faults.columns.scans', { count: taken.length })],
          ]}
        />
      )}
      {shown.length === 0 && <p className={css.quiet}>{t('faults.filter.nothing')}</p>}
      {shown.length > 0 && (
        <>
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard */}
          <div className={css.scroll} tabIndex={0} ref={latestInSight} key={detail}>
            <div
              className={css.picture}
              style={{ minWidth: `calc(7.25rem + ${columns.length * columnWidth}px)` }}
            >
              <ColumnHeads columns={columns} keptAt={keptAt} zone={zone} />
              {[...new Set(shown.map((line) => line.unit))].map((name) => (
                <UnitStrands
                  key={name}
                  unit={name}
                  lines={shown.filter((line) => line.unit === name)}
                  columns={columns}
                  head={head}
                  open={open}
                  compared={compared}
                  onTap={(key) => setTapped(open === key ? '' : key)}
                />
              ))}
            </div>
          </div>
          <Legend lines={shown} columns={columns} compared={compared} />
          <details className={formCss.more}>
            <summary>{t('faults.table')}</summary>
            <LifeTable lines={shown} columns={columns} head={head} compared={compared} />
          </details>
        </>
      )}
    </div>
  )
}

/** The newest scan is what one looks for first. */
function latestInSight(box: HTMLDivElement | null): void {
  if (box !== null) box.scrollLeft = box.scrollWidth
}

function keyOf(line: FaultLine): string {
  return `${line.unit} ${line.code}`
}

function UnitStrands({
  unit,
  lines,
  columns,
  head,
  open,
  compared,
  onTap,
}: {
  readonly unit: string
  readonly lines: readonly FaultLine[]
  readonly columns: readonly Column[]
  readonly head: (column: Column) => string
  readonly open: string
  readonly compared: boolean
  readonly onTap: (key: string) => void
}) {
  const id = useId()
  const names = useDesk().state.faults.unitNames[unit]
  return (
    <section className={css.unit} aria-labelledby={id}>
      <h4 className={css.unitName} id={id}>
        {unitHeading(unit, names)}
      </h4>
      <ul>
        {lines.map((line) => {
          const key = keyOf(line)
          const { code } = line
          return (
            <li
              key={key}
              data-need={`fault-unexplained:${code} fault-from-work-remains:${code} unit-not-compared:${code}`}
            >
              <button
                type="button"
                className={css.strand}
                data-class={line.class}
                aria-expanded={open === key}
                onClick={() => onTap(key)}
              >
                <span className={css.label}>
                  <code className={css.code}>{code}</code>
                  {line.airbag && <span className={css.airbag}>{say('caution.airbag')}</span>}
                  {compared && line.needsAttention && <span className={css.wants} aria-hidden="true" />}
                  {compared && (
                    <span className={css.says} aria-hidden="true">
                      {say(`fault-class.${line.class}`)}
                    </span>
                  )}
                </span>
                <StrandPicture nodes={columns.map((column) => nodeOf(stateIn(line, column)))} />
                <span className="sr">{spoken(line, columns, head, compared)}</span>
              </button>
              {open === key && <FaultDetail line={line} compared={compared} />}
            </li>
          )
        })}
      </ul>
    </section>
  )
}

function spoken(
  line: FaultLine,
  columns: readonly Column[],
  head: (column: Column) => string,
  compared: boolean,
): string {
  const life = columns.map((column) => `${head(column)}: ${lifeWord(stateIn(line, column))}`)
  const parts = compared ? [say(`fault-class.${line.class}`), ...life] : life
  if (compared && line.needsAttention) parts.unshift(t('faults.wants'))
  return `: ${parts.join('; ')}`
}

/** Only the shapes that are in the picture. */
function Legend({
  lines,
  columns,
  compared,
}: {
  readonly lines: readonly FaultLine[]
  readonly columns: readonly Column[]
  readonly compared: boolean
}) {
  const met = new Set(lines.flatMap((line) => columns.map((column) => nodeOf(stateIn(line, column)))))
  return (
    <ul className={css.legend}>
      {nodeKinds
        .filter((kind) => met.has(kind))
        .map((kind) => (
          <li key={kind}>
            <svg width="32" height="32" viewBox="0 0 32 32" aria-hidden="true">
              <Shape kind={kind} x={16} y={16} />
            </svg>
            {t(`faults.legend.${kind}`)}
          </li>
        ))}
      {compared && lines.some((line) => line.needsAttention) && (
        <li>
          <span className={css.wants} /> {t('faults.wants')}
        </li>
      )}
    </ul>
  )
}
