import { t } from '../../words/index.ts'
import css from './view.module.css'

const perLine = 8

/** All bytes, eight a line with their place; blacked out ones are said to be so. */
export function BytesTable({ payload }: { readonly payload: string }) {
  const bytes: readonly string[] = payload.match(/../g) ?? []
  const lines = Array.from({ length: Math.ceil(bytes.length / perLine) }, (_, index) => index * perLine)
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part that scrolls must be reachable by keyboard
    <section className={css.hex} aria-label={t('details.bytes')} tabIndex={0}>
      <h3>{t('details.bytes')}</h3>
      <ol>
        {lines.map((first) => (
          <li key={first}>
            <span className={css.offset}>{first}</span>{' '}
            <code>{bytes.slice(first, first + perLine).join(' ')}</code>
          </li>
        ))}
      </ol>
      {bytes.includes('xx') && <p>{t('details.blacked-out')}</p>}
    </section>
  )
}
