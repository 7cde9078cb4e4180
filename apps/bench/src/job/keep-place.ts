/** Frames to watch after something was recorded: a slow tablet folds and draws a long job in half a second. */
const mostLooks = 90

/**
 * Keeps a person where they were while what they used is drawn anew: a form that folds away once it is recorded takes
 * the focus with it, and the page slides so that something else stands under the thumb. The focus then goes to the part
 * the form belonged to, and that part comes into view. Whatever the person touches meanwhile ends the watch.
 */
export function keepPlace(): void {
  const from = document.activeElement
  const places = placesAround(from)
  if (places.length === 0) return
  const ended = new AbortController()
  for (const means of ['pointerdown', 'keydown', 'wheel'])
    addEventListener(means, () => ended.abort(), { capture: true, once: true, signal: ended.signal })
  let looks = 0
  let moved = false
  const look = () => {
    if (ended.signal.aborted) return
    if (document.activeElement === document.body || document.activeElement === null) {
      const place = places.find((one) => one.isConnected)
      if (place !== undefined) {
        place.tabIndex = -1
        place.focus({ preventScroll: true })
        moved = true
      }
    }
    if (moved) bringIntoView(document.activeElement)
    if (++looks < mostLooks) requestAnimationFrame(look)
    else ended.abort()
  }
  requestAnimationFrame(look)
}

/** The parts of the page around a control, the nearest first; what the page may redraw is the part, not its place. */
function placesAround(control: Element | null): readonly HTMLElement[] {
  const places: HTMLElement[] = []
  for (
    let place = control?.parentElement?.closest<HTMLElement>('[data-need], section') ?? null;
    place !== null;
    place = place.parentElement?.closest<HTMLElement>('[data-need], section') ?? null
  )
    places.push(place)
  return places
}

function bringIntoView(place: Element | null): void {
  if (place === null) return
  const { top, bottom } = place.getBoundingClientRect()
  const bar = Number.parseFloat(document.documentElement.style.getPropertyValue('--bar-height')) || 0
  if (bottom < 0 || top > innerHeight - bar) place.scrollIntoView({ block: 'start' })
}
