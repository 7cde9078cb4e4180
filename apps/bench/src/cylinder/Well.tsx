import css from './cylinder.module.css'
import {
  driverLength,
  halfPin,
  halfWell,
  height,
  jointOffset,
  pinLength,
  pinPath,
  type Standing,
  shear,
  springPath,
  wellTop,
} from './geometry.ts'

const springLength = shear - driverLength - wellTop

/** The bore a tumbler moves in, cut through housing and plug. */
export function Bore({ x, part }: { readonly x: number; readonly part: 'housing' | 'plug' }) {
  const top = part === 'housing' ? wellTop - 10 : shear
  const bottom = part === 'housing' ? shear : height - 20
  return (
    <rect
      className={css.bore}
      x={x - halfWell}
      width={halfWell * 2}
      y={top}
      height={bottom - top}
      rx={part === 'housing' ? 10 : 0}
    />
  )
}

/** Spring and steel driver of one tumbler. */
export function Driver({ x, tumbler }: { readonly x: number; readonly tumbler: Standing }) {
  const offset = jointOffset(tumbler)
  const stretch = (springLength + offset) / springLength
  return (
    <g transform={`translate(${x} 0)`}>
      <g transform={`translate(0 ${wellTop})`}>
        <path
          className={css.spring}
          d={springPath(springLength)}
          style={{ transform: `scaleY(${stretch})` }}
        />
      </g>
      <g className={css.stack} style={{ transform: `translateY(${offset}px)` }}>
        <rect
          className={css.driver}
          x={-halfPin}
          width={halfPin * 2}
          y={shear - driverLength}
          height={driverLength}
          rx={7}
        />
        <rect
          className={css.shine}
          x={-halfPin + 8}
          width={9}
          y={shear - driverLength + 8}
          height={driverLength - 16}
          rx={4}
        />
      </g>
    </g>
  )
}

/** The brass key pin of one tumbler: solid in line, hollow and hatched when low, banded when high. */
export function Pin({
  x,
  tumbler,
  hatch,
}: {
  readonly x: number
  readonly tumbler: Standing
  readonly hatch: string
}) {
  const offset = jointOffset(tumbler)
  return (
    <g transform={`translate(${x} 0)`} className={tumbler.state === 'low' ? css.low : undefined}>
      <g className={css.stack} style={{ transform: `translateY(${offset}px)` }}>
        <g transform={`translate(0 ${shear})`}>
          <path className={css.pin} d={pinPath()} />
          {tumbler.state === 'low' && <path d={pinPath()} fill={`url(#${hatch})`} />}
          <rect className={css.pinShine} x={-halfPin + 8} width={9} y={8} height={pinLength - 14} rx={4} />
          {tumbler.state === 'high' && (
            <>
              <rect className={css.band} x={-halfPin} width={halfPin * 2} y={40} height={9} />
              <rect className={css.band} x={-halfPin} width={halfPin * 2} y={58} height={9} />
            </>
          )}
        </g>
      </g>
    </g>
  )
}

/** The way the joint still has to go, as an arrow: up when low, down when high. */
export function WayToGo({ x, tumbler }: { readonly x: number; readonly tumbler: Standing }) {
  if (tumbler.state === 'in-line') return null
  const up = tumbler.state === 'low'
  const from = up ? shear + jointOffset(tumbler) + 44 : shear - 76
  const to = up ? shear + jointOffset(tumbler) + 14 : shear - 48
  const head = up ? 10 : -10
  return (
    <path
      className={css.arrow}
      d={`M${x} ${from}V${to}M${x - 9} ${to + head}L${x} ${to}L${x + 9} ${to + head}`}
    />
  )
}
