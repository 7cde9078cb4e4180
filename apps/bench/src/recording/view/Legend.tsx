import { memo } from 'react'
import { listMark } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import { lasting } from '../elapsed.ts'
import type { LogAnswer } from '../log-messages.ts'
import { MarkShape } from '../MarkShape.tsx'
import { markKinds, type StripMarks } from '../marks.ts'
import { supplyWords } from '../supply-words.ts'
import type { Span } from './span.ts'
import css from './view.module.css'

/** What is in sight, in words beside its shape; what is not in sight is not listed. */
export const Legend = memo(function Legend({
  marks: { marks, lanes, supply, gaps },
  span,
  answer,
}: {
  readonly marks: StripMarks
  readonly span: Span
  readonly answer: LogAnswer | null
}) {
  const seen = <T extends { readonly from: number; readonly to: number }>(all: readonly T[]): T[] =>
    all.filter((one) => one.to >= span.from && one.from <= span.to)
  const sessions = new Set(seen(lanes.flatMap((lane) => lane.bands)).map((band) => band.unit))
  const inSight = seen(marks)
  const stretches = seen(supply)
  const silent = seen(gaps).length
  const refused = answer === null ? 0 : answer.refused.reduce((sum, count) => sum + count, 0)
  const slice = answer === null ? 0 : (answer.to - answer.from) / answer.total.length
  return (
    <ul className={css.legend} aria-label={t('view.legend')}>
      <li>
        <span className={css.steelSign} aria-hidden="true" />
        {t('legend.messages', { slice: lasting(slice) })}
      </li>
      {refused > 0 && (
        <li>
          <span className={css.inkSign} aria-hidden="true" />
          {t('legend.refused', { count: refused })}
        </li>
      )}
      {sessions.size > 0 && (
        <li>
          <span className={css.bandSign} aria-hidden="true" />
          {t('legend.sessions', {
            units: sessions.size,
            names: [...sessions].slice(0, 6).join(listMark()),
            more: Math.max(0, sessions.size - 6),
          })}
        </li>
      )}
      {markKinds
        .filter((kind) => inSight.some((mark) => mark.kind === kind))
        .map((kind) => (
          <li key={kind}>
            <MarkShape kind={kind} />
            {t(`marks.${kind}`, { count: inSight.filter((mark) => mark.kind === kind).length })}
          </li>
        ))}
      {silent > 0 && (
        <li>
          <span className={css.hatchSign} aria-hidden="true" />
          {t('legend.gaps', { count: silent })}
        </li>
      )}
      {stretches.length > 0 && (
        <li>
          <span className={css.curveSign} aria-hidden="true" />
          {t('strip.supply', {
            volts: supplyWords(
              Math.min(...stretches.map((stretch) => stretch.low)),
              Math.max(...stretches.map((stretch) => stretch.high)),
            ),
          })}
        </li>
      )}
    </ul>
  )
})
