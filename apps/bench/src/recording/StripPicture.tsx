import { t } from '../words/index.ts'
import { elapsed } from './elapsed.ts'
import { MarkShape } from './MarkShape.tsx'
import { markKinds, markShapes, marksOf } from './marks.ts'
import css from './recording.module.css'
import type { Strip } from './strip.ts'
import { supplyWords } from './supply-words.ts'

const width = 320
const top = 20
const floor = 64
const columns = 160

/** A whole recording at a glance: how dense it is, with sessions and marks above, and what they are in words. */
export function StripPicture({ strip }: { readonly strip: Strip }) {
  const { marks, lanes, supply } = marksOf(strip)
  const length = Math.max(strip.to - strip.from, 1e-6)
  const x = (seconds: number) => 6 + ((width - 12) * (seconds - strip.from)) / length
  const counts = resliced(strip)
  const most = Math.max(1, ...counts)
  const silhouette = counts
    .map((count, column) => {
      const left = 6 + ((width - 12) * column) / columns
      const right = 6 + ((width - 12) * (column + 1)) / columns
      // The square root keeps a lone message visible beside a busy scan.
      const y = floor - (floor - top - 8) * Math.sqrt(count / most)
      return `L${left.toFixed(1)} ${y.toFixed(1)}H${right.toFixed(1)}`
    })
    .join('')
  const kinds = markKinds.filter((kind) => marks.some((mark) => mark.kind === kind))
  const sessions = lanes.flatMap((lane) => lane.bands)
  const low = Math.min(...supply.map((stretch) => stretch.low))
  const high = Math.max(...supply.map((stretch) => stretch.high))
  return (
    <div className={css.picture}>
      <svg
        viewBox={`0 0 ${width} 70`}
        role="img"
        aria-label={t('strip.picture', { length: elapsed(length, 1), messages: strip.messages })}
      >
        <path className={css.density} d={`M6 ${floor}${silhouette}V${floor}Z`} />
        <path className={css.ground} d={`M6 ${floor}H${width - 6}`} />
        {sessions.map((band) => (
          <path
            key={`${band.unit} ${band.from} ${band.detail}`}
            className={css.band}
            d={`M${x(band.from)} ${top}H${Math.max(x(band.to), x(band.from) + 2)}`}
          />
        ))}
        {marks.slice(0, 200).map((mark, index) => (
          <path
            // biome-ignore lint/suspicious/noArrayIndexKey: marks of a recording never change
            key={index}
            className={css.stripMark}
            d={markShapes[mark.kind]}
            transform={`translate(${x(mark.from)} 10) scale(0.8)`}
          />
        ))}
      </svg>
      <p className={css.axis} dir="ltr" aria-hidden="true">
        <span>{elapsed(0, 0)}</span>
        <bdi>{t('strip.axis')}</bdi>
        <span>{elapsed(length, 1)}</span>
      </p>
      <ul className={css.legend}>
        {sessions.length > 0 && (
          <li>
            <span className={css.bandSign} aria-hidden="true" />
            {t('strip.sessions', { units: new Set(sessions.map((band) => band.unit)).size })}
          </li>
        )}
        {kinds.map((kind) => (
          <li key={kind}>
            <MarkShape kind={kind} />
            {t(`marks.${kind}`, { count: marks.filter((mark) => mark.kind === kind).length })}
          </li>
        ))}
        {supply.length > 0 && <li>{t('strip.supply', { volts: supplyWords(low, high) })}</li>}
      </ul>
    </div>
  )
}

/** The kept slices joined into as many columns as a small picture shows. */
function resliced({ density, from, to }: Strip): number[] {
  const counts = new Array<number>(columns).fill(0)
  const length = Math.max(to - from, 1e-6)
  density.total.forEach((count, index) => {
    const middle = (density.first + index + 0.5) * density.width - from
    const column = Math.min(columns - 1, Math.max(0, Math.floor((middle / length) * columns)))
    counts[column] = (counts[column] ?? 0) + count
  })
  return counts
}
