import css from './form.module.css'

/** Any number of a few. */
export function Several<V extends string>({
  label,
  options,
  value,
  onChange,
  hint,
}: {
  readonly label: string
  readonly options: readonly (readonly [value: V, words: string])[]
  readonly value: readonly V[]
  readonly onChange: (value: readonly V[]) => void
  readonly hint?: string
}) {
  return (
    <fieldset className={css.field}>
      <legend className={css.label}>{label}</legend>
      <div className={css.choices}>
        {options.map(([option, words]) => (
          <label key={option} className={css.choice}>
            <input
              type="checkbox"
              checked={value.includes(option)}
              onChange={(event) =>
                onChange(event.target.checked ? [...value, option] : value.filter((one) => one !== option))
              }
            />
            <span>{words}</span>
          </label>
        ))}
      </div>
      {hint !== undefined && <p className={css.hint}>{hint}</p>}
    </fieldset>
  )
}
