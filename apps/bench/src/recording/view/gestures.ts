import { useEffect, useRef } from 'react'
import { moved, type Span, zoomed } from './span.ts'

/** Where the plot stands on the screen, in pixels. */
export interface PlotPlace {
  readonly left: number
  readonly width: number
}

/** How far one turn of the wheel zooms. */
const wheelStep = 0.0016

/**
 * Zoom and pan by hand: one finger or the mouse moves, two fingers stretch and move, the wheel with Ctrl (and so a
 * touchpad's pinch) zooms. Moving up and down still scrolls the page.
 */
export function useGestures(
  element: HTMLElement | null,
  place: () => PlotPlace | null,
  span: Span,
  whole: Span,
  onSpan: (span: Span) => void,
): void {
  const latest = useRef({ place, span, whole, onSpan })
  latest.current = { place, span, whole, onSpan }
  useEffect(() => {
    if (element === null) return
    const fingers = new Map<number, number>()
    let before: { readonly span: Span; readonly fingers: ReadonlyMap<number, number> } | null = null
    /** Every finger that comes or goes begins a new gesture from what is shown then. */
    const begin = () => {
      before = fingers.size === 0 ? null : { span: latest.current.span, fingers: new Map(fingers) }
    }
    const down = (event: PointerEvent) => {
      if (event.button !== 0) return
      fingers.set(event.pointerId, event.clientX)
      element.setPointerCapture(event.pointerId)
      begin()
    }
    const move = (event: PointerEvent) => {
      if (!fingers.has(event.pointerId) || before === null) return
      fingers.set(event.pointerId, event.clientX)
      const plot = latest.current.place()
      if (plot !== null) latest.current.onSpan(spanOf(before, fingers, plot, latest.current.whole))
    }
    const up = (event: PointerEvent) => {
      if (fingers.delete(event.pointerId)) begin()
    }
    const wheel = (event: WheelEvent) => {
      const plot = latest.current.place()
      if (!event.ctrlKey || plot === null) return
      event.preventDefault()
      const { span: now, whole: all, onSpan: show } = latest.current
      const at = now.from + ((event.clientX - plot.left) / plot.width) * (now.to - now.from)
      show(zoomed(now, all, Math.exp(event.deltaY * wheelStep), at))
    }
    element.addEventListener('pointerdown', down)
    element.addEventListener('pointermove', move)
    element.addEventListener('pointerup', up)
    element.addEventListener('pointercancel', up)
    element.addEventListener('wheel', wheel, { passive: false })
    return () => {
      element.removeEventListener('pointerdown', down)
      element.removeEventListener('pointermove', move)
      element.removeEventListener('pointerup', up)
      element.removeEventListener('pointercancel', up)
      element.removeEventListener('wheel', wheel)
    }
  }, [element])
}

function spanOf(
  before: { readonly span: Span; readonly fingers: ReadonlyMap<number, number> },
  fingers: ReadonlyMap<number, number>,
  plot: PlotPlace,
  whole: Span,
): Span {
  const [first, second] = [...fingers].map(([finger, now]) => ({
    was: before.fingers.get(finger) ?? now,
    now,
  }))
  if (first === undefined) return before.span
  const length = before.span.to - before.span.from
  const perPixel = length / Math.max(1, plot.width)
  const timeAt = (pixel: number) => before.span.from + (pixel - plot.left) * perPixel
  if (second === undefined) return moved(before.span, whole, (first.was - first.now) * perPixel)
  const was = Math.max(8, Math.abs(first.was - second.was))
  const now = Math.max(8, Math.abs(first.now - second.now))
  const middleWas = (first.was + second.was) / 2
  const middleNow = (first.now + second.now) / 2
  const stretched = zoomed(before.span, whole, was / now, timeAt(middleWas))
  const stretchedPerPixel = (stretched.to - stretched.from) / Math.max(1, plot.width)
  return moved(stretched, whole, (middleWas - middleNow) * stretchedPerPixel)
}
