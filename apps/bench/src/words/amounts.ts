/** @module Numbers with their units, as the language writes them. */
import { region } from './index.ts'

/** A voltage to one decimal: `13.6 V`. */
export function volts(value: number): string {
  return `${number(value, 1)}\u00a0V`
}

/** A number with up to `decimals` decimals. */
export function number(value: number, decimals = 0): string {
  return new Intl.NumberFormat(region(), { maximumFractionDigits: decimals }).format(value)
}

/** A size in bytes as people say it: `2.9 MB`. */
export function size(bytes: number): string {
  const units = ['byte', 'kilobyte', 'megabyte', 'gigabyte'] as const
  const step = Math.min(units.length - 1, bytes < 1 ? 0 : Math.floor(Math.log10(bytes) / 3))
  return new Intl.NumberFormat(region(), {
    style: 'unit',
    unit: units[step] ?? 'byte',
    unitDisplay: 'short',
    maximumFractionDigits: step === 0 ? 0 : 1,
  }).format(bytes / 1000 ** step)
}

/** How many decimals a currency has, as the language's data say. */
function decimalsOf(currency: string): number {
  return (
    new Intl.NumberFormat('en', { style: 'currency', currency }).resolvedOptions().maximumFractionDigits ?? 2
  )
}

/** An amount in minor units as money: 12500 EUR -> `€125.00`. */
export function money(amountMinor: number, currency: string): string {
  return new Intl.NumberFormat(region(), { style: 'currency', currency }).format(
    amountMinor / 10 ** decimalsOf(currency),
  )
}

/** An amount in major units, as typed, in minor units. */
export function minorOf(amount: number, currency: string): number {
  return Math.round(amount * 10 ** decimalsOf(currency))
}
