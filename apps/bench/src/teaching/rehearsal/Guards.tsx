import type { GuardCheck } from '@shearline/keywork'
import { listMark, say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import css from '../teaching.module.css'

/** What is to be settled before the session is opened, each with a way to settle it. */
export function Guards({ guards }: { readonly guards: readonly GuardCheck[] }) {
  const open = guards.filter((each) => each.state !== 'met')
  const met = guards.filter((each) => each.state === 'met')
  return (
    <section className={css.guards} aria-label={t('guards.title')}>
      <h4>{open.length === 0 ? t('guards.all') : t('guards.open', { count: open.length })}</h4>
      <ul>
        {open.map(({ guard, state, keys }) => (
          <li key={guard} className={css.guard} data-state={state}>
            <span className={css.guardSign} aria-hidden="true" />
            <span>
              <strong>{say(`guard.${guard}`)}</strong>: {say(`guard-state.${state}`)}
              {keys.length > 0 && ` (${keys.join(listMark())})`}
              <span className={css.under}>{say(`guard-meet.${guard}`)}</span>
            </span>
          </li>
        ))}
      </ul>
      {met.length > 0 && (
        <p className={css.under}>
          {t('guards.met', { guards: met.map(({ guard }) => say(`guard.${guard}`)).join('; ') })}
        </p>
      )}
    </section>
  )
}
