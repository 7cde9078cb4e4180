import css from '../teaching.module.css'
import type { Mark } from './marks.ts'

/** What a stop leaves as a shape: a whole disc, a half one, an empty one with a bar across. */
export function StopShape({ mark }: { readonly mark: Mark }) {
  return (
    <svg className={css.shape} viewBox="0 0 24 24" aria-hidden="true">
      <circle cx="12" cy="12" r="8.5" />
      {mark === 'safe' && <circle className={css.filled} cx="12" cy="12" r="8.5" />}
      {mark === 'loses' && <path className={css.filled} d="M12 3.5a8.5 8.5 0 0 0 0 17z" />}
      {mark === 'stranded' && <path d="M5.5 18.5l13-13" />}
    </svg>
  )
}
