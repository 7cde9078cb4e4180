import { useCallback, useEffect, useState } from 'react'
import type { Target } from './desk.ts'

/** What can be filled in comes before what can only be pressed. */
const fields = 'input:not([disabled]), select, textarea'
const focusable = `${fields}, button:not([disabled]):not([tabindex="-1"]), a[href], summary`

/** Frames to wait for a chapter; a slow tablet builds the longest in half a second. */
const mostLooks = 180

/** Brings the control that answers a need under the thumb, once its chapter is shown. */
export function useReach(): (target: Target) => void {
  const [target, setTarget] = useState<Target | null>(null)
  useEffect(() => {
    if (target === null) return
    let frame = 0
    let looks = 0
    // The chapter was opened in the same render and is built after it: wait until it stands.
    const look = () => {
      const built = document.querySelector(`#chapter-${target.chapter} [data-built]`) !== null
      if (built || ++looks > mostLooks) reach(target)
      else frame = requestAnimationFrame(look)
    }
    frame = requestAnimationFrame(look)
    return () => cancelAnimationFrame(frame)
  }, [target])
  return useCallback((next: Target) => setTarget({ ...next }), [])
}

function reach(target: Target): void {
  const chapter = document.getElementById(`chapter-${target.chapter}`)
  if (chapter === null) return
  const place = placeOf(chapter, target)
  const control = place === null ? chapter.querySelector<HTMLElement>('button') : firstControl(place)
  // A form that is folded away is unfolded, wherever the fold is.
  for (
    let details = (control ?? place)?.closest('details');
    details;
    details = details.parentElement?.closest('details')
  ) {
    details.open = true
  }
  ;(place ?? chapter).scrollIntoView({ block: 'start' })
  control?.focus({ preventScroll: true })
}

/** The part marked with `data-need` for this need, the one for its key or code first. */
function placeOf(chapter: Element, { need, params }: Target): HTMLElement | null {
  if (need === null) return null
  for (const value of Object.values(params)) {
    const exact = chapter.querySelector<HTMLElement>(`[data-need~="${CSS.escape(`${need}:${value}`)}"]`)
    if (exact !== null) return exact
  }
  return chapter.querySelector<HTMLElement>(`[data-need~="${CSS.escape(need)}"]`)
}

function firstControl(place: HTMLElement): HTMLElement | null {
  if (place.matches(focusable)) return place
  return place.querySelector<HTMLElement>(fields) ?? place.querySelector<HTMLElement>(focusable)
}
