import { type KeyboardEvent, memo, useEffect, useId, useRef, useState } from 'react'
import uPlot from 'uplot'
import 'uplot/dist/uPlot.min.css'
import { number } from '../../words/amounts.ts'
import { t } from '../../words/index.ts'
import { elapsed } from '../elapsed.ts'
import type { LogAnswer } from '../log-messages.ts'
import type { StripMarks } from '../marks.ts'
import { type Colours, useColours } from './colours.ts'
import { type PlotPlace, useGestures } from './gestures.ts'
import { laneHeight, markRow, paintGaps, paintMarks } from './paint.ts'
import { moved, type Span, zoomed } from './span.ts'
import css from './view.module.css'

/** Height of the plot itself and of its time axis, CSS pixels. */
const plotHeight = 96
const axisHeight = 24

interface Shown {
  readonly span: Span
  readonly marks: StripMarks
  readonly colours: Colours
}

/** The strip as a plot: messages per slice, refusals in front, supply, sessions and events. */
export const StripChart = memo(function StripChart({
  span,
  whole,
  answer,
  marks,
  label,
  onSpan,
}: {
  readonly span: Span
  readonly whole: Span
  readonly answer: LogAnswer | null
  readonly marks: StripMarks
  readonly label: string
  readonly onSpan: (span: Span) => void
}) {
  const [host, setHost] = useState<HTMLDivElement | null>(null)
  const plot = useRef<uPlot | null>(null)
  const colours = useColours(host)
  const width = useWidth(host)
  const shown = useRef<Shown | null>(null)
  shown.current = colours === null ? null : { span, marks, colours }
  const help = useId()
  const lanes = marks.lanes.length
  const volts = marks.supply.flatMap(({ low, high }) => [low, high])
  const lowest = volts.length === 0 ? null : Math.floor(Math.min(...volts) - 0.5)
  const highest = volts.length === 0 ? null : Math.ceil(Math.max(...volts) + 0.5)

  useEffect(() => {
    if (host === null || colours === null || width === 0) return
    const supply = lowest === null || highest === null ? null : ([lowest, highest] as const)
    const made = new uPlot(optionsOf(width, lanes, supply, colours, shown), [[], [], [], []], host)
    plot.current = made
    return () => {
      made.destroy()
      plot.current = null
    }
  }, [host, colours, width, lanes, lowest, highest])

  useEffect(() => {
    // The plot is made anew with its colours and width; each time it wants its data again.
    if (colours !== null && width > 0) plot.current?.setData(dataOf(answer))
  })

  const place = (): PlotPlace | null => {
    const box = plot.current?.over.getBoundingClientRect()
    return box === undefined ? null : { left: box.left, width: box.width }
  }
  useGestures(host, place, span, whole, onSpan)

  const key = (event: KeyboardEvent) => {
    const next = spanAfterKey(event.key, span, whole)
    if (next === null || event.ctrlKey || event.metaKey || event.altKey) return
    event.preventDefault()
    onSpan(next)
  }
  return (
    <>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset is for questions; this is one picture moved by keys */}
      <div
        ref={setHost}
        className={css.chart}
        role="group"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it is zoomed and moved by keys
        tabIndex={0}
        aria-label={label}
        aria-describedby={help}
        onKeyDown={key}
        style={{ height: heightOf(lanes) }}
      />
      <p className="sr" id={help}>
        {t('view.keys')}
      </p>
    </>
  )
})

/** What a key does to the span, or null when it does nothing. */
function spanAfterKey(key: string, span: Span, whole: Span): Span | null {
  const quarter = (span.to - span.from) / 4
  if (key === '+' || key === '=') return zoomed(span, whole, 0.5)
  if (key === '-') return zoomed(span, whole, 2)
  if (key === 'ArrowLeft') return moved(span, whole, -quarter)
  if (key === 'ArrowRight') return moved(span, whole, quarter)
  return key === 'Home' ? whole : null
}

function heightOf(lanes: number): number {
  return markRow + lanes * laneHeight + plotHeight + axisHeight
}

function useWidth(element: HTMLElement | null): number {
  const [width, setWidth] = useState(0)
  useEffect(() => {
    if (element === null) return
    const observer = new ResizeObserver(() => setWidth(element.clientWidth))
    observer.observe(element)
    return () => observer.disconnect()
  }, [element])
  return width
}

function dataOf(answer: LogAnswer | null): uPlot.AlignedData {
  if (answer === null) return [[], [], [], []]
  const { from, to, total, refused } = answer
  const step = (to - from) / total.length
  // One more than there are slices: a step reaches from its own time to the next.
  const times = Array.from({ length: total.length + 1 }, (_, index) => from + index * step)
  return [
    times,
    closed(total),
    closed(refused).map((count) => (count === 0 ? null : count)),
    times.map(() => null),
  ]
}

function closed(counts: readonly number[]): number[] {
  return [...counts, counts.at(-1) ?? 0]
}

function optionsOf(
  width: number,
  lanes: number,
  supply: readonly [low: number, high: number] | null,
  colours: Colours,
  shown: { readonly current: Shown | null },
): uPlot.Options {
  const stepped = uPlot.paths.stepped?.({ align: 1 })
  const steps = stepped === undefined ? {} : { paths: stepped }
  const axis: uPlot.Axis = {
    stroke: colours.quiet,
    font: `12px ${getComputedStyle(document.body).fontFamily}`,
    ticks: { show: false },
    grid: { stroke: colours.rule, width: 1 },
  }
  return {
    width,
    height: heightOf(lanes),
    padding: [markRow + lanes * laneHeight, supply === null ? 12 : 0, 0, 0],
    legend: { show: false },
    cursor: { show: false },
    scales: {
      x: { time: false, range: () => [shown.current?.span.from ?? 0, shown.current?.span.to ?? 1] },
      y: { range: (_plot, _low, high) => [0, Math.max(1, high ?? 1) * 1.08] },
      v: { auto: false, range: () => [supply?.[0] ?? 0, supply?.[1] ?? 1] },
    },
    series: [
      {},
      {
        ...steps,
        scale: 'y',
        fill: colours.steel,
        stroke: colours.steelDeep,
        width: 1,
        points: { show: false },
      },
      { ...steps, scale: 'y', fill: colours.ink, stroke: colours.ink, width: 1, points: { show: false } },
      { scale: 'v', points: { show: false } },
    ],
    axes: [
      {
        ...axis,
        size: axisHeight,
        space: 64,
        values: (_plot, splits, _axis, _space, step) =>
          splits.map((split) => elapsed(split, decimalsFor(step))),
      },
      {
        ...axis,
        size: 50,
        space: 30,
        incrs: [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000, 50_000, 100_000, 1_000_000],
        values: (_plot, splits) => splits.map((split) => number(split)),
      },
      {
        ...axis,
        show: supply !== null,
        scale: 'v',
        side: 1,
        size: 40,
        space: 30,
        grid: { show: false },
        values: (_plot, splits) => splits.map((split) => t('view.volts', { volts: number(split, 1) })),
      },
    ],
    hooks: {
      drawClear: [
        (made) => {
          if (shown.current !== null) paintGaps(made, shown.current.marks, shown.current.colours)
        },
      ],
      draw: [
        (made) => {
          if (shown.current !== null) paintMarks(made, shown.current.marks, shown.current.colours)
        },
      ],
    },
  }
}

/** As many decimals as tell two ticks apart. */
function decimalsFor(step: number): number {
  return Math.min(3, Math.max(0, -Math.floor(Math.log10(step) + 1e-9)))
}
