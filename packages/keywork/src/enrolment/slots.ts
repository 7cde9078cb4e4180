/**
 * @module Numbered slots (ENR-15): a list with holes, and entries that remember which key they are.
 *
 * An entry of the open session is a key rather than an identity, since two clones can want two slots.
 */

import type { Car } from './car.ts'
import type { Lists } from './lists.ts'

/** The entry that stands for a key in an open session. */
export function slotEntry(car: Car, key: number): number {
  return car.identities.length + key
}

/** ENR-04 for slots: does the open session hold a key of this identity? */
export function holdsIdentity(car: Car, taught: number, identity: number): boolean {
  return car.lists.items(taught).some((entry) => identityOfEntry(car, entry) === identity)
}

/**
 * The list with the key of an entry in its slot, or null where the slot refuses it: it is out of range, no slot is
 * free, or its slot holds another and `slotTaken` is `refused`. An identity that is stored already keeps its slot,
 * unless the same key counts twice.
 */
export function putInSlot(car: Car, list: number, entry: number): number | null {
  const { rule, keys } = car.case
  const hole = car.identities.length - 1
  const identity = identityOfEntry(car, entry)
  const slots = [...car.lists.items(list)]
  if (rule.sameKeyTwice !== 'counts' && slots.includes(identity)) return list
  const wanted = keys[entry - car.identities.length]?.slot
  const free = slots.includes(hole) ? slots.indexOf(hole) : slots.length
  const at = wanted === undefined ? free : wanted - 1
  if (at < 0 || at >= rule.capacity) return null
  while (slots.length <= at) slots.push(hole)
  const holder = slots[at]
  if (holder !== hole && holder !== identity && rule.slotTaken === 'refused') return null
  slots[at] = identity
  return slotList(car.lists, slots, hole)
}

/** The number of a list of slots, without the holes at its end. */
export function slotList(lists: Lists, slots: readonly number[], hole: number): number {
  let length = slots.length
  while (length > 0 && slots[length - 1] === hole) length -= 1
  return lists.intern(slots.slice(0, length))
}

function identityOfEntry(car: Car, entry: number): number {
  return car.identityOf[entry - car.identities.length] ?? -1
}
