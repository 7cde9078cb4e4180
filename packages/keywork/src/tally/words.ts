/** @module Small counts in English words, for sentences a customer reads. */

const WORDS: readonly string[] = [
  'No',
  'One',
  'Two',
  'Three',
  'Four',
  'Five',
  'Six',
  'Seven',
  'Eight',
  'Nine',
  'Ten',
  'Eleven',
  'Twelve',
]

/** `One key`, `Three keys`, `14 keys`. */
export function countOf(count: number, one: string, many: string = `${one}s`): string {
  return `${WORDS[count] ?? String(count)} ${count === 1 ? one : many}`
}

/** The singular or the plural form of a verb. */
export function verb(count: number, one: string, many: string): string {
  return count === 1 ? one : many
}

/** ` (A, B)`, or nothing without names. */
export function named(keys: readonly string[]): string {
  return keys.length === 0 ? '' : ` (${keys.join(', ')})`
}
