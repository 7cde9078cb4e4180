/** @module Which keys are one key to the car. */

import type { TallyKey } from './types.ts'

/** What of a key says which one it is to the car. */
export type Identifiable = Pick<TallyKey, 'id' | 'cloneOf' | 'shownAs'>

/**
 * The label whose identity a key carries: a clone repeats its original's (practice: two clones look like one key to
 * the car). Follows clones of clones; a circle of clones is one identity, named by its first label in sorting order.
 */
export function identityOf(id: string, keys: readonly Identifiable[]): string {
  const original = originalOf(id, keys)
  const shown = shownAs(original, keys)
  if (shown === null) return original
  const alike = keys.find((key) => shownAs(originalOf(key.id, keys), keys) === shown)
  return alike === undefined ? original : originalOf(alike.id, keys)
}

/** What the car shows for a key, where it shows it: two keys shown alike are one key to it, marked as clones or not. */
function shownAs(id: string, keys: readonly Identifiable[]): string | null {
  const shown = keys.find((key) => key.id === id)?.shownAs?.trim() ?? ''
  return shown === '' ? null : shown
}

function originalOf(id: string, keys: readonly Identifiable[]): string {
  const first = copied(id, keys)
  if (first === null) return id
  const seen = [id]
  let at = first
  while (true) {
    if (seen.includes(at)) return seen.slice(seen.indexOf(at)).sort()[0] ?? at
    seen.push(at)
    const original = copied(at, keys)
    if (original === null) return at
    at = original
  }
}

/** The key that this one is a clone of, or null. */
function copied(id: string, keys: readonly Identifiable[]): string | null {
  return keys.find((key) => key.id === id)?.cloneOf ?? null
}

/** Distinct identities among some of the keys, in order of first appearance. */
export function identitiesAmong(
  some: readonly Identifiable[],
  all: readonly Identifiable[],
): readonly string[] {
  return [...new Set(some.map((key) => identityOf(key.id, all)))]
}
