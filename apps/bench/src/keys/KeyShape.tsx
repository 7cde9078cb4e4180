import type { KeyForm } from '@shearline/keywork'
import css from './keys.module.css'

/** A key as we draw it: one outline per way of building, never a picture of a real one. */
export function KeyShape({ form }: { readonly form: KeyForm }) {
  return (
    <svg className={css.shape} viewBox="0 0 96 40" aria-hidden="true">
      {shapes[form]}
    </svg>
  )
}

const blade = <path className={css.metal} d="M40 16h44l6 4-6 6h-4l-3-3-4 4-4-3-4 3-5-4-4 3H40z" />
const button = (x: number, y: number) => (
  <circle key={`${x}-${y}`} className={css.button} cx={x} cy={y} r="3" />
)

/** A table keyed by every form, so that a new form without a shape fails to compile. */
const shapes: Readonly<Record<KeyForm, React.ReactNode>> = {
  blade: (
    <>
      {blade}
      <path
        className={css.metal}
        fillRule="evenodd"
        d="M24 6a14 14 0 1 1 0 28 14 14 0 0 1 0-28zm-4 9a5 5 0 1 0 0 10 5 5 0 0 0 0-10z"
      />
    </>
  ),
  transponder: (
    <>
      {blade}
      <rect className={css.body} x="6" y="5" width="36" height="30" rx="12" />
      <path className={css.mark} d="M20 15h10M20 20h10M20 25h10" />
    </>
  ),
  'remote-head': (
    <>
      {blade}
      <rect className={css.body} x="4" y="4" width="40" height="32" rx="9" />
      {[button(15, 20), button(24, 20), button(33, 20)]}
    </>
  ),
  flip: (
    <>
      <path className={css.metal} d="M34 12 78 2l7 2-4 6-41 11z" />
      <rect className={css.body} x="4" y="8" width="46" height="27" rx="8" />
      <circle className={css.button} cx="41" cy="16" r="5" />
      {[button(15, 22), button(25, 22)]}
    </>
  ),
  proximity: (
    <>
      <rect className={css.body} x="20" y="3" width="54" height="34" rx="15" />
      {[button(36, 14), button(36, 26)]}
      <path className={css.mark} d="M52 12q6 8 0 16M59 9q9 11 0 22" />
    </>
  ),
  card: (
    <>
      <rect className={css.body} x="18" y="4" width="60" height="32" rx="4" />
      <path className={css.mark} d="M56 12q6 8 0 16M63 9q9 11 0 22" />
      {[button(30, 20), button(41, 20)]}
    </>
  ),
}
