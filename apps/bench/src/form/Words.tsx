import { type HTMLAttributes, useId } from 'react'
import css from './form.module.css'

export interface WordsProps {
  readonly label: string
  readonly value: string
  readonly onChange: (value: string) => void
  readonly hint?: string
  readonly optional?: boolean
  /** For numbers read letter by letter: codes, VINs, hashes. */
  readonly mono?: boolean
  readonly maxLength?: number
  /** Words often used here, offered while typing. */
  readonly usual?: readonly string[]
  readonly autoCapitalize?: 'characters' | 'sentences' | 'words' | 'none'
  readonly inputMode?: HTMLAttributes<HTMLInputElement>['inputMode']
}

/** One line of words with its label and, below, a hint. */
export function Words(props: WordsProps) {
  const id = useId()
  const { label, value, onChange, hint, optional = false, mono = false, usual = [] } = props
  return (
    <div className={css.field}>
      <label className={css.label} htmlFor={id}>
        {label}
      </label>
      <input
        id={id}
        className={mono ? `${css.input} ${css.mono}` : css.input}
        value={value}
        onChange={(event) => onChange(event.target.value)}
        required={!optional}
        autoComplete="off"
        spellCheck={!mono}
        autoCapitalize={props.autoCapitalize ?? (mono ? 'characters' : 'sentences')}
        inputMode={props.inputMode}
        maxLength={props.maxLength ?? 2000}
        aria-describedby={hint === undefined ? undefined : `${id}-hint`}
        list={usual.length === 0 ? undefined : `${id}-usual`}
      />
      {usual.length > 0 && (
        <datalist id={`${id}-usual`}>
          {usual.map((words) => (
            <option key={words} value={words} />
          ))}
        </datalist>
      )}
      {hint !== undefined && (
        <p className={css.hint} id={`${id}-hint`}>
          {hint}
        </p>
      )}
    </div>
  )
}
