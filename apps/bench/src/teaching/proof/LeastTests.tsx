import type { JobState } from '@shearline/jobfile'
import { type Disturbance, leastTests } from '@shearline/keywork'
import { useDesk } from '../../job/desk.ts'
import { Part } from '../../job/Part.tsx'
import { Tag } from '../../keys/Tag.tsx'
import { say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import css from '../teaching.module.css'

/** What the work can have disturbed, as far as it is on record. A new key counts as such by itself. */
function disturbedBy({ teaching, supply }: JobState): readonly Disturbance[] {
  const disturbed: Disturbance[] = []
  if (teaching.openedAt !== null) disturbed.push({ what: 'list-rewritten' })
  // A support supply counts like an interruption (practice 1.4); one is connected wherever its amperes are set.
  if (supply.setting?.supplyAmperes !== undefined || teaching.breakOff?.why === 'supply')
    disturbed.push({ what: 'supply-interrupted' })
  return disturbed
}

/** The fewest tests that prove this job, as a list to work through; the cells of the grid answer them. */
export function LeastTests() {
  const { state } = useDesk()
  const needed = leastTests(state.keys, disturbedBy(state)).map((test) => {
    const cells = state.grid.rows.find((row) => row.key === test.key)?.after ?? []
    const outcome = cells.find((cell) => cell.function === test.function)?.outcome ?? 'open'
    return { ...test, outcome }
  })
  if (needed.length === 0) return null
  const done = needed.filter((test) => test.outcome !== 'open').length
  return (
    <Part title={t('least.title', { count: needed.length, done })}>
      <p className={css.under}>{t('least.why')}</p>
      <ul className={css.least}>
        {needed.map((test) => {
          const key = state.keys.find((one) => one.id === test.key)
          return (
            <li key={`${test.key} ${test.function}`} data-outcome={test.outcome}>
              {key !== undefined && <Tag letter={key.id} colour={key.colour} />}
              <span>
                <strong>{say(`function.${test.function}`)}</strong>{' '}
                {test.outcome === 'open' ? t('least.open') : say(`outcome.${test.outcome}`)}
                <span className={css.under}>
                  {test.because.map(({ what }) => say(`disturbed.${what}`)).join('; ')}
                </span>
              </span>
            </li>
          )
        })}
      </ul>
    </Part>
  )
}
