import type { JobSummary } from '@shearline/jobfile'
import { t } from '../words/index.ts'
import css from './cylinder.module.css'
import {
  driverLength,
  halfPin,
  halfWell,
  jointOffset,
  pinPath,
  shear,
  wellCentre,
  wellTop,
  width,
} from './geometry.ts'

/** The same cylinder, small: how a job stands at a glance. */
export function Thumbnail({ summary }: { readonly summary: Pick<JobSummary, 'tumblers' | 'inLine'> }) {
  const count = summary.tumblers.filter((tumbler) => tumbler.state === 'in-line').length
  return (
    <svg
      className={css.thumb}
      viewBox={`0 20 ${width} 312`}
      role="img"
      aria-label={t('cylinder.glance', { count, of: summary.tumblers.length })}
    >
      <rect className={css.housing} x={14} y={22} width={width - 28} height={shear - 22} rx={18} />
      <path
        className={css.plugBody}
        d={`M24 ${shear}H776V310a20 20 0 0 1-20 20H44a20 20 0 0 1-20-20Z`}
        transform={summary.inLine ? `translate(0 6)` : undefined}
      />
      {summary.tumblers.map((tumbler, index) => {
        const offset = jointOffset(tumbler)
        return (
          <g key={tumbler.name} transform={`translate(${wellCentre(index)} 0)`}>
            <rect
              className={css.bore}
              x={-halfWell - 4}
              width={halfWell * 2 + 8}
              y={wellTop}
              height={286}
              rx={10}
            />
            <rect
              className={css.thumbDriver}
              x={-halfPin}
              width={halfPin * 2}
              y={shear - driverLength + offset}
              height={driverLength}
            />
            <path
              className={tumbler.state === 'low' ? css.thumbLow : css.thumbPin}
              d={pinPath()}
              transform={`translate(0 ${shear + offset})`}
            />
            {tumbler.state === 'high' && (
              <rect className={css.band} x={-halfPin} width={halfPin * 2} y={shear + 16} height={16} />
            )}
          </g>
        )
      })}
      <path className={css.shear} d={`M0 ${shear}H${width}`} strokeWidth={12} style={{ strokeWidth: 12 }} />
    </svg>
  )
}
