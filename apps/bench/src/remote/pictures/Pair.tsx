import { type ReactNode, useId } from 'react'
import css from '../remote.module.css'
import { high, wide } from './shapes.ts'

/** One remote's part of a picture; `says` is the same in words. */
export interface Row {
  readonly name: string
  readonly says: string
  /** null: nothing to draw, which `says` tells. */
  readonly drawing: ReactNode
  /** What the row spans upwards. */
  readonly upwards?: string
  /** Words along the row's own axis, evenly spread, when the rows do not share one. */
  readonly axis?: readonly string[]
}

/** The same picture of both remotes, one above the other, on one axis. */
export function Pair({
  title,
  note,
  rows,
  axis,
}: {
  readonly title: string
  readonly note: string
  readonly rows: readonly Row[]
  /** Words along the common axis, evenly spread. */
  readonly axis?: readonly string[]
}) {
  const id = useId()
  return (
    <figure className={css.pair} aria-labelledby={id}>
      <figcaption id={id} className={css.pairTitle}>
        {title}
      </figcaption>
      {rows
        .filter(({ drawing }) => drawing !== null)
        .map(({ name, says, drawing, upwards, axis: own }) => (
          <div key={name} className={css.row}>
            <span className={css.rowName} aria-hidden="true">
              {name}
              <span className={css.quiet}>{upwards}</span>
            </span>
            <svg viewBox={`0 0 ${wide} ${high}`} preserveAspectRatio="none" role="img" aria-label={says}>
              {drawing}
            </svg>
            {own !== undefined && <Axis words={own} />}
          </div>
        ))}
      {axis !== undefined && <Axis words={axis} />}
      <p className={css.quiet}>{note}</p>
      <ul className={css.said}>
        {rows.map(({ name, says }) => (
          <li key={name}>{says}</li>
        ))}
      </ul>
    </figure>
  )
}

function Axis({ words }: { readonly words: readonly string[] }) {
  return (
    <span className={css.axis} aria-hidden="true">
      {words.map((place, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: places along an axis never change
        <span key={at}>{place}</span>
      ))}
    </span>
  )
}
