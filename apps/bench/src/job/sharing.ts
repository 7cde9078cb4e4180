/** @module Keeps what did not change between two reads of a job, so that nothing is folded or drawn twice for it. */
import type { JobFacts } from '../sync/read.ts'
import { sameFacts } from '../sync/same-facts.ts'

/**
 * The later of two reads, with the earlier one's parts wherever they say the same; the earlier one itself when all do.
 * A device's key needs no look: its identifier follows from it.
 */
export function sharing(before: JobFacts | null, next: JobFacts): JobFacts {
  if (before === null) return next
  const facts = sameFacts(before.facts, next.facts) ? before.facts : next.facts
  const devices = alike(before.devices, next.devices, (a, b) => a.device === b.device && a.name === b.name)
    ? before.devices
    : next.devices
  const unsent =
    before.unsent.size === next.unsent.size && [...next.unsent].every((id) => before.unsent.has(id))
      ? before.unsent
      : next.unsent
  return facts === before.facts && devices === before.devices && unsent === before.unsent
    ? before
    : { facts, devices, unsent }
}

function alike<T>(a: readonly T[], b: readonly T[], same: (a: T, b: T) => boolean): boolean {
  return a.length === b.length && a.every((one, index) => same(one, b[index] as T))
}
