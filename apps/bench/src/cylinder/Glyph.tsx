import type { Tumbler } from '@shearline/jobfile'
import css from './cylinder.module.css'

/** Low, in line or high as a small shape: the joint below, on or above the line. */
export function Glyph({ state }: { readonly state: Tumbler['state'] }) {
  const joint = state === 'low' ? 12.5 : state === 'high' ? 0.5 : 6
  return (
    <svg className={css.glyph} viewBox="0 0 16 16" aria-hidden="true">
      <path className={css.glyphLine} d="M0 8H16" />
      <rect className={css.glyphJoint} x="5" width="6" y={joint} height={state === 'in-line' ? 4 : 3} />
    </svg>
  )
}
