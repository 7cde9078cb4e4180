import { t } from '../../words/index.ts'
import { isWhole, moved, type Span, zoomed } from './span.ts'
import css from './view.module.css'

/** Zoom and pan for one thumb. */
export function ZoomBar({
  span,
  whole,
  onSpan,
}: {
  readonly span: Span
  readonly whole: Span
  readonly onSpan: (span: Span) => void
}) {
  const half = (span.to - span.from) / 2
  const all = isWhole(span, whole)
  const closer = zoomed(span, whole, 0.5)
  return (
    <fieldset className={css.zoom}>
      <legend className="sr">{t('view.zoom')}</legend>
      <button
        type="button"
        disabled={span.from <= whole.from}
        onClick={() => onSpan(moved(span, whole, -half))}
      >
        {t('view.earlier')}
      </button>
      <button type="button" disabled={all} onClick={() => onSpan(zoomed(span, whole, 2))}>
        {t('view.wider')}
      </button>
      <button
        type="button"
        disabled={closer.to - closer.from >= span.to - span.from}
        onClick={() => onSpan(closer)}
      >
        {t('view.closer')}
      </button>
      <button type="button" disabled={span.to >= whole.to} onClick={() => onSpan(moved(span, whole, half))}>
        {t('view.later')}
      </button>
      <button type="button" disabled={all} onClick={() => onSpan(whole)}>
        {t('view.whole')}
      </button>
    </fieldset>
  )
}
