import type { Score } from '@shearline/practice-car'
import { useEffect, useRef } from 'react'
import formCss from '../form/form.module.css'
import { number, volts } from '../words/amounts.ts'
import { listMark } from '../words/engine.ts'
import { t } from '../words/index.ts'
import css from './practice.module.css'
import { markWords } from './practice-words.ts'

/** Points from which an exercise counts as passed; the same as in the command. Ours. */
const passedFrom = 80

/** How it went: the points, why some were lost, how long it took and how low the supply fell. */
export function Scored({ score, onAgain }: { readonly score: Score; readonly onAgain: () => void }) {
  const passed = score.points >= passedFrom
  const points = useRef<HTMLHeadingElement>(null)
  // What was pressed is gone: reading goes on at the points.
  useEffect(() => points.current?.focus(), [])
  return (
    <section className={css.score} aria-label={t('practice.score')} data-passed={passed}>
      <h2 className={css.points} ref={points} tabIndex={-1}>
        {t('practice.points', { points: score.points })}
      </h2>
      <p>{t(passed ? 'practice.passed' : 'practice.not-passed')}</p>
      <ul className={css.marks}>
        {score.marks.map((mark) => (
          <li key={`${mark.code} ${JSON.stringify(mark.values)}`}>
            <span className={css.loss}>{number(mark.points)}</span> {markWords(mark)}
          </li>
        ))}
        {score.marks.length === 0 && <li>{t('practice.nothing-lost')}</li>}
      </ul>
      <p className={css.quiet}>
        {t('practice.took', {
          minutes: score.minutes,
          volts: volts(score.lowestVolts),
          keys: score.startsAtEnd.join(listMark()) || t('practice.no-key'),
        })}
      </p>
      <div className={formCss.foot}>
        <button type="button" className={formCss.submit} onClick={onAgain}>
          {t('practice.again')}
        </button>
      </div>
    </section>
  )
}
