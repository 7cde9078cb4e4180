/** @module Remembers what a pure function said of a text: the same unit names and codes come in every scan. */

/** More texts than the units and codes of many cars; forgetting them all then costs less than keeping count of use. */
const MOST = 1000

/** The same function, which computes each text once as long as it is remembered. What it returns must not be changed. */
export function remembered<T>(compute: (text: string) => T): (text: string) => T {
  const known = new Map<string, { readonly said: T }>()
  return (text) => {
    const before = known.get(text)
    if (before !== undefined) return before.said
    const said = compute(text)
    if (known.size >= MOST) known.clear()
    known.set(text, { said })
    return said
  }
}
