import { useId, useState } from 'react'
import { t } from '../words/index.ts'
import css from './form.module.css'

/**
 * A list of names, each added and taken away by hand. A name still being typed counts too, so that nobody loses
 * one by recording before adding it. `value` is what the list starts with.
 */
export function Names({
  label,
  value,
  onChange,
  hint,
  mono = false,
}: {
  readonly label: string
  readonly value: readonly string[]
  readonly onChange: (value: readonly string[]) => void
  readonly hint?: string
  readonly mono?: boolean
}) {
  const id = useId()
  const [names, setNames] = useState(value)
  const [draft, setDraft] = useState('')
  const show = (next: readonly string[], typed: string) => {
    setNames(next)
    setDraft(typed)
    const name = typed.trim()
    onChange(name === '' || next.includes(name) ? next : [...next, name])
  }
  const add = () => {
    const name = draft.trim()
    show(name === '' || names.includes(name) ? names : [...names, name], '')
  }
  return (
    <div className={css.field}>
      <label className={css.label} htmlFor={id}>
        {label}
      </label>
      {names.length > 0 && (
        <ul className={css.chips}>
          {names.map((name) => (
            <li key={name} className={css.chip}>
              <span>{name}</span>
              <button
                type="button"
                aria-label={t('names.remove', { name })}
                onClick={() =>
                  show(
                    names.filter((one) => one !== name),
                    draft,
                  )
                }
              >
                ×
              </button>
            </li>
          ))}
        </ul>
      )}
      <div className={css.adder}>
        <input
          id={id}
          className={mono ? `${css.input} ${css.mono}` : css.input}
          value={draft}
          onChange={(event) => show(names, event.target.value)}
          onKeyDown={(event) => {
            if (event.key !== 'Enter' || draft.trim() === '') return
            event.preventDefault()
            add()
          }}
          autoComplete="off"
        />
        <button type="button" className={css.plain} onClick={add}>
          {t('names.add')}
        </button>
      </div>
      {hint !== undefined && <p className={css.hint}>{hint}</p>}
    </div>
  )
}
