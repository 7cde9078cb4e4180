import type { JobState } from '@shearline/jobfile'
import { number, volts } from '../words/amounts.ts'
import { listMark, say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { clock } from '../words/instants.ts'
import css from './supply.module.css'

const width = 320
const height = 132
const left = 34
const right = 8
const top = 12
const bottom = 22

type During = JobState['supply']['readings'][number]['during']

const shapes: Readonly<Record<During, string>> = {
  rest: 'M-4.5 0a4.5 4.5 0 1 0 9 0a4.5 4.5 0 1 0 -9 0Z',
  session: 'M-4 -4H4V4H-4Z',
  after: 'M0 -5.5 5.5 0 0 5.5 -5.5 0Z',
}

/** Supply readings in the order they were taken, against the floor. Shapes tell rest, session and after apart. */
export function SupplyChart({
  supply,
  zone,
}: {
  readonly supply: JobState['supply']
  readonly zone: string
}) {
  const { readings, setting } = supply
  if (readings.length === 0) return <p className={css.none}>{t('supply.none')}</p>
  const floor = setting?.floorVolts ?? null
  const all = [...readings.map((reading) => reading.volts), ...(floor === null ? [] : [floor])]
  const low = Math.floor(Math.min(...all) - 0.4)
  const high = Math.ceil(Math.max(...all) + 0.4)
  const x = (index: number) => left + ((width - left - right) * (index + 0.5)) / readings.length
  const y = (value: number) => top + ((height - top - bottom) * (high - value)) / (high - low)
  const first = clock(readings[0]?.at ?? '', zone)
  const last = clock(readings.at(-1)?.at ?? '', zone)
  const words = readings
    .map((reading) => `${volts(reading.volts)} ${say(`during.${reading.during}`)}`)
    .join(listMark())
  const kinds = (['rest', 'session', 'after'] as const).filter((kind) =>
    readings.some(({ during }) => during === kind),
  )
  return (
    <>
      <svg
        className={css.chart}
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={t('supply.chart', { words })}
      >
        {[low, high].map((mark) => (
          <text key={mark} className={css.axis} x={left - 6} y={y(mark) + 4} textAnchor="end">
            {`${number(mark)}\u00a0V`}
          </text>
        ))}
        {floor !== null && (
          <>
            <rect
              className={css.below}
              x={left}
              y={y(floor)}
              width={width - left - right}
              height={height - bottom - y(floor)}
            />
            <path className={css.floor} d={`M${left} ${y(floor)}H${width - right}`} />
            <text className={css.axis} x={width - right} y={y(floor) + 13} textAnchor="end">
              {t('line.floor', { volts: volts(floor) })}
            </text>
          </>
        )}
        <polyline
          className={css.curve}
          points={readings.map((reading, index) => `${x(index)},${y(reading.volts)}`).join(' ')}
        />
        {readings.map((reading, index) => (
          <g key={`${reading.at}-${reading.volts}`} transform={`translate(${x(index)} ${y(reading.volts)})`}>
            <path className={css.point} d={shapes[reading.during]} />
          </g>
        ))}
        <text className={css.axis} x={left} y={height - 6}>
          {first}
        </text>
        {last !== first && (
          <text className={css.axis} x={width - right} y={height - 6} textAnchor="end">
            {last}
          </text>
        )}
      </svg>
      <ul className={css.legend} aria-hidden="true">
        {kinds.map((kind) => (
          <li key={kind}>
            <svg className={css.key} viewBox="-7 -7 14 14" aria-hidden="true">
              <path className={css.point} d={shapes[kind]} />
            </svg>
            {say(`during.${kind}`)}
          </li>
        ))}
      </ul>
    </>
  )
}
