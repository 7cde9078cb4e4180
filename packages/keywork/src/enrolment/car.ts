/**
 * @module What the car is taken to do in a session: open, take or refuse keys, break off, close (ENR-01 to ENR-09, ENR-13).
 *
 * Identities, keys and lists are small numbers here, sets of keys are bits, so that a step costs next to nothing.
 */

import { Lists } from './lists.ts'
import type { TeachingKeyState } from './types.ts'
import type { Case } from './unknowns.ts'

/** The list, what the open session has taught so far (both by number in `Lists`), and the keys that it made known. */
export interface CarState {
  readonly list: number
  readonly taught: number
  /** One bit for each key that was something else and is `known` since a session took it (ENR-13). */
  readonly taken: number
}

/** One settled case made ready. */
export interface Car {
  readonly case: Case
  readonly lists: Lists
  /** Identity names by number; identities of keys come first. */
  readonly identities: readonly string[]
  /** The identity of each key. */
  readonly identityOf: readonly number[]
  /** Identities on the bench, one bit each. */
  readonly identitiesOnBench: number
  /** Keys that can be taken as they came, and keys that can be taken once they are known, one bit each. */
  readonly takenAtFirst: number
  readonly takenWhenKnown: number
  /** Keys that are something else once taken, one bit each. */
  readonly changedWhenTaken: number
  /** Entries `taught` can hold (ENR-08). */
  readonly mostTaught: number
  readonly first: CarState
}

/** Makes the settled cases of one plan ready; they share their lists. */
export function carsOf(cases: readonly Case[]): readonly Car[] {
  const [first] = cases
  if (first === undefined) return []
  const identities = [...new Set([...first.keys.map((key) => key.identity), ...first.stored])]
  const lists = new Lists()
  const stored = lists.intern(first.stored.map((identity) => identities.indexOf(identity)))
  const identityOf = first.keys.map((key) => identities.indexOf(key.identity))
  return cases.map((each): Car => {
    const { rule, keys } = each
    const bits = (wanted: (key: number) => boolean): number =>
      keys.reduce((set, _, key) => (wanted(key) ? set | (1 << key) : set), 0)
    const takes = (key: number, state: TeachingKeyState | undefined): boolean =>
      keys[key]?.onBench === true &&
      state !== undefined &&
      state !== 'locked-elsewhere' &&
      rule.accepts.includes(state)
    return {
      case: each,
      lists,
      identities,
      identityOf,
      identitiesOnBench: identityOf.reduce(
        (set, identity, key) => (keys[key]?.onBench ? set | (1 << identity) : set),
        0,
      ),
      takenAtFirst: bits((key) => takes(key, keys[key]?.state)),
      takenWhenKnown: bits((key) => takes(key, 'known')),
      changedWhenTaken: bits((key) => keys[key]?.state !== 'known'),
      mostTaught: rule.kind === 'replace-all' ? Math.min(rule.mostKeys, rule.capacity) : rule.mostKeys,
      first: { list: stored, taught: 0, taken: 0 },
    }
  })
}

/** ENR-01: can a session be opened with this list, whichever of the case's conditions is the car's? */
export function canOpen(car: Car, list: number): boolean {
  const accepted = bitsIn(car.lists.set(list) & car.identitiesOnBench)
  return car.case.rule.opensWith.every((opensWith) => {
    if (opensWith === 'equipment') return car.case.means.equipment
    return accepted >= (opensWith === 'two-accepted-keys' ? 2 : 1)
  })
}

/** ENR-02: opening empties the list or leaves it. */
export function open(car: Car, state: CarState): CarState {
  return { list: car.case.rule.erases === 'at-open' ? 0 : state.list, taught: 0, taken: state.taken }
}

/** ENR-03: the keys on the bench in a state that the session takes, one bit each. */
export function takeable(car: Car, state: CarState): number {
  return (car.takenAtFirst & ~state.taken) | (car.takenWhenKnown & state.taken)
}

/** A key is shown to the open session: taken, or nothing changes (ENR-03 to ENR-08, ENR-13). */
export function show(car: Car, state: CarState, key: number): CarState {
  const { rule } = car.case
  const { lists } = car
  const identity = car.identityOf[key] ?? -1
  if (((takeable(car, state) >> key) & 1) === 0) return state
  if (rule.sameKeyTwice !== 'counts' && lists.holds(state.taught, identity)) return state
  if (lists.size(state.taught) >= car.mostTaught) return state

  const taught = lists.append(state.taught, identity)
  let list = state.list
  if (rule.commits === 'each-key') {
    list = rule.kind === 'replace-all' ? taught : added(car, list, identity)
    if (list === FULL) return state
  }
  return { list, taught, taken: state.taken | (car.changedWhenTaken & (1 << key)) }
}

/** ENR-09: the session ends without being closed. */
export function breakOff(car: Car, state: CarState): CarState {
  const { commits, onBreak } = car.case.rule
  const keeps = commits === 'at-close' && onBreak === 'keep-so-far' && state.taught !== 0
  return { list: keeps ? committed(car, state) : state.list, taught: 0, taken: state.taken }
}

/** An end that closing can have, and the largest number of keys the session may want for it to be so. */
export interface Closing {
  readonly state: CarState
  readonly leastKeys: number
}

/**
 * ENR-08: the session is closed; with too few entries that is a break. One closing for each of the two that the
 * case's least numbers allow.
 */
export function close(car: Car, state: CarState): readonly Closing[] {
  const { leastKeys } = car.case.rule
  const entries = car.lists.size(state.taught)
  const met = leastKeys.findLast((least) => least <= entries)
  const unmet = leastKeys.findLast((least) => least > entries)
  const closings: Closing[] = []
  if (met !== undefined) closings.push({ state: commitAtClose(car, state), leastKeys: met })
  if (unmet !== undefined) closings.push({ state: breakOff(car, state), leastKeys: unmet })
  return closings
}

/** The session is closed with enough entries. What `each-key` has committed already is not committed again. */
export function commitAtClose(car: Car, state: CarState): CarState {
  const list = car.case.rule.commits === 'at-close' ? committed(car, state) : state.list
  return { list, taught: 0, taken: state.taken }
}

/** The most keys the session may want: what the way back must reckon with. */
export function mostLeastKeys(car: Car): number {
  return car.case.rule.leastKeys.at(-1) ?? 0
}

function committed(car: Car, state: CarState): number {
  return car.case.rule.kind === 'replace-all' ? state.taught : withEach(car, state.list, state.taught)
}

/** ENR-06 for each entry of `taught` in order; under append an identity that does not fit is left out. */
function withEach(car: Car, list: number, taught: number): number {
  if (taught === 0) return list
  const earlier = withEach(car, list, car.lists.withoutNewest(taught))
  const longer = added(car, earlier, car.lists.newestOf(taught))
  return longer === FULL ? earlier : longer
}

/** No list: the list is full and refuses. */
const FULL = -1

/** ENR-06: the list with the identity, or `FULL`. */
function added(car: Car, list: number, identity: number): number {
  const { lists } = car
  if (lists.holds(list, identity)) return list
  if (lists.size(list) < car.case.rule.capacity) return lists.append(list, identity)
  return car.case.rule.kind === 'append-drop-oldest'
    ? lists.append(lists.withoutOldest(list), identity)
    : FULL
}

/** How many bits are set. */
export function bitsIn(set: number): number {
  let count = 0
  for (let left = set; left !== 0; left &= left - 1) count += 1
  return count
}
