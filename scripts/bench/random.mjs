/** A small seeded generator of numbers (xorshift32, Marsaglia 2003), so that every run makes the same recording. */
export class Random {
  #state

  constructor(seed) {
    this.#state = seed >>> 0 || 1
  }

  /** 32 bits. */
  bits() {
    let state = this.#state
    state ^= state << 13
    state ^= state >>> 17
    state ^= state << 5
    this.#state = state >>> 0
    return this.#state
  }

  /** A whole number from `low` up to and without `high`. */
  between(low, high) {
    return low + (this.bits() % (high - low))
  }
}
