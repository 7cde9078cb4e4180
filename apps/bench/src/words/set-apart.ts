/** @module Numbers, units, days and names among words that are read from the right. */

/** Written in Latin letters or signs in every language; units in Arabic letters stand right by themselves. */
const units =
  'dB\\u00b5V/m|\\u00b5V/m|kHz|MHz|Hz|mA|Ah|A|mV|V|ms|\\u00b5s|s|dBm?|kbit/s|kB|MB|GB|\\u00b0C|\\u03a9|%'

const sign = '\\u200e?[-+\\u2212]'
const figure = '\\d[\\d.,]*'

/**
 * A number, signed or not, or two of them as a range, with its unit; a signed number; a day as ISO 8601 writes it; a
 * unit that begins with a sign; the end or the beginning of a longer code. Not what is set apart already.
 */
const measured = new RegExp(
  [
    '(?<![\\u2066\\p{Script=Latin}\\p{N}.,/-])(?:',
    '(?<day>\\d{4}-\\d{2}-\\d{2})(?![\\p{L}\\p{N}-])',
    `|(?:${sign})?${figure}(?:\\s?[-\\u2013]\\s?${figure})?[ \\u00a0]?\\u200e?(?:${units})\\u200e?(?![\\p{L}\\p{N}/])`,
    `|${sign}${figure}(?![\\p{L}\\p{N}-])`,
    '|\\u00b0C',
    '|\\u2026[A-Za-z0-9]+|[A-Za-z0-9]+\\u2026',
    ')',
  ].join(''),
  'gu',
)

/**
 * Sets every number with its unit apart (Unicode Standard Annex #9: left-to-right isolate), so that it stands in a
 * text read from the right as it stands on the meter: `12.4 V`, not `V 12.4`. Neither that nor a day is broken
 * into two lines.
 */
export function setApart(text: string): string {
  return text.replace(measured, (found: string, day: string | undefined) =>
    day === undefined
      ? `\u2066${found.replaceAll(' ', '\u00a0')}\u2069`
      : `\u2066${day.replaceAll('-', '\u2011')}\u2069`,
  )
}

/**
 * A name or a sentence somebody wrote, set apart by its own first letter (first strong isolate) among words that are
 * read from the right: its full stop stays at its end. Single words need nothing, and codes that choose between words
 * are single words.
 */
export function ownWay(value: string): string {
  return /\p{Script=Latin}/u.test(value) && /[^\w\u2066\u2069-]/u.test(value) ? `\u2068${value}\u2069` : value
}
