/** @module Draws what a strip marks into the plot's canvas: gaps, supply, session lanes, and the shapes of events. */
import uPlot from 'uplot'
import { type MarkKind, markShapes, type StripMarks } from '../marks.ts'
import type { Colours } from './colours.ts'

/** Heights in CSS pixels. */
export const markRow = 26
export const laneHeight = 13

const shapeScale = 0.85
/** Shapes of one kind closer than this are drawn once; the legend has their number. */
const closest = 7

/** Hatches the stretches without a message, under everything else. */
export function paintGaps(plot: uPlot, { gaps }: StripMarks, colours: Colours): void {
  const { ctx, bbox } = plot
  const right = bbox.left + bbox.width
  const clamp = (value: number) => Math.min(right, Math.max(bbox.left, value))
  for (const gap of gaps) {
    const from = clamp(plot.valToPos(gap.from, 'x', true))
    const to = clamp(plot.valToPos(gap.to, 'x', true))
    if (to > from) hatch(ctx, from, bbox.top, to, bbox.top + bbox.height, 7 * uPlot.pxRatio, colours.rule)
  }
}

/** Draws the marks above the plot and the supply inside it. */
export function paintMarks(plot: uPlot, { marks, lanes, supply }: StripMarks, colours: Colours): void {
  const { ctx, bbox } = plot
  const dot = uPlot.pxRatio
  const x = (seconds: number) => plot.valToPos(seconds, 'x', true)
  const right = bbox.left + bbox.width
  const clamp = (value: number) => Math.min(right, Math.max(bbox.left, value))
  const lanesTop = bbox.top - lanes.length * laneHeight * dot
  ctx.save()
  ctx.lineJoin = 'round'
  ctx.lineCap = 'round'

  ctx.lineWidth = 2 * dot
  ctx.strokeStyle = colours.brassDeep
  ctx.save()
  ctx.beginPath()
  ctx.rect(bbox.left, bbox.top, bbox.width, bbox.height)
  ctx.clip()
  for (const unit of new Set(supply.map((stretch) => stretch.unit))) {
    ctx.beginPath()
    for (const { from, to, low, high } of supply.filter((stretch) => stretch.unit === unit)) {
      ctx.lineTo(x(from), plot.valToPos(high, 'v', true))
      ctx.lineTo(x(to), plot.valToPos(low, 'v', true))
    }
    ctx.stroke()
  }
  ctx.restore()

  ctx.font = `${11 * dot}px ${getComputedStyle(plot.root).fontFamily}`
  ctx.textAlign = 'right'
  // Names of units are read from the left, as the picture is, whatever the language around it.
  ctx.direction = 'ltr'
  ctx.textBaseline = 'middle'
  lanes.forEach(({ units, bands }, index) => {
    const top = lanesTop + index * laneHeight * dot
    ctx.fillStyle = colours.quiet
    ctx.fillText(laneName(units), bbox.left - 6 * dot, top + (laneHeight / 2) * dot)
    ctx.fillStyle = colours.patina
    for (const band of bands) {
      if (x(band.to) < bbox.left || x(band.from) > right) continue
      const left = clamp(x(band.from))
      const width = Math.max(3 * dot, clamp(x(band.to)) - left)
      ctx.fillRect(left, top + 3 * dot, width, (laneHeight - 5) * dot)
    }
  })

  ctx.lineWidth = 2.2 * dot
  ctx.strokeStyle = colours.brassDeep
  const rowMiddle = lanesTop - (markRow / 2) * dot
  const drawn = new Map<MarkKind, number>()
  for (const mark of marks) {
    const at = x(mark.from)
    if (at < bbox.left || at > right) continue
    const last = drawn.get(mark.kind)
    if (last !== undefined && at - last < closest * dot) continue
    drawn.set(mark.kind, at)
    ctx.save()
    ctx.translate(at, rowMiddle)
    ctx.scale(shapeScale * dot, shapeScale * dot)
    ctx.lineWidth = 2.6
    ctx.stroke(new Path2D(markShapes[mark.kind]))
    ctx.restore()
    // A thin line leads from the shape down into what was on the wire at that moment.
    ctx.save()
    ctx.lineWidth = dot
    ctx.setLineDash([2 * dot, 4 * dot])
    ctx.beginPath()
    ctx.moveTo(at, rowMiddle + 9 * dot)
    ctx.lineTo(at, bbox.top + bbox.height)
    ctx.stroke()
    ctx.restore()
  }
  ctx.restore()
}

function laneName(units: readonly string[]): string {
  const [first = ''] = units
  if (units.length > 1) return `${tail(first)} +${units.length - 1}`
  return tail(first)
}

/** Identifiers of 29 bits differ in their last bytes only. */
function tail(unit: string): string {
  return unit.length > 4 ? `\u2026${unit.slice(-4)}` : unit
}

function hatch(
  ctx: CanvasRenderingContext2D,
  left: number,
  top: number,
  right: number,
  bottom: number,
  step: number,
  colour: string,
): void {
  ctx.save()
  ctx.beginPath()
  ctx.rect(left, top, right - left, bottom - top)
  ctx.clip()
  ctx.strokeStyle = colour
  ctx.lineWidth = step / 6
  ctx.beginPath()
  const height = bottom - top
  for (let at = left - height; at < right; at += step) {
    ctx.moveTo(at, bottom)
    ctx.lineTo(at + height, top)
  }
  ctx.stroke()
  ctx.restore()
}
