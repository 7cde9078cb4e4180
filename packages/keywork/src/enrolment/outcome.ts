/** @module What an ended session leaves behind: which keys start, what is dropped, how to get back (ENR-10, ENR-11). */

import { bitsIn, type Car, type CarState, canOpen, mostLeastKeys, takeable } from './car.ts'
import type { SessionOutcome, WayBack } from './types.ts'

/** Ways back from the cheapest to the dearest. */
const WAYS_BACK: readonly WayBack[] = ['not-needed', 'reopen', 'restore', 'none']

/** True when this key is on the bench and its identity is in the list. */
export function startsCar(car: Car, state: CarState, key: number): boolean {
  return car.case.keys[key]?.onBench === true && car.lists.holds(state.list, car.identityOf[key] ?? -1)
}

/** ENR-10: no key on the bench starts the car. */
export function isStranded(car: Car, state: CarState): boolean {
  return (car.lists.set(state.list) & car.identitiesOnBench) === 0
}

/** ENR-11: the cheapest way back. `teach` are the keys meant to be taught, by index; `leastKeys` what closing wants. */
function wayBack(car: Car, state: CarState, teach: readonly number[], leastKeys: number): WayBack {
  const { rule, means } = car.case
  if (!isStranded(car, state) && teach.every((key) => startsCar(car, state, key))) return 'not-needed'
  const canBeTaken = takeable(car, state)
  const identities = car.identityOf.filter((_, key) => ((canBeTaken >> key) & 1) === 1)
  const enough = rule.sameKeyTwice === 'counts' ? bitsIn(canBeTaken) : new Set(identities).size
  if (canOpen(car, state.list) && enough >= leastKeys) return 'reopen'
  return means.equipment && means.backup ? 'restore' : 'none'
}

/** The outcome of an ended session in the words of the plan. */
export function outcomeOf(
  car: Car,
  state: CarState,
  teach: readonly number[],
  leastKeys: number = mostLeastKeys(car),
): SessionOutcome {
  const { rule } = car.case
  const list = car.lists.items(state.list)
  const name = (identity: number): string => car.identities[identity] ?? ''
  const accepted = list.map(name)
  return {
    accepted: accepted.filter((identity) => identity !== ''),
    starts: car.case.keys.filter((_, key) => startsCar(car, state, key)).map((key) => key.id),
    dropped: [...new Set(car.lists.items(car.first.list))]
      .filter((identity) => !list.includes(identity))
      .map(name)
      .filter((identity) => identity !== ''),
    stranded: isStranded(car, state),
    wayBack: wayBack(car, state, teach, leastKeys),
    ...(rule.kind === 'numbered-slots' ? { slots: accepted.map((each) => (each === '' ? null : each)) } : {}),
  }
}

/**
 * ENR-12: what holds whatever the unknown value is. Stranded if any strands, dropped the union, way back the dearest;
 * accepted and starting only what is so in every case. Where the lists differ, `accepted` stands in the order of
 * `identities`: those of the first list, then those of the keys.
 */
export function worstOf(
  outcomes: readonly SessionOutcome[],
  firstList: readonly string[],
  identities: readonly string[],
): SessionOutcome {
  const [first, ...others] = outcomes
  if (first === undefined) throw new RangeError('There is no outcome to compare.')
  if (others.length === 0) return first
  const dropped = new Set(outcomes.flatMap((outcome) => outcome.dropped))
  return {
    accepted: entriesInAll(
      outcomes.map((outcome) => outcome.accepted),
      identities,
    ),
    starts: first.starts.filter((id) => others.every((outcome) => outcome.starts.includes(id))),
    dropped: [...new Set(firstList)].filter((identity) => dropped.has(identity)),
    stranded: outcomes.some((outcome) => outcome.stranded),
    wayBack: WAYS_BACK.findLast((way) => outcomes.some((outcome) => outcome.wayBack === way)) ?? 'none',
  }
}

function entriesInAll(
  lists: readonly (readonly string[])[],
  identities: readonly string[],
): readonly string[] {
  const [first = [], ...others] = lists
  if (others.every((list) => list.length === first.length && list.every((entry, at) => entry === first[at])))
    return first
  const times = (list: readonly string[], identity: string): number =>
    list.filter((entry) => entry === identity).length
  return [...new Set(identities)].flatMap((identity) =>
    Array<string>(Math.min(...lists.map((list) => times(list, identity)))).fill(identity),
  )
}
