import type { GridCell, TestOutcome } from '@shearline/keywork'
import { say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import css from './keys.module.css'
import { OutcomeShape } from './OutcomeShape.tsx'

/** One cell of the grid: its answer in a word and a shape; a tap lays the chosen answer into it. */
export function GridCellButton({
  cell,
  answer,
  onTap,
}: {
  readonly cell: GridCell | undefined
  readonly answer: TestOutcome | null
  readonly onTap: () => void
}) {
  if (cell === undefined) return null
  const state = cell.lost ? 'lost' : cell.outcome
  // What the key's form excludes was never a question; a tap there would only be a slip.
  if (
    cell.outcome === 'not-applicable' &&
    cell.because !== undefined &&
    answer !== 'works' &&
    answer !== 'fails'
  ) {
    return (
      <span className={css.cell} data-outcome="not-applicable">
        <OutcomeShape outcome="not-applicable" />
        {t('cell.not-applicable')}
      </span>
    )
  }
  return (
    <button
      type="button"
      className={css.cell}
      data-outcome={state}
      title={cell.because}
      aria-label={t('cell.label', {
        key: cell.key,
        function: say(`function.${cell.function}`),
        state: t(`cell.${state}`),
        answer: answer === null ? '-' : say(`outcome.${answer}`),
      })}
      onClick={onTap}
    >
      <OutcomeShape outcome={state} />
      {t(`cell.${state}`)}
    </button>
  )
}
