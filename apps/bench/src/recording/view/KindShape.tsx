import type { RowKind } from './row-words.ts'
import css from './view.module.css'

const shapes: Readonly<Record<RowKind, string>> = {
  asks: 'M-7 0H7M2 -5 7 0 2 5',
  answers: 'M7 0H-7M-2 -5 -7 0-2 5',
  refuses: 'M-6 -6 6 6M6 -6-6 6',
  waits: 'M-6 0H-5.9M0 0H0.1M6 0H6.1',
  cut: 'M-7 0H-2M2 -6-2 6M3 0H7',
}

/** The shape of a kind of message, beside its word. */
export function KindShape({ kind }: { readonly kind: RowKind }) {
  return (
    <svg className={css.kindShape} data-kind={kind} viewBox="-9 -9 18 18" aria-hidden="true">
      <path d={shapes[kind]} />
    </svg>
  )
}
