import { Button, Group, Input, Label, NumberField, Text } from 'react-aria-components/NumberField'
import { t } from '../words/index.ts'
import css from './form.module.css'

/** A number by large steps or typed, with the comma or point the language writes. */
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
}) {
  return (
    <NumberField
      className={css.field ?? ''}
      value={value ?? Number.NaN}
      onChange={(next) => onChange(Number.isNaN(next) ? null : next)}
      minValue={least}
      {...(most === undefined ? {} : { maxValue: most })}
      step={step}
      isRequired={!optional}
      formatOptions={{ maximumFractionDigits: decimals, useGrouping: false }}
    >
      <Label className={css.label}>{unit === undefined ? label : t('amount.unit', { label, unit })}</Label>
      <Group className={css.stepper ?? ''}>
        <Button slot="decrement">−</Button>
        <Input />
        <Button slot="increment">+</Button>
      </Group>
      {hint !== undefined && (
        <Text slot="description" className={css.hint}>
          {hint}
        </Text>
      )}
    </NumberField>
  )
}
