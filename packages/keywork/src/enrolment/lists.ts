/**
 * @module Lists of identities, each kept once and known by a number.
 *
 * A list is the list before its newest entry and that entry: a tree, held in flat arrays. By number lists compare,
 * append and look up in one step, and a million of them take some 40 MB.
 */

/** Identities of this number and above are never asked for by `holds`. */
export const MOST_HELD = 30 as number

const FIRST_ROOM = 256
/** Growing costs a new place for every list, so it is done seldom. */
const GROWTH = 4

/** All lists met so far; list 0 is the empty one. */
export class Lists {
  private count = 1
  private before: Int32Array = new Int32Array(FIRST_ROOM)
  private newest: Int32Array = new Int32Array(FIRST_ROOM)
  private sizes: Int32Array = new Int32Array(FIRST_ROOM)
  private sets: Int32Array = new Int32Array(FIRST_ROOM)
  /** Number of the list without its oldest entry, plus one; zero while it was never asked for. */
  private shorter: Int32Array = new Int32Array(FIRST_ROOM)
  private readonly ordered = new Map<number, number>()
  /** Number of a list by its list before and newest entry; zero is free. A power of two long, at most half full. */
  private places: Int32Array = new Int32Array(FIRST_ROOM * 2)

  /** The number of a list. */
  intern(list: readonly number[]): number {
    let number = 0
    for (const identity of list) number = this.append(number, identity)
    return number
  }

  items(list: number): readonly number[] {
    const items: number[] = []
    for (let at = list; at !== 0; at = this.withoutNewest(at)) items.push(this.newestOf(at))
    return items.reverse()
  }

  size(list: number): number {
    return this.sizes[list] ?? 0
  }

  /** The identities below `MOST_HELD` that stand in the list, one bit each. */
  set(list: number): number {
    return this.sets[list] ?? 0
  }

  holds(list: number, identity: number): boolean {
    return ((this.set(list) >> identity) & 1) === 1
  }

  newestOf(list: number): number {
    return this.newest[list] ?? 0
  }

  withoutNewest(list: number): number {
    return this.before[list] ?? 0
  }

  /** The list with one more entry at its end. */
  append(list: number, identity: number): number {
    const mask = this.places.length - 1
    let place = hash(list, identity) & mask
    for (let held = this.places[place] ?? 0; held !== 0; held = this.places[place] ?? 0) {
      if (this.before[held] === list && this.newest[held] === identity) return held
      place = (place + 1) & mask
    }
    const number = this.count
    this.count += 1
    if (number >= this.before.length) this.widen()
    this.places[place] = number
    this.before[number] = list
    this.newest[number] = identity
    this.sizes[number] = this.size(list) + 1
    this.sets[number] = this.set(list) | (identity < MOST_HELD ? 1 << identity : 0)
    if (this.count * 2 >= this.places.length) this.replace()
    return number
  }

  /** The list without its oldest entry. */
  withoutOldest(list: number): number {
    if (this.size(list) <= 1) return 0
    const known = this.shorter[list] ?? 0
    if (known !== 0) return known - 1
    const number = this.append(this.withoutOldest(this.withoutNewest(list)), this.newestOf(list))
    this.shorter[list] = number + 1
    return number
  }

  /** The list with the same entries in ascending order. */
  ascending(list: number): number {
    const known = this.ordered.get(list)
    if (known !== undefined) return known
    const number = this.intern([...this.items(list)].sort((a, b) => a - b))
    this.ordered.set(list, number)
    return number
  }

  private widen(): void {
    const wider = (narrow: Int32Array): Int32Array => {
      const wide = new Int32Array(narrow.length * GROWTH)
      wide.set(narrow)
      return wide
    }
    this.before = wider(this.before)
    this.newest = wider(this.newest)
    this.sizes = wider(this.sizes)
    this.sets = wider(this.sets)
    this.shorter = wider(this.shorter)
  }

  private replace(): void {
    this.places = new Int32Array(this.places.length * GROWTH)
    const mask = this.places.length - 1
    for (let number = 1; number < this.count; number += 1) {
      let place = hash(this.withoutNewest(number), this.newestOf(number)) & mask
      while (this.places[place] !== 0) place = (place + 1) & mask
      this.places[place] = number
    }
  }
}

function hash(list: number, identity: number): number {
  const mixed = Math.imul(list, 0x9e3779b1) ^ Math.imul(identity + 1, 0x85ebca6b)
  return (mixed ^ (mixed >>> 15)) >>> 0
}
