import { memo, useMemo } from 'react'
import formCss from '../../form/form.module.css'
import { t } from '../../words/index.ts'
import { elapsed } from '../elapsed.ts'
import type { StripMarks } from '../marks.ts'
import { supplyWords } from '../supply-words.ts'
import { around, type Span } from './span.ts'
import css from './view.module.css'

/** Lines listed at most; zooming in shows the rest. */
const most = 60

interface Line {
  readonly from: number
  readonly to: number
  readonly words: string
}

/** Everything the strip marks in the stretch in sight, as words; each leads to its place. */
export const MarkList = memo(function MarkList({
  marks,
  span,
  whole,
  onSpan,
}: {
  readonly marks: StripMarks
  readonly span: Span
  readonly whole: Span
  readonly onSpan: (span: Span) => void
}) {
  const all = useMemo(() => [...linesOf(marks)].sort((a, b) => a.from - b.from), [marks])
  const lines = all.filter((line) => line.to >= span.from && line.from <= span.to)
  if (lines.length === 0) return <p className={formCss.hint}>{t('view.no-marks')}</p>
  return (
    <details className={`${formCss.more} ${css.marks}`}>
      <summary>{t('view.marks', { count: lines.length })}</summary>
      <ul className={css.markLines}>
        {lines.slice(0, most).map((line, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: equal things happen at the same time
          <li key={index}>
            <button type="button" onClick={() => onSpan(around(line.from, line.to, whole))}>
              <span className={css.when}>{elapsed(line.from, 3)}</span> {line.words}
            </button>
          </li>
        ))}
      </ul>
      {lines.length > most && (
        <p className={formCss.hint}>{t('view.more-marks', { count: lines.length - most })}</p>
      )}
    </details>
  )
})

function linesOf({ marks, lanes, supply, gaps, refusals }: StripMarks): Line[] {
  return [
    ...marks.map(({ from, to, kind, unit, detail }) => ({
      from,
      to,
      words: t(`mark.${kind}`, { unit, detail, seconds: elapsed(to - from, 1) }),
    })),
    ...lanes.flatMap((lane) =>
      lane.bands.map(({ from, to, unit, detail }) => ({
        from,
        to,
        words: t('mark.session', { unit, detail, seconds: elapsed(to - from, 1) }),
      })),
    ),
    ...refusals.map(({ fromSeconds, toSeconds, unit, detail, times }) => ({
      from: fromSeconds,
      to: toSeconds,
      words: t('mark.refused', { unit, detail, times: times ?? 1 }),
    })),
    ...gaps.map(({ from, to }) => ({
      from,
      to,
      words: t('mark.no-message', { seconds: elapsed(to - from, 0) }),
    })),
    ...supply.map(({ from, to, unit, low, high }) => ({
      from,
      to,
      words: t('mark.supply', { unit, volts: supplyWords(low, high) }),
    })),
  ]
}
