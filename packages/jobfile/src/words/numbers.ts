import type { Language } from './catalogues.ts'
import { say } from './say.ts'

/** A number with the decimal mark of the language and between `least` and `most` decimals. No grouping. */
export function numberText(language: Language, value: number, least = 0, most = 2): string {
  const fixed = value.toFixed(most)
  const [whole = '', decimals = ''] = fixed.split('.')
  let end = decimals.length
  while (end > least && decimals.charAt(end - 1) === '0') end--
  return end === 0 ? whole : `${whole}${say(language, 'format.decimal-mark')}${decimals.slice(0, end)}`
}

/** Volts with at least one decimal and at most two, without the unit. */
export function voltsText(language: Language, volts: number): string {
  return numberText(language, volts, 1, 2)
}

/**
 * Currencies whose minor unit is not a hundredth: ISO 4217, list one (from memory; checked against the
 * runtime's own table in the test).
 */
const minorDigits: Readonly<Record<string, number>> = {
  BHD: 3,
  BIF: 0,
  CLP: 0,
  DJF: 0,
  GNF: 0,
  IQD: 3,
  ISK: 0,
  JOD: 3,
  JPY: 0,
  KMF: 0,
  KRW: 0,
  KWD: 3,
  LYD: 3,
  OMR: 3,
  PYG: 0,
  RWF: 0,
  TND: 3,
  UGX: 0,
  VND: 0,
  VUV: 0,
  XAF: 0,
  XOF: 0,
  XPF: 0,
}

/** Decimals of a currency's minor unit. */
export function minorDigitsOf(currency: string): number {
  return minorDigits[currency] ?? 2
}

/** An amount of integer minor units with its ISO 4217 code: `EUR 145.00`. */
export function moneyText(language: Language, currency: string, amountMinor: number): string {
  const digits = minorDigitsOf(currency)
  // Text arithmetic: dividing would round amounts beyond 2^53.
  const text = String(Math.abs(Math.trunc(amountMinor))).padStart(digits + 1, '0')
  const whole = text.slice(0, text.length - digits)
  const rest = digits === 0 ? '' : `${say(language, 'format.decimal-mark')}${text.slice(-digits)}`
  const amount = `${amountMinor < 0 ? '-' : ''}${whole}${rest}`
  return say(language, 'format.money', { currency, amount })
}
