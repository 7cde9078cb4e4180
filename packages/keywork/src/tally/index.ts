/** @module The key tally: said to exist, on the bench, stored before, stored after. */

export { identityOf } from './identity.ts'
export { reconcile } from './reconcile.ts'
export type {
  Difference,
  DifferenceCode,
  MissingNumber,
  StatementCode,
  Tally,
  TallyInput,
  TallyKey,
  TallyStatement,
} from './types.ts'
