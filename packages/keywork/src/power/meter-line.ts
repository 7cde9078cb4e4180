/** @module What a general serial meter says, line by line. */

/** Why a line gives no reading. `overload`: the meter says that the input is beyond its range. */
export type MeterRefusal =
  | 'empty'
  | 'no-number'
  | 'several-numbers'
  | 'overload'
  | 'alternating'
  | 'other-unit'

/** One line of a meter: volts or amperes of direct current, or why it is neither. */
export type MeterLine =
  | { readonly quantity: 'volts' | 'amperes'; readonly value: number }
  | { readonly refused: MeterRefusal }

/** The question that makes a meter of the SCPI kind measure once, with its line end. SCPI-1999 volume 2, MEASure. */
export const SCPI_ASK_VOLTS: string = 'MEAS:VOLT:DC?\n'

/** SCPI-1999 volume 1, 7.2.1.4 and 7.2.1.5: infinity is written 9.9E37, not-a-number 9.91E37. */
const SCPI_BEYOND = 9.9e36
const MOST_LINE = 200

const NUMBER = /[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][+-]?\d+)?/
/** A number with what stands right behind it: at most a prefix, and a unit. */
const WITH_UNIT = new RegExp(
  `(?<![\\w.,:/-])(${NUMBER.source})\\s*([munµμkM]?)(volts?|amperes?|amps?|V|A)\\s*(?:DC)?(?![A-Za-z])`,
  'gi',
)
const OVERLOAD = /(^|[^A-Za-z])(OL|O\.L\.?|0L|0\.L|OVLD|OVER(LOAD|FLOW)?)(?![A-Za-z])/i
const ALTERNATING = /(^|[^A-Za-z])(AC|V?RMS)(?![A-Za-z])|[VA]AC(?![A-Za-z])|~/i
const OTHER_UNIT = /\d\s*[munµμkM]?(ohms?|Ω|Hz|F|W|°?C|°F|%)(?![A-Za-z])/i

const FACTORS: Readonly<Record<string, number>> = {
  '': 1,
  m: 1e-3,
  u: 1e-6,
  µ: 1e-6,
  μ: 1e-6,
  n: 1e-9,
  k: 1e3,
  M: 1e6,
}

/**
 * Reads one line as volts or amperes: an SCPI number (`+1.25430E+01`, taken as volts, because volts were asked for), or
 * text that holds one number with its unit (`DC 12.54 V`, `12,54 VDC`, `12540 mV`, `-0.03A`). A comma is taken as a
 * decimal sign within a number. Alternating current, other quantities and overload are refused by name. Never throws.
 */
export function parseMeterLine(line: string): MeterLine {
  // Meters pad with blanks, zero bytes and bells.
  const text = line.replaceAll(/[\p{Cc}\p{Cf}]/gu, ' ').trim()
  if (text === '') return { refused: 'empty' }
  if (text.length > MOST_LINE) return { refused: 'several-numbers' }
  if (OVERLOAD.test(text)) return { refused: 'overload' }
  if (ALTERNATING.test(text)) return { refused: 'alternating' }
  const told = [...text.matchAll(WITH_UNIT)]
  if (told.length > 1) return { refused: 'several-numbers' }
  const [one] = told
  if (one !== undefined) {
    const [, number = '', prefix = '', unit = ''] = one
    // "MV" in capitals is a meter that knows capitals only: no car shows megavolts.
    const factor = FACTORS[prefix] ?? FACTORS[prefix.toLowerCase()] ?? 1
    const quantity = /^v/i.test(unit) ? 'volts' : 'amperes'
    return reading(quantity, decimal(number) * (prefix === 'M' ? 1e-3 : factor))
  }
  if (OTHER_UNIT.test(text)) return { refused: 'other-unit' }
  if (new RegExp(`^${NUMBER.source}$`).test(text)) return reading('volts', decimal(text))
  return { refused: /\d.*[^\d.,eE+-].*\d/.test(text) ? 'several-numbers' : 'no-number' }
}

function decimal(text: string): number {
  return Number(text.replace(',', '.'))
}

function reading(quantity: 'volts' | 'amperes', value: number): MeterLine {
  if (!Number.isFinite(value) || Math.abs(value) >= SCPI_BEYOND) return { refused: 'overload' }
  // A prefix must not leave the dust of binary fractions: 12540 mV is 12.54 V.
  return { quantity, value: Number(value.toPrecision(12)) }
}

/** Cuts what comes from a serial line, in pieces of any size, into lines. Carriage return, line feed or both end one. */
export class MeterLines {
  #rest = ''

  /** Takes a piece and gives the lines it completes, without their ends and without empty ones. */
  push(piece: string): readonly string[] {
    const parts = (this.#rest + piece).split(/[\r\n]+/)
    // A line without an end is noise of another baud rate; only its last part may still become one.
    this.#rest = (parts.pop() ?? '').slice(-MOST_LINE)
    return parts.filter((line) => line.trim() !== '')
  }
}
