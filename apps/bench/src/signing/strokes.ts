/** @module A drawn signature as a path: pure, so that the same strokes give the same bytes everywhere. */

/** A place on the pad, in the pad's own units. */
export interface PadPoint {
  readonly x: number
  readonly y: number
}

/** The pad's own units; what is drawn is kept in them, whatever size the screen is. */
export const pad = { width: 600, height: 200 } as const

const told = (value: number) => String(Math.round(value * 10) / 10)

/** One stroke as SVG path data (SVG 2, chapter 9): smooth between the middles of its points. Empty without points. */
export function strokePath(points: readonly PadPoint[]): string {
  const [first, ...rest] = points
  if (first === undefined) return ''
  const from = `M${told(first.x)} ${told(first.y)}`
  // A dot is a line of no length to look at, which a round cap makes a dot.
  if (rest.length === 0) return `${from}h0.1`
  const pieces = rest.slice(0, -1).map((point, index) => {
    const next = rest[index + 1] ?? point
    return `Q${told(point.x)} ${told(point.y)} ${told((point.x + next.x) / 2)} ${told((point.y + next.y) / 2)}`
  })
  const last = rest.at(-1) ?? first
  return `${from}${pieces.join('')}L${told(last.x)} ${told(last.y)}`
}

/** Length of everything drawn, in the pad's units: a tap or a slip is no signature. */
export function drawnLength(strokes: readonly (readonly PadPoint[])[]): number {
  let length = 0
  for (const stroke of strokes) {
    for (const [index, point] of stroke.entries()) {
      const before = stroke[index - 1]
      if (before !== undefined) length += Math.hypot(point.x - before.x, point.y - before.y)
    }
  }
  return length
}

/** The least that counts as drawn: a quarter of the pad's height. Our own choice. */
export const leastDrawn: number = pad.height / 4
