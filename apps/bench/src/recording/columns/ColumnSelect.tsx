import { useId } from 'react'
import formCss from '../../form/form.module.css'
import { t } from '../../words/index.ts'
import css from './columns.module.css'

/** One of several, as the system's own list. */
export function Select<V extends string>({
  label,
  value,
  options,
  note,
  onChange,
}: {
  readonly label: string
  readonly value: V
  readonly options: readonly (readonly [value: V, words: string])[]
  readonly note?: string | undefined
  readonly onChange: (value: V) => void
}) {
  const id = useId()
  return (
    <div className={formCss.field}>
      <label className={formCss.label} htmlFor={id}>
        {label}
      </label>
      <select
        id={id}
        className={`${formCss.input} ${css.select}`}
        value={value}
        aria-describedby={note === undefined ? undefined : `${id}-note`}
        onChange={(event) => {
          const chosen = options.find(([option]) => option === event.target.value)
          if (chosen !== undefined) onChange(chosen[0])
        }}
      >
        {options.map(([option, words]) => (
          <option key={option} value={option}>
            {words}
          </option>
        ))}
      </select>
      {note !== undefined && (
        <span className={formCss.hint} id={`${id}-note`}>
          {note}
        </span>
      )}
    </div>
  )
}

/** Which column of the table, by its number and name. */
export function ColumnSelect({
  label,
  header,
  value,
  guessed = false,
  onChange,
}: {
  readonly label: string
  readonly header: readonly string[]
  readonly value: number | null
  readonly guessed?: boolean
  readonly onChange: (column: number | null) => void
}) {
  const named = header.map(
    (name, column) => [String(column), t('columns.column', { number: column + 1, name })] as const,
  )
  return (
    <Select
      label={label}
      value={value === null ? '' : String(value)}
      options={[['', t('columns.none')], ...named]}
      note={guessed ? t('columns.guessed') : undefined}
      onChange={(chosen) => onChange(chosen === '' ? null : Number(chosen))}
    />
  )
}
