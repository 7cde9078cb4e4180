import type { JobKey } from '@shearline/jobfile'
import css from './keys.module.css'

/** A key's tag: its letter on its colour, with a hole for the string. The letter alone tells keys apart too. */
export function Tag({ letter, colour }: { readonly letter: string; readonly colour: JobKey['colour'] }) {
  return (
    <span className={css.tag} data-colour={colour}>
      {letter}
    </span>
  )
}
