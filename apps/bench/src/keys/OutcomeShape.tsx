import type { GridCell } from '@shearline/keywork'
import css from './keys.module.css'

/** An answer as a shape: a whole bar works, a broken one fails, a dot is open, nothing does not apply. */
export function OutcomeShape({ outcome }: { readonly outcome: GridCell['outcome'] | 'lost' }) {
  return (
    <svg className={css.outcome} viewBox="0 0 24 10" aria-hidden="true">
      {outcome === 'works' && <path d="M2 5H22" />}
      {outcome === 'fails' && <path d="M2 5H8M16 5H22M9 1l6 8" />}
      {outcome === 'lost' && <path d="M2 5H8M16 5H22M9 1l6 8M15 1 9 9" />}
      {outcome === 'not-tested' && <path d="M2 5h3M8 5h3M14 5h3M20 5h2" />}
      {outcome === 'open' && <circle cx="12" cy="5" r="3" />}
    </svg>
  )
}
