/**
 * @module What the car is taken to do in a session: open, take or refuse keys, break off, close (ENR-01 to ENR-09, ENR-13,
 * ENR-15 to ENR-20).
 *
 * Identities, keys and lists are small numbers here, sets of keys are bits, so that a step costs next to nothing.
 */

import { Lists } from './lists.ts'
import { holdsIdentity, putInSlot, slotEntry, slotList } from './slots.ts'
import type { OnBreak, TeachingKeyState } from './types.ts'
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
  /** Identity names by number; identities of keys come first, an empty slot last. */
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
  /** Entries at which the session closes itself (ENR-19); above `mostTaught` when it does not. */
  readonly closesAt: number
  readonly first: CarState
}

/** Makes the settled cases of one plan ready; they share their lists. */
export function carsOf(cases: readonly Case[]): readonly Car[] {
  const [first] = cases
  if (first === undefined) return []
  const named = new Set([...first.keys.map((key) => key.identity), ...first.stored])
  named.delete('')
  const identities = [...named, '']
  const lists = new Lists()
  const stored = slotList(
    lists,
    first.stored.map((identity) => identities.indexOf(identity)),
    identities.indexOf(''),
  )
  const identityOf = first.keys.map((key) => identities.indexOf(key.identity))
  return cases.map((each) => ready(each, { lists, identities, identityOf, stored }))
}

/** The same car with keys moved to the bench or away from it, one bit each. */
export function carWithKeysMoved(car: Car, here: number, away: number): Car {
  const keys = car.case.keys.map((key, at) => ({
    ...key,
    onBench: (key.onBench || ((here >> at) & 1) === 1) && ((away >> at) & 1) === 0,
  }))
  return ready({ ...car.case, keys }, { ...car, stored: car.first.list })
}

function ready(
  each: Case,
  shared: Pick<Car, 'lists' | 'identities' | 'identityOf'> & { readonly stored: number },
): Car {
  const { lists, identities, identityOf, stored } = shared
  const { rule, keys } = each
  const bits = (wanted: (key: number) => boolean): number =>
    keys.reduce((set, _, key) => (wanted(key) ? set | (1 << key) : set), 0)
  const takes = (key: number, state: TeachingKeyState | undefined): boolean =>
    keys[key]?.onBench === true &&
    state !== undefined &&
    state !== 'locked-elsewhere' &&
    rule.accepts.includes(state)
  const most = rule.kind === 'replace-all' ? Math.min(rule.mostKeys, rule.capacity) : rule.mostKeys
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
    mostTaught: Math.min(most, rule.declared ?? most),
    closesAt: rule.declared ?? most + 1,
    first: { list: stored, taught: 0, taken: 0 },
  }
}

/** ENR-01: can a session be opened with this list, whichever of the case's conditions is the car's? */
export function canOpen(car: Car, list: number): boolean {
  const accepted = bitsIn(car.lists.set(list) & car.identitiesOnBench)
  if (car.case.rule.gated && !car.case.means.code) return false
  return car.case.rule.opensWith.every((opensWith) => {
    if (opensWith === 'timed-wait') return true
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
  const slots = rule.kind === 'numbered-slots'
  if (rule.sameKeyTwice !== 'counts') {
    if (slots ? holdsIdentity(car, state.taught, identity) : lists.holds(state.taught, identity)) return state
  }
  if (lists.size(state.taught) >= car.mostTaught) return state

  const entry = slots ? slotEntry(car, key) : identity
  const taught = lists.append(state.taught, entry)
  let list = state.list
  if (rule.commits === 'each-key') {
    list = rule.kind === 'replace-all' ? taught : added(car, list, entry)
    if (list === FULL) return state
  }
  return { list, taught, taken: state.taken | (car.changedWhenTaken & (1 << key)) }
}

/** ENR-19: a session that was told a number has closed itself when it is reached. */
export function closedItself(car: Car, state: CarState): boolean {
  return car.lists.size(state.taught) >= car.closesAt
}

/** ENR-09, ENR-18: the session ends without being closed; `onBreak` where a cause does otherwise than the rule. */
export function breakOff(car: Car, state: CarState, onBreak: OnBreak = car.case.rule.onBreak): CarState {
  if (closedItself(car, state) && mostLeastKeys(car) <= car.lists.size(state.taught))
    return commitAtClose(car, state)
  if (onBreak === 'list-lost') return ended(car, 0, state.taken)
  const keeps = car.case.rule.commits === 'at-close' && onBreak === 'keep-so-far' && state.taught !== 0
  return ended(car, keeps ? committed(car, state) : state.list, state.taken)
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
  const { leastKeys, declared } = car.case.rule
  const entries = car.lists.size(state.taught)
  const tooFew = declared !== null && entries < declared
  const met = tooFew ? undefined : leastKeys.findLast((least) => least <= entries)
  const unmet = tooFew ? leastKeys.at(-1) : leastKeys.findLast((least) => least > entries)
  const closings: Closing[] = []
  if (met !== undefined)
    closings.push({ state: commitAtClose(car, state), leastKeys: Math.max(met, declared ?? 0) })
  if (unmet !== undefined)
    closings.push({ state: breakOff(car, state), leastKeys: Math.max(unmet, declared ?? 0) })
  return closings
}

/** The session is closed with enough entries. What `each-key` has committed already is not committed again. */
export function commitAtClose(car: Car, state: CarState): CarState {
  return ended(car, car.case.rule.commits === 'at-close' ? committed(car, state) : state.list, state.taken)
}

/** ENR-20: where a key is only spent once it is stored, one that is not stored is again what it was. */
export function ended(car: Car, list: number, taken: number): CarState {
  if (car.case.rule.spends === 'when-taken' || taken === 0) return { list, taught: 0, taken }
  let kept = 0
  for (const [key, identity] of car.identityOf.entries())
    if (((taken >> key) & 1) === 1 && car.lists.holds(list, identity)) kept |= 1 << key
  return { list, taught: 0, taken: kept }
}

/** The most keys the session may want: what the way back must reckon with. */
export function mostLeastKeys(car: Car): number {
  return Math.max(car.case.rule.leastKeys.at(-1) ?? 0, car.case.rule.declared ?? 0)
}

/** ENR-08's commit of what the session taught. */
export function committed(car: Car, { list, taught }: CarState): number {
  return car.case.rule.kind === 'replace-all' ? taught : withEach(car, list, taught)
}

/** ENR-06 for each entry of `taught` in order; under append an identity that does not fit is left out. */
function withEach(car: Car, list: number, taught: number): number {
  if (taught === 0) return list
  return withEntry(car, withEach(car, list, car.lists.withoutNewest(taught)), car.lists.newestOf(taught))
}

/** ENR-06 for one entry; the list as it is where the entry does not fit. */
export function withEntry(car: Car, list: number, entry: number): number {
  const longer = added(car, list, entry)
  return longer === FULL ? list : longer
}

/** No list: the list is full and refuses. */
const FULL = -1

/** ENR-06, ENR-15: the list with the entry, or `FULL`. */
function added(car: Car, list: number, entry: number): number {
  const { lists } = car
  const { kind, capacity } = car.case.rule
  if (kind === 'numbered-slots') return putInSlot(car, list, entry) ?? FULL
  if (lists.holds(list, entry)) return list
  if (lists.size(list) < capacity) return lists.append(list, entry)
  return kind === 'append-drop-oldest' ? lists.append(lists.withoutOldest(list), entry) : FULL
}

/** How many bits are set. */
export function bitsIn(set: number): number {
  let count = 0
  for (let left = set; left !== 0; left &= left - 1) count += 1
  return count
}
