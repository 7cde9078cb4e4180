import type { Fact } from '@shearline/jobfile'

/**
 * Whether two reads of a job's facts say the same, in the same order. By all they say: a fact that was changed in this
 * browser's store is another one.
 */
export function sameFacts(a: readonly Fact[], b: readonly Fact[]): boolean {
  return a === b || (a.length === b.length && a.every((one, index) => sameFact(one, b[index] as Fact)))
}

function sameFact(a: Fact, b: Fact): boolean {
  return a === b || (a.id === b.id && a.sig === b.sig && JSON.stringify(a) === JSON.stringify(b))
}
