import type { Tumbler, TumblerName } from '@shearline/jobfile'
import { memo, useId } from 'react'
import { tumblerWord } from '../words/engine.ts'
import { t } from '../words/index.ts'
import css from './cylinder.module.css'
import { Glyph } from './Glyph.tsx'
import { bladePath, height, jointOffset, shear, wellCentre, width } from './geometry.ts'
import { standingWords } from './standing.ts'
import { Bore, Driver, Pin, WayToGo } from './Well.tsx'

const box = `0 0 ${width} ${height}`

/**
 * A job as its lock cylinder, cut open: seven tumblers against the one line. Each well is a button that says
 * its name and standing; when all are in line the plug stands turned.
 */
export const Cylinder = memo(function Cylinder({
  tumblers,
  inLine,
  chosen,
  onChoose,
}: {
  readonly tumblers: readonly Tumbler[]
  readonly inLine: boolean
  readonly chosen: TumblerName | null
  readonly onChoose: (name: TumblerName) => void
}) {
  return (
    <section className={css.cylinder} aria-label={t('cylinder.title')}>
      <div className={inLine ? `${css.stage} ${css.turned}` : css.stage}>
        <Picture tumblers={tumblers} inLine={inLine} />
        <div className={css.keys}>
          {tumblers.map((tumbler, index) => (
            <button
              key={tumbler.name}
              type="button"
              className={index % 2 === 0 ? css.key : `${css.key} ${css.lowerRow}`}
              aria-pressed={chosen === tumbler.name}
              onClick={() => onChoose(tumbler.name)}
            >
              <span className={css.label}>
                <span className={css.name}>{tumblerWord(tumbler.name)}</span>
                <span
                  className={tumbler.state === 'high' ? `${css.standing} ${css.highWords}` : css.standing}
                >
                  <Glyph state={tumbler.state} />
                  {standingWords(tumbler)}
                </span>
              </span>
            </button>
          ))}
        </div>
      </div>
      <div className={css.labels} />
    </section>
  )
})

/** What the buttons stand over. A tap on one of them does not draw it anew. */
const Picture = memo(function Picture({
  tumblers,
  inLine,
}: {
  readonly tumblers: readonly Tumbler[]
  readonly inLine: boolean
}) {
  const hatch = useId()
  const wells = tumblers.map((tumbler, index) => ({ tumbler, x: wellCentre(index) }))
  const pins = wells.map(({ tumbler, x }) => <Pin key={tumbler.name} x={x} tumbler={tumbler} hatch={hatch} />)
  return (
    <>
      <svg className={css.picture} viewBox={box} aria-hidden="true">
        <defs>
          <pattern
            id={hatch}
            width="13"
            height="13"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <path className={css.hatch} d="M0 0V13" />
          </pattern>
        </defs>
        <rect className={css.housing} x={14} y={8} width={width - 28} height={shear - 2} rx={20} />
        {wells.map(({ tumbler, x }) => (
          <Bore key={tumbler.name} x={x} part="housing" />
        ))}
      </svg>
      <svg className={`${css.picture} ${css.plug}`} viewBox={box} aria-hidden="true">
        <path
          className={css.plugBody}
          d={`M24 ${shear}H776V${height - 34}a20 20 0 0 1-20 20H44a20 20 0 0 1-20-20Z`}
        />
        {wells.map(({ tumbler, x }) => (
          <Bore key={tumbler.name} x={x} part="plug" />
        ))}
        <path className={css.blade} d={bladePath(tumblers.map(jointOffset))} />
        <path className={css.groove} d={`M-10 ${height - 28}H728`} />
        {inLine && pins}
      </svg>
      <svg
        className={css.picture}
        style={{ position: 'absolute', inset: 0 }}
        viewBox={box}
        aria-hidden="true"
      >
        {wells.map(({ tumbler, x }) => (
          <Driver key={tumbler.name} x={x} tumbler={tumbler} />
        ))}
        {!inLine && pins}
        <path className={css.shear} d={`M4 ${shear}H${width - 4}`} />
        {wells.map(({ tumbler, x }) => (
          <WayToGo key={tumbler.name} x={x} tumbler={tumbler} />
        ))}
      </svg>
    </>
  )
})
