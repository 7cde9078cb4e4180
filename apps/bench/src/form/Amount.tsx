import { useId } from 'react'
import { Group, Input, Label, NumberField, Text } from 'react-aria-components/NumberField'
import { t } from '../words/index.ts'
import css from './form.module.css'
import { stepped } from './stepped.ts'

/**
 * A number by large steps or typed, with the comma or point the language writes. What is typed stays as typed:
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
  const by = (direction: 1 | -1) =>
    onChange(value === null && start !== undefined ? start : stepped(value, direction * step, least, most))
  return (
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
      <Group className={css.stepper ?? ''}>
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
  )
}
