/** @module States of four whole numbers, each kept once, in the order they were met. */

const FIELDS = 4
const FIRST_ROOM = 64
/** Growing costs a new place for every state, so it is done seldom. */
const GROWTH = 4

/** An open-addressing table over one flat array: 16 bytes a state and 8 or more for its place. */
export class StateTable {
  size: number = 0
  private fields: Int32Array = new Int32Array(FIRST_ROOM * FIELDS)
  /** Index of a state plus one; zero is free. Always a power of two long and at most half full. */
  private places: Int32Array = new Int32Array(FIRST_ROOM * 2)

  /** Adds a state unless it is there already. */
  add(a: number, b: number, c: number, d: number): void {
    const mask = this.places.length - 1
    let place = hash(a, b, c, d) & mask
    for (let held = this.places[place] ?? 0; held !== 0; held = this.places[place] ?? 0) {
      const at = (held - 1) * FIELDS
      const { fields } = this
      if (fields[at] === a && fields[at + 1] === b && fields[at + 2] === c && fields[at + 3] === d) return
      place = (place + 1) & mask
    }
    this.places[place] = this.size + 1
    const at = this.size * FIELDS
    this.fields[at] = a
    this.fields[at + 1] = b
    this.fields[at + 2] = c
    this.fields[at + 3] = d
    this.size += 1
    if (this.size * 2 >= this.places.length) this.grow()
  }

  /** One field of one state. */
  at(index: number, field: number): number {
    return this.fields[index * FIELDS + field] ?? 0
  }

  private grow(): void {
    const fields = new Int32Array(this.fields.length * GROWTH)
    fields.set(this.fields)
    this.fields = fields
    this.places = new Int32Array(this.places.length * GROWTH)
    const mask = this.places.length - 1
    for (let index = 0; index < this.size; index += 1) {
      const at = index * FIELDS
      let place = hash(fields[at] ?? 0, fields[at + 1] ?? 0, fields[at + 2] ?? 0, fields[at + 3] ?? 0) & mask
      while (this.places[place] !== 0) place = (place + 1) & mask
      this.places[place] = index + 1
    }
  }
}

/** Mixes four whole numbers into one of 32 bits. */
function hash(a: number, b: number, c: number, d: number): number {
  let mixed =
    Math.imul(a, 0x9e3779b1) ^ Math.imul(b, 0x85ebca6b) ^ Math.imul(c, 0xc2b2ae35) ^ Math.imul(d, 0x27d4eb2f)
  mixed = Math.imul(mixed ^ (mixed >>> 15), 0x2c1b3c6d)
  return (mixed ^ (mixed >>> 13)) >>> 0
}
