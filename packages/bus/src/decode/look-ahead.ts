/** @module A queue of bounded length: what enters is shown once enough has come after it. */

/** Holds entries in their order; the oldest is shown when there are too many, or too many bytes in them. */
export class LookAhead<Entry> {
  readonly #mostEntries: number
  readonly #mostBytes: number
  readonly #bytesOf: (entry: Entry) => number
  readonly #show: (entry: Entry) => void
  #entries: Entry[] = []
  #start = 0
  #bytes = 0

  constructor(
    mostEntries: number,
    mostBytes: number,
    bytesOf: (entry: Entry) => number,
    show: (entry: Entry) => void,
  ) {
    this.#mostEntries = mostEntries
    this.#mostBytes = mostBytes
    this.#bytesOf = bytesOf
    this.#show = show
  }

  /** Takes an entry and shows those that have waited long enough. */
  add(entry: Entry): void {
    this.#entries.push(entry)
    this.#bytes += this.#bytesOf(entry)
    while (this.#entries.length - this.#start > this.#mostEntries || this.#bytes > this.#mostBytes)
      this.#next()
    if (this.#start > 1024 && this.#start * 2 > this.#entries.length) {
      this.#entries = this.#entries.slice(this.#start)
      this.#start = 0
    }
  }

  /** Shows all that wait. */
  drain(): void {
    while (this.#start < this.#entries.length) this.#next()
    this.#entries = []
    this.#start = 0
  }

  #next(): void {
    const entry = this.#entries[this.#start++] as Entry
    this.#bytes -= this.#bytesOf(entry)
    this.#show(entry)
  }
}
