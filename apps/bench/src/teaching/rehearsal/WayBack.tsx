import type { Recovery } from '@shearline/keywork'
import { say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import css from '../teaching.module.css'
import { lasting } from './lasting.ts'
import { stepsOf } from './way-words.ts'

/** A way back, step by step, and how long it takes in all. */
export function WayBack({ title, way }: { readonly title: string; readonly way: Recovery | null }) {
  return (
    <div className={css.way}>
      <p className={css.wayHead}>
        <strong>{title}</strong>{' '}
        {way === null
          ? say('recovery-way.none')
          : t('way.in', { way: say(`recovery-way.${way.way}`), time: lasting(way.seconds) })}
        {way !== null && !way.proven && ` ${t('way.not-proven')}`}
      </p>
      {way !== null && (
        <ol className={css.waySteps}>
          {stepsOf(way).map((step) => (
            <li key={step.code.place}>
              {step.words}
              {step.seconds !== null && step.seconds > 0 && (
                <span className={css.quiet}> {lasting(step.seconds)}</span>
              )}
            </li>
          ))}
        </ol>
      )}
    </div>
  )
}
