import type { JobState } from '@shearline/jobfile'
import { Tag } from '../../keys/Tag.tsx'
import { listMark } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import css from '../teaching.module.css'
import type { Mark, StepAtRisk } from './marks.ts'
import { StopShape } from './StopShape.tsx'

/** The session as a line of steps, and under each what holds if it stops there. A step is tapped to be read. */
export function SessionLine({
  steps,
  end,
  keys,
  chosen,
  onChoose,
}: {
  readonly steps: readonly StepAtRisk[]
  readonly end: Mark
  readonly keys: JobState['keys']
  readonly chosen: string
  readonly onChoose: (after: string) => void
}) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard
    <section className={css.lineScroll} aria-label={t('line-of-steps')} tabIndex={0}>
      <ol className={css.line}>
        {steps.map((step) => {
          const key = keys.find((one) => one.id === step.after)
          return (
            <li key={step.after} className={css.knot} data-mark={step.mark}>
              <button type="button" aria-pressed={chosen === step.after} onClick={() => onChoose(step.after)}>
                <span className={css.knotTop}>
                  {key === undefined ? t('rehearsal.opened') : <Tag letter={key.id} colour={key.colour} />}
                </span>
                <span className="sr">{t('stops.title')}:</span>
                <StopShape mark={step.mark} />
                <span className={css.knotWord}>{markWords(step.mark, step.lost)}</span>
              </button>
            </li>
          )
        })}
        <li className={css.knot} data-mark={end}>
          <span className={css.knotEnd}>
            <span className={css.knotTop}>{t('rehearsal.closed-short')}</span>
            <StopShape mark={end} />
            <span className={css.knotWord}>{t(`end-mark.${end}`)}</span>
          </span>
        </li>
      </ol>
    </section>
  )
}

export function stepWords(after: string): string {
  return after === 'open' ? t('rehearsal.open') : t('rehearsal.key', { key: after })
}

function markWords(mark: Mark, lost: readonly string[]): string {
  return t(`mark.${mark}`, { keys: lost.join(listMark()) })
}
