import { type PointerEvent, useRef, useState } from 'react'
import formCss from '../form/form.module.css'
import { t } from '../words/index.ts'
import css from './signing.module.css'
import { type PadPoint, pad, strokePath } from './strokes.ts'

/** A place to sign with a finger, a pen or a mouse. */
export function Pad({
  strokes,
  onChange,
}: {
  readonly strokes: readonly (readonly PadPoint[])[]
  readonly onChange: (strokes: readonly (readonly PadPoint[])[]) => void
}) {
  const [drawing, setDrawing] = useState<readonly PadPoint[]>([])
  const points = useRef<PadPoint[]>([])
  const pointer = useRef<number | null>(null)
  const placeOf = (event: PointerEvent<SVGSVGElement>, { clientX, clientY }: globalThis.PointerEvent) => {
    const box = event.currentTarget.getBoundingClientRect()
    return {
      x: ((clientX - box.left) / box.width) * pad.width,
      y: ((clientY - box.top) / box.height) * pad.height,
    }
  }
  const end = () => {
    if (pointer.current === null) return
    pointer.current = null
    onChange([...strokes, points.current])
    points.current = []
    setDrawing([])
  }
  return (
    <div className={css.padBox}>
      <svg
        className={css.pad}
        viewBox={`0 0 ${pad.width} ${pad.height}`}
        role="img"
        aria-label={t(strokes.length === 0 ? 'sign.pad.empty' : 'sign.pad.drawn')}
        onPointerDown={(event) => {
          // A second finger or the palm beside the pen draws nothing.
          if (pointer.current !== null || event.button !== 0) return
          event.preventDefault()
          event.currentTarget.setPointerCapture(event.pointerId)
          pointer.current = event.pointerId
          points.current = [placeOf(event, event.nativeEvent)]
          setDrawing(points.current)
        }}
        onPointerMove={(event) => {
          if (event.pointerId !== pointer.current) return
          const own = event.nativeEvent
          const all = own.getCoalescedEvents?.() ?? []
          points.current = [
            ...points.current,
            ...(all.length === 0 ? [own] : all).map((one) => placeOf(event, one)),
          ]
          setDrawing(points.current)
        }}
        onPointerUp={end}
        onPointerCancel={end}
      >
        <path className={css.rule} d={`M30 150H${pad.width - 30}`} />
        <path className={css.ink} d={[...strokes, drawing].map(strokePath).join('')} />
      </svg>
      <div className={formCss.foot}>
        <button
          type="button"
          className={formCss.plain}
          disabled={strokes.length === 0}
          onClick={() => onChange([])}
        >
          {t('sign.clear')}
        </button>
      </div>
    </div>
  )
}
