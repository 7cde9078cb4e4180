import { type ReactNode, useId } from 'react'
import { t } from '../words/index.ts'
import css from './form.module.css'

/** One of few: every answer visible, none chosen for the person. */
export function Choice<V extends string>({
  label,
  options,
  value,
  onChange,
  hint,
  optional = false,
}: {
  readonly label: string
  readonly options: readonly (readonly [value: V, words: ReactNode])[]
  readonly value: V | null
  readonly onChange: (value: V) => void
  readonly hint?: string
  readonly optional?: boolean
}) {
  const name = useId()
  return (
    <fieldset className={css.field}>
      <legend className={css.label}>{label}</legend>
      <div className={css.choices}>
        {options.map(([option, words]) => (
          <label key={option} className={css.choice}>
            <input
              type="radio"
              name={name}
              value={option}
              checked={value === option}
              onChange={() => onChange(option)}
              required={!optional}
            />
            <span>{words}</span>
          </label>
        ))}
      </div>
      {hint !== undefined && <p className={css.hint}>{hint}</p>}
    </fieldset>
  )
}

/** A question answered yes or no; null until answered. */
export function YesNo(props: {
  readonly label: string
  readonly value: boolean | null
  readonly onChange: (value: boolean) => void
  readonly hint?: string
}) {
  const value = props.value === null ? null : props.value ? 'yes' : 'no'
  return (
    <Choice
      {...props}
      value={value}
      options={[
        ['yes', t('yes')],
        ['no', t('no')],
      ]}
      onChange={(answer) => props.onChange(answer === 'yes')}
    />
  )
}
