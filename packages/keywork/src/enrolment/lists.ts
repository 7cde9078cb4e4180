/**
 * @module Lists of identities, each kept once and known by a number.
 *
 * A list is the list before its newest entry and that entry: a tree, held in flat arrays. By number lists compare in
 * one step; appending walks the few lists that are one entry longer, which lie side by side where a search made them
 * together. A million lists take some 30 MB.
 */

/** Identities of this number and above are never asked for by `holds`. */
export const MOST_HELD = 30 as number

const FIRST_ROOM = 256
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
  /** The newest list that is this one and one more entry, and the next such list beside a list; zero is none. */
  private longer: Int32Array = new Int32Array(FIRST_ROOM)
  private beside: Int32Array = new Int32Array(FIRST_ROOM)

  /** How many lists there are: every number is below it. */
  get numbers(): number {
    return this.count
  }

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
    const first = this.longer[list] as number
    for (let held = first; held !== 0; held = this.beside[held] as number)
      if (this.newest[held] === identity) return held
    const number = this.count
    this.count += 1
    if (number >= this.before.length) this.widen()
    this.before[number] = list
    this.newest[number] = identity
    this.sizes[number] = this.size(list) + 1
    this.sets[number] = this.set(list) | (identity < MOST_HELD ? 1 << identity : 0)
    this.beside[number] = first
    this.longer[list] = number
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
    this.longer = wider(this.longer)
    this.beside = wider(this.beside)
  }
}
