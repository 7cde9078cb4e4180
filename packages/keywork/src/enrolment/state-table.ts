/**
 * @module States of four whole numbers, each kept once with marks, in the order they were met.
 *
 * In most searches nearly every state has a `taught` of its own, and those come in ascending order. So the first
 * state of each `taught` is found by that number, without a hash: reading and writing then go straight through
 * memory. Only further states with a `taught` that was met before go to the hashed places.
 */

const STRIDE = 4
const FIRST_ROOM = 64
const GROWTH = 4

export class StateTable {
  size: number = 0
  private fields: Int32Array = new Int32Array(FIRST_ROOM * STRIDE)
  private marked: Uint8Array = new Uint8Array(FIRST_ROOM)
  /** Index plus one of the first state of each `taught`; zero: none yet. */
  private firsts: Int32Array = new Int32Array(FIRST_ROOM)
  /** Index plus one of the others; zero is free. Always a power of two long and at most half full. */
  private places: Int32Array = new Int32Array(FIRST_ROOM * 2)
  private placed = 0

  /** Adds a state unless it is there already, and the marks to those it has. */
  add(taught: number, list: number, shown: number, taken: number, marks: number): void {
    const first = taught < this.firsts.length ? (this.firsts[taught] as number) : 0
    if (first === 0) {
      if (taught >= this.firsts.length) this.firsts = longer(this.firsts, taught + 1)
      this.firsts[taught] = this.append(taught, list, shown, taken, marks)
      return
    }
    if (this.is(first - 1, taught, list, shown, taken)) {
      this.marked[first - 1] = (this.marked[first - 1] as number) | marks
      return
    }
    const mask = this.places.length - 1
    let place = hash(taught, list, shown, taken) & mask
    for (let held = this.places[place] as number; held !== 0; held = this.places[place] as number) {
      if (this.is(held - 1, taught, list, shown, taken)) {
        this.marked[held - 1] = (this.marked[held - 1] as number) | marks
        return
      }
      place = (place + 1) & mask
    }
    this.places[place] = this.append(taught, list, shown, taken, marks)
    this.placed += 1
    if (this.placed * 2 >= this.places.length) this.replace()
  }

  taught(index: number): number {
    return this.fields[index * STRIDE] as number
  }
  list(index: number): number {
    return this.fields[index * STRIDE + 1] as number
  }
  shown(index: number): number {
    return this.fields[index * STRIDE + 2] as number
  }
  taken(index: number): number {
    return this.fields[index * STRIDE + 3] as number
  }
  marks(index: number): number {
    return this.marked[index] as number
  }

  private is(index: number, taught: number, list: number, shown: number, taken: number): boolean {
    const at = index * STRIDE
    const { fields } = this
    return (
      fields[at + 2] === shown && fields[at + 1] === list && fields[at] === taught && fields[at + 3] === taken
    )
  }

  /** Appends a state and gives its index plus one. */
  private append(taught: number, list: number, shown: number, taken: number, marks: number): number {
    const index = this.size
    if (index >= this.marked.length) {
      this.fields = longer(this.fields, 0)
      const marked = new Uint8Array(this.marked.length * GROWTH)
      marked.set(this.marked)
      this.marked = marked
    }
    const at = index * STRIDE
    this.fields[at] = taught
    this.fields[at + 1] = list
    this.fields[at + 2] = shown
    this.fields[at + 3] = taken
    this.marked[index] = marks
    this.size += 1
    return this.size
  }

  private replace(): void {
    const before = this.places
    const places = new Int32Array(before.length * GROWTH)
    const mask = places.length - 1
    for (const held of before) {
      if (held === 0) continue
      const index = held - 1
      let place = hash(this.taught(index), this.list(index), this.shown(index), this.taken(index)) & mask
      while (places[place] !== 0) place = (place + 1) & mask
      places[place] = held
    }
    this.places = places
  }
}

function longer(short: Int32Array, least: number): Int32Array {
  const long = new Int32Array(Math.max(least, short.length * GROWTH))
  long.set(short)
  return long
}

/** Mixes four whole numbers into one of 32 bits. */
function hash(a: number, b: number, c: number, d: number): number {
  let mixed =
    Math.imul(a, 0x9e3779b1) ^ Math.imul(b, 0x85ebca6b) ^ Math.imul(c, 0xc2b2ae35) ^ Math.imul(d, 0x27d4eb2f)
  mixed = Math.imul(mixed ^ (mixed >>> 15), 0x2c1b3c6d)
  return (mixed ^ (mixed >>> 13)) >>> 0
}
