/** @module Numbers with their units, as the language writes them. */
import { readable, region } from './index.ts'

/** Making a format is slow, using one is not. */
const made = new Map<string, Intl.NumberFormat>()

/** A voltage with one decimal, or two when it was read with two: `13.6 V`, `12.45 V`. */
export function volts(value: number): string {
  return readable(`${number(value, 2, 1)}\u00a0V`)
}

/** A frequency on the air: `433.921 MHz`. */
export function megahertz(hertz: number, leastDecimals = 3): string {
  return readable(`${number(hertz / 1e6, 3, leastDecimals)}\u00a0MHz`)
}

/** A difference or width of frequency: `12.3 kHz`. */
export function kilohertz(hertz: number): string {
  return readable(`${number(hertz / 1000, 1)}\u00a0kHz`)
}

/** A number with up to `most` decimals, and at least `least`. */
export function number(value: number, most = 0, least = 0): string {
  const key = `${region()} ${most} ${least}`
  const format =
    made.get(key) ??
    new Intl.NumberFormat(region(), { maximumFractionDigits: most, minimumFractionDigits: least })
  made.set(key, format)
  return format.format(value)
}

/** A size in bytes as people say it: `2.9 MB`. */
export function size(bytes: number): string {
  const units = ['byte', 'kilobyte', 'megabyte', 'gigabyte'] as const
  const step = Math.min(units.length - 1, bytes < 1 ? 0 : Math.floor(Math.log10(bytes) / 3))
  return new Intl.NumberFormat(region(), {
    style: 'unit',
    unit: units[step] ?? 'byte',
    unitDisplay: step === 0 ? 'long' : 'short',
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
