import type { CurvePoint, PowerAnswer, VoltsReading } from '@shearline/keywork'
import { useId } from 'react'
import { number, volts } from '../words/amounts.ts'
import { t } from '../words/index.ts'
import { height, middle, outline, plot, scaleFor, stepRow, width } from './geometry.ts'
import css from './power.module.css'

/** Readings further apart than this are drawn as single points. */
const MOST_POINTS = 120

/**
 * The supply over the plan: the curve with its band, floor, target and stop, the steps along the bottom; during the
 * work the readings and what they now lead to. The table below says the same in words.
 */
export function PowerPicture({
  answer,
  readings = [],
  ahead = [],
}: {
  readonly answer: PowerAnswer
  readonly readings?: readonly VoltsReading[]
  /** The curve from the last reading on, as the readings have it. */
  readonly ahead?: readonly CurvePoint[]
}) {
  const id = useId()
  const { curve, limits, steps } = answer
  const end = Math.max(steps.at(-1)?.toMinutes ?? 1, readings.at(-1)?.minutes ?? 0)
  const scale = scaleFor(limits, [...curve, ...ahead], readings, end)
  const { x, y } = scale
  const lines = [
    ['target', limits.targetVolts],
    ['floor', limits.floorVolts],
    ['stop', limits.stopVolts],
  ] as const
  const every = Math.ceil(readings.length / MOST_POINTS)
  return (
    <figure className={css.figure}>
      <svg
        className={css.picture}
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={pictureWords(answer, readings)}
        data-readings={readings.length}
      >
        <defs>
          <pattern id={id} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <path className={css.hatch} d="M0 0V6" />
          </pattern>
        </defs>
        <rect
          className={css.below}
          x={plot.left}
          y={y(limits.floorVolts)}
          width={plot.right - plot.left}
          height={plot.bottom - y(limits.floorVolts)}
        />
        {scale.voltMarks.map((mark) => (
          <g key={mark}>
            <path className={css.grid} d={`M${plot.left} ${y(mark)}H${plot.right}`} />
            <text className={css.axis} x={plot.left - 6} y={y(mark) + 4} textAnchor="end">
              {mark}
            </text>
          </g>
        ))}
        <polygon className={css.band} points={outline(scale, curve)} />
        <polyline className={css.mid} points={middle(scale, curve)} />
        {ahead.length > 1 && (
          <>
            <polygon fill={`url(#${CSS.escape(id)})`} points={outline(scale, ahead)} />
            <polyline className={css.ahead} points={middle(scale, ahead)} />
          </>
        )}
        {lines.map(([name, at]) => (
          <g key={name}>
            <path className={css[name]} d={`M${plot.left} ${y(at)}H${plot.right}`} />
            <text
              className={css.lineWords}
              x={plot.right - 2}
              y={name === 'stop' ? y(at) + 13 : y(at) - 4}
              textAnchor="end"
            >
              {t(`power.line.${name}`, { volts: volts(at) })}
            </text>
          </g>
        ))}
        {readings.length > 1 && (
          <polyline
            className={css.read}
            points={readings.map((reading) => `${x(reading.minutes)},${y(reading.volts)}`).join(' ')}
          />
        )}
        {readings
          .filter((_, index) => index % every === 0 || index === readings.length - 1)
          .map((reading) => (
            <rect
              key={`${reading.minutes} ${reading.volts}`}
              className={css.readPoint}
              x={x(reading.minutes) - 3}
              y={y(reading.volts) - 3}
              width="6"
              height="6"
            />
          ))}
        {scale.minuteMarks.map((mark) => (
          <text key={mark} className={css.axis} x={x(mark)} y={plot.bottom + 14} textAnchor="middle">
            {mark}
          </text>
        ))}
        {steps.map((step, index) => {
          const wide = x(step.toMinutes) - x(step.fromMinutes)
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: two steps may have the same name; their place tells them apart
            <g key={index}>
              <rect
                className={index % 2 === 0 ? css.step : css.stepOther}
                x={x(step.fromMinutes)}
                y={stepRow.top}
                width={Math.max(1, wide)}
                height={stepRow.height}
              />
              {wide > 9 && (
                <text
                  className={css.stepNumber}
                  x={x(step.fromMinutes) + wide / 2}
                  y={stepRow.top + 17}
                  textAnchor="middle"
                >
                  {index + 1}
                </text>
              )}
            </g>
          )
        })}
      </svg>
      <figcaption className={css.legend}>
        <span>
          <Key shape="band" /> {t('power.legend.band')}
        </span>
        {readings.length > 0 && (
          <span>
            <Key shape="readPoint" /> {t('power.legend.read')}
          </span>
        )}
        {ahead.length > 1 && (
          <span>
            <Key shape="ahead" /> {t('power.legend.ahead')}
          </span>
        )}
        <span>{t('power.legend.axes')}</span>
      </figcaption>
    </figure>
  )
}

function Key({ shape }: { readonly shape: 'band' | 'readPoint' | 'ahead' }) {
  return (
    <svg className={css.key} viewBox="0 0 22 12" aria-hidden="true">
      {shape === 'band' && (
        <>
          <rect className={css.band} width="22" height="12" />
          <path className={css.mid} d="M0 6H22" />
        </>
      )}
      {shape === 'readPoint' && <rect className={css.readPoint} x="8" y="3" width="6" height="6" />}
      {shape === 'ahead' && <path className={css.ahead} d="M0 6H22" />}
    </svg>
  )
}

/** What the picture shows, in sentences. */
function pictureWords(
  { curve, limits, minimumVolts, steps }: PowerAnswer,
  readings: readonly VoltsReading[],
): string {
  const last = readings.at(-1)
  return t('power.picture', {
    minutes: number(steps.at(-1)?.toMinutes ?? 0),
    from: volts(curve[0]?.mid ?? 0),
    low: volts(minimumVolts.low),
    mid: volts(minimumVolts.mid),
    high: volts(minimumVolts.high),
    floor: volts(limits.floorVolts),
    target: volts(limits.targetVolts),
    count: readings.length,
    last: last === undefined ? '' : volts(last.volts),
  })
}
