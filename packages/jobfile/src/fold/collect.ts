import {
  type Body,
  bodyOf,
  canBeCorrected,
  compareFacts,
  type Fact,
  formOf,
  type Kind,
  readBody,
  understands,
} from '../facts/index.ts'
import type { JobState } from './state.ts'

/** One fact whose body was read, with what the fold needs of its envelope. */
export interface Entry<K extends Kind> {
  readonly id: string
  readonly at: string
  readonly by: string
  /** Place in fold order: decides what came first when instants are equal. */
  readonly order: number
  readonly body: Body<K>
}

interface Correction {
  readonly body: Body<'corrected'>
  /** Its place in `corrections`. */
  readonly index: number
}

type CorrectionLine = JobState['corrections'][number]

const none: readonly never[] = []

/** All facts of a job by kind, in fold order, corrections applied. */
export class Collected {
  readonly #entries = new Map<string, Entry<Kind>[]>()
  readonly unknown: Fact[] = []
  readonly unreadable: { readonly fact: Fact; readonly path: string; readonly what: string }[] = []
  readonly corrections: CorrectionLine[] = []
  readonly erased: Fact[] = []
  readonly ordered: readonly Fact[]

  constructor(facts: readonly Fact[]) {
    this.ordered = inOrder(facts)
    const corrected = this.#readCorrections()
    for (let order = 0; order < this.ordered.length; order++) {
      const fact = this.ordered[order] as Fact
      const change = corrected?.get(fact.id)
      if (fact.kind === 'corrected') {
        if (change !== undefined) this.#note(change.index, 'cannot-be-corrected')
        continue
      }
      if (change === undefined) this.#take(fact, order)
      else this.#takeCorrected(fact, order, change)
    }
  }

  /** Every entry of a kind, oldest first. */
  all<K extends Kind>(kind: K): readonly Entry<K>[] {
    return (this.#entries.get(kind) ?? none) as unknown as readonly Entry<K>[]
  }

  /** The latest entry of a kind, or null. */
  last<K extends Kind>(kind: K): Entry<K> | null {
    const all = this.all(kind)
    return all[all.length - 1] ?? null
  }

  /** The last correction of a fact decides; correcting a correction is done by correcting the fact again. */
  #readCorrections(): Map<string, Correction> | null {
    let corrected: Map<string, Correction> | null = null
    for (const fact of this.ordered) {
      if (fact.kind !== 'corrected') continue
      if (understands(fact) !== 'read') {
        this.unknown.push(fact)
        continue
      }
      const read = bodyOf(fact, 'corrected')
      if (!read.ok) {
        this.unreadable.push({ fact, path: read.path, what: read.what })
        continue
      }
      corrected ??= new Map()
      const before = corrected.get(read.body.fact)
      if (before !== undefined) this.#note(before.index, 'superseded')
      corrected.set(read.body.fact, { body: read.body, index: this.corrections.length })
      this.corrections.push({
        fact: read.body.fact,
        action: read.body.action,
        reason: read.body.reason,
        at: fact.at,
        by: fact.by,
        stands: 'fact-not-here',
      })
    }
    return corrected
  }

  #note(index: number, stands: CorrectionLine['stands']): void {
    const line = this.corrections[index]
    if (line !== undefined) this.corrections[index] = { ...line, stands }
  }

  #takeCorrected(fact: Fact, order: number, { body, index }: Correction): void {
    if (!canBeCorrected(fact.kind)) {
      this.#note(index, 'cannot-be-corrected')
      this.#take(fact, order)
    } else if (body.action === 'withdrawn') {
      this.#note(index, 'applied')
    } else {
      const read = readBody(fact.kind, body.body, body.v ?? fact.v)
      // A replacement that does not fit replaces nothing: what was recorded still stands.
      this.#note(index, read.ok ? 'applied' : 'does-not-fit')
      if (read.ok) this.#keep(fact, fact.kind, order, read.body)
      else this.#take(fact, order)
    }
  }

  #take(fact: Fact, order: number): void {
    const { body, v } = fact
    const form = formOf(fact.kind)
    if (form === undefined || v > form.version) {
      this.unknown.push(fact)
      return
    }
    // An erased body (retention) leaves its fact in the chain but nothing to fold.
    if (body.erased !== undefined) {
      this.erased.push(fact)
      return
    }
    if (v === form.version && form.fits(body)) {
      this.#keep(fact, form.kind, order, body as unknown as Body<Kind>)
      return
    }
    const read = readBody(form.kind, body, v)
    if (read.ok) this.#keep(fact, form.kind, order, read.body)
    else this.unreadable.push({ fact, path: read.path, what: read.what })
  }

  #keep(fact: Fact, kind: Kind, order: number, body: Body<Kind>): void {
    const entry: Entry<Kind> = { id: fact.id, at: fact.at, by: fact.by, order, body }
    const list = this.#entries.get(kind)
    if (list === undefined) this.#entries.set(kind, [entry])
    else list.push(entry)
  }
}

/** Facts in fold order; stores hand them over in that order, so looking first is cheaper than sorting. */
function inOrder(facts: readonly Fact[]): readonly Fact[] {
  for (let index = 1; index < facts.length; index++) {
    const [before, fact] = [facts[index - 1] as Fact, facts[index] as Fact]
    if (before.at < fact.at) continue
    if (compareFacts(before, fact) > 0) return [...facts].sort(compareFacts)
  }
  return facts
}
