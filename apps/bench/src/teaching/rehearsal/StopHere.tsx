import type { Interruption, TeachingPlan } from '@shearline/keywork'
import { keysSentence } from '../../job/if-it-stops.ts'
import { listMark, say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import css from '../teaching.module.css'
import type { Alike, StepAtRisk } from './marks.ts'
import { stepWords } from './SessionLine.tsx'
import { StopShape } from './StopShape.tsx'
import { WayBack } from './WayBack.tsx'

/** Everything that can go otherwise at one step: what it leaves, and the way back. */
export function StopHere({ step, plan }: { readonly step: StepAtRisk; readonly plan: TeachingPlan }) {
  const before = plan.keys.filter((key) => plan.stored.includes(key.identity)).map((key) => key.id)
  return (
    <section className={css.stopHere} aria-label={t('stop-here.title', { step: stepWords(step.after) })}>
      <h4>{t('stop-here.title', { step: stepWords(step.after) })}</h4>
      <ul className={css.happenings}>
        {step.alike.map((alike) => (
          <Happening key={alike.causes.map(causeName).join()} alike={alike} plan={plan} before={before} />
        ))}
      </ul>
    </section>
  )
}

function Happening({
  alike: { first, causes },
  plan,
  before,
}: {
  readonly alike: Alike
  readonly plan: TeachingPlan
  readonly before: readonly string[]
}) {
  const lost = before.filter((key) => !first.starts.includes(key))
  const mark = first.stranded ? 'stranded' : lost.length > 0 ? 'loses' : 'safe'
  return (
    <li className={css.happening} data-mark={mark}>
      <details>
        <summary>
          <StopShape mark={mark} />
          <span>
            <strong>{causes.map(causeWords).join(t('list-or'))}</strong>
            <span className={css.under}>
              {first.sessionOver ? '' : `${t('stop-here.goes-on')} `}
              {keysSentence(first, plan)}
            </span>
          </span>
        </summary>
        {first.spoiled.length > 0 && (
          <p>{t('stop-here.spoiled', { keys: first.spoiled.join(listMark()) })}</p>
        )}
        {first.stranded ? (
          <WayBack title={t('way.going')} way={first.going} />
        ) : (
          <p>{t('way.goes', { keys: first.starts.join(listMark()) })}</p>
        )}
        <WayBack title={t('way.finished')} way={first.finished} />
      </details>
    </li>
  )
}

function causeName({ cause, key = '' }: Interruption): string {
  return `${cause} ${key}`
}

/** What happened, and to which key where it is one's doing. */
export function causeWords({ cause, key }: Pick<Interruption, 'cause' | 'key'>): string {
  return key === undefined ? say(`cause.${cause}`) : t('cause.of-key', { cause: say(`cause.${cause}`), key })
}
