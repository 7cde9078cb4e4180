import { type MarkKind, markShapes } from './marks.ts'
import css from './recording.module.css'

/** The shape of a kind of mark, as in the strip, to stand beside its word. */
export function MarkShape({ kind }: { readonly kind: MarkKind }) {
  return (
    <svg className={css.shape} viewBox="-11 -11 22 22" aria-hidden="true">
      <path className={css.stripMark} d={markShapes[kind]} />
    </svg>
  )
}
