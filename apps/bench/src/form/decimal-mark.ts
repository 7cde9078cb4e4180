/** @module The sign before the decimals, whichever key for it a person has. */

/** The sign a language writes before decimals: `.`, `,`. `locale` is a BCP 47 tag. */
export function decimalMark(locale: string): string {
  const parts = new Intl.NumberFormat(locale).formatToParts(1.5)
  return parts.find((part) => part.type === 'decimal')?.value ?? '.'
}

/**
 * What was typed or pasted into a number, with its one comma or point as `mark`. Text with none, or with more than one
 * (`1.234,50`), is returned as it is: which of them stands before the decimals cannot be told.
 */
export function withMark(text: string, mark: string): string {
  const marks = text.match(/[.,\u066b]/g) ?? []
  return marks.length === 1 ? text.replace(/[.,\u066b]/, mark) : text
}
