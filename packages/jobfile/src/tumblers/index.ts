/** @module The seven tumblers, computed from a job's folded facts (product.md). */
import type { Tumbler, TumblerName } from '../fold/state.ts'
import { authority, type Explained, faults, identity, type Known, power } from './evidence.ts'
import { keys, record, teaching } from './work.ts'

export type { Known } from './evidence.ts'

/** A table keyed by every tumbler, so that a new one without a rule fails to compile. */
const rules: Readonly<Record<TumblerName, (job: Known, explained: Explained) => Tumbler>> = {
  authority,
  identity,
  keys,
  power,
  teaching,
  faults,
  record,
}

/** Stands all seven tumblers in the order of the cylinder; `explained` holds the codes of explained differences. */
export function standTumblers(job: Known, explained: Explained): readonly Tumbler[] {
  return Object.values(rules).map((rule) => rule(job, explained))
}
