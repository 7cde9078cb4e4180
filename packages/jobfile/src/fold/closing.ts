import type { Kind } from '../facts/index.ts'
import type { Collected } from './collect.ts'

/**
 * What is recorded after the document was sealed and handed over, by its nature (product.md, 10 and 11): it adds to
 * the record and does not ask for another seal.
 */
const closing: ReadonlySet<string> = new Set<Kind>([
  'vehicle-handed-over',
  'blank-used',
  'purpose-ended',
  'hold-placed',
  'hold-lifted',
  'deletion-proven',
  'secret-opened',
])

/**
 * How many facts a document sealed over `count` facts does not hold, closing ones after it apart. Counted, not by
 * order: a fact written offline before the seal may arrive after it and sort before it.
 */
export function factsSinceSeal(
  facts: Collected,
  seal: { readonly id: string; readonly count: number },
): number {
  const at = facts.ordered.findIndex(({ id }) => id === seal.id)
  const after = facts.ordered.slice(at + 1).filter(({ kind }) => closing.has(kind)).length
  return Math.max(0, facts.ordered.length - 1 - seal.count - after)
}
