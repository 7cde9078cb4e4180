import type { ReactNode } from 'react'
import css from './job.module.css'

/** Names and values one below the other. */
export function Facts({ rows }: { readonly rows: readonly (readonly [name: string, value: ReactNode])[] }) {
  return (
    <dl className={css.facts}>
      {rows.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  )
}
