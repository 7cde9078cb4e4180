import { type RefObject, useEffect, useId, useRef } from 'react'
import { I18nProvider } from 'react-aria-components/I18nProvider'
import { Group, Input, Label, NumberField, Text } from 'react-aria-components/NumberField'
import { region, t } from '../words/index.ts'
import { decimalMark, withMark } from './decimal-mark.ts'
import css from './form.module.css'
import { stepped } from './stepped.ts'

/**
 * A number by large steps or typed; a comma or a point is taken as the one the language writes. What is typed stays as typed:
 * it is never rounded to a step nor moved into the range, because it is evidence.
 */
export function Amount({
  label,
  value,
  onChange,
  least = 0,
  most,
  step = 1,
  decimals = 0,
  unit,
  hint,
  optional = false,
  start,
}: {
  readonly label: string
  readonly value: number | null
  readonly onChange: (value: number | null) => void
  readonly least?: number
  readonly most?: number
  readonly step?: number
  readonly decimals?: number
  /** Written after the label: `V`, `MHz`. */
  readonly unit?: string
  readonly hint?: string
  readonly optional?: boolean
  /** Where an empty field starts when one of its buttons is tapped. */
  readonly start?: number
}) {
  const id = useId()
  const group = useRef<HTMLDivElement>(null)
  useEitherMark(group, decimals)
  const by = (direction: 1 | -1) =>
    onChange(value === null && start !== undefined ? start : stepped(value, direction * step, least, most))
  return (
    <I18nProvider locale={region()}>
      <NumberField
        className={css.field ?? ''}
        value={value ?? Number.NaN}
        onChange={(next) => onChange(Number.isNaN(next) ? null : next)}
        minValue={least}
        {...(most === undefined ? {} : { maxValue: most })}
        commitBehavior="validate"
        // The finest number that is accepted; the buttons take larger steps.
        step={10 ** -decimals}
        isRequired={!optional}
        formatOptions={{ maximumFractionDigits: decimals, useGrouping: false }}
      >
        <Label className={css.label} id={id}>
          {unit === undefined ? label : t('amount.unit', { label, unit })}
        </Label>
        <Group className={css.stepper ?? ''} ref={group}>
          <button type="button" aria-label={t('amount.less')} aria-describedby={id} onClick={() => by(-1)}>
            −
          </button>
          <Input />
          <button type="button" aria-label={t('amount.more')} aria-describedby={id} onClick={() => by(1)}>
            +
          </button>
        </Group>
        {hint !== undefined && (
          <Text slot="description" className={css.hint ?? ''}>
            {hint}
          </Text>
        )}
      </NumberField>
    </I18nProvider>
  )
}

/**
 * The keys of a phone offer the comma or the point of its own language. Where the field reads the other one, a key that
 * does nothing would make 126 V of "12,6", and 35050 of a price.
 */
function useEitherMark(group: RefObject<HTMLDivElement | null>, decimals: number): void {
  useEffect(() => {
    const field = group.current
    if (field === null || decimals === 0) return
    const typed = (event: InputEvent) => {
      const meant = event.data === null ? null : withMark(event.data, decimalMark(region()))
      if (meant === null || meant === event.data) return
      event.preventDefault()
      event.stopPropagation()
      document.execCommand('insertText', false, meant)
    }
    field.addEventListener('beforeinput', typed, true)
    return () => field.removeEventListener('beforeinput', typed, true)
  }, [group, decimals])
}
