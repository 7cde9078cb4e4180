/** @module A binary heap: the least first, among equals the one that is further on, then the one put in last. */

interface Held<T> {
  readonly value: T
  readonly first: number
  readonly second: number
  readonly third: number
}

export class Heap<T> {
  private readonly held: Held<T>[] = []
  private count = 0

  put(value: T, first: number, second: number): void {
    const item = { value, first, second, third: this.count }
    this.count += 1
    let at = this.held.length
    this.held.push(item)
    while (at > 0) {
      const above = (at - 1) >> 1
      const parent = this.held[above] as Held<T>
      if (!before(item, parent)) break
      this.held[at] = parent
      at = above
    }
    this.held[at] = item
  }

  /** The least, taken out; undefined when there is none. */
  take(): T | undefined {
    const top = this.held[0]
    const last = this.held.pop()
    if (top === undefined || last === undefined) return undefined
    if (this.held.length === 0) return top.value
    let at = 0
    for (let below = 1; below < this.held.length; below = at * 2 + 1) {
      const right = this.held[below + 1]
      if (right !== undefined && before(right, this.held[below] as Held<T>)) below += 1
      const child = this.held[below] as Held<T>
      if (!before(child, last)) break
      this.held[at] = child
      at = below
    }
    this.held[at] = last
    return top.value
  }
}

function before<T>(a: Held<T>, b: Held<T>): boolean {
  return (a.first - b.first || b.second - a.second || b.third - a.third) < 0
}
