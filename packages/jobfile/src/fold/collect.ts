import { type Body, compareFacts, type Fact, isKnownKind, type Kind, readBody } from '../facts/index.ts'
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

/** All facts of a job by kind, in fold order, corrections applied. */
export class Collected {
  readonly #entries = new Map<Kind, Entry<Kind>[]>()
  readonly unknown: Fact[] = []
  readonly unreadable: { readonly fact: Fact; readonly path: string; readonly what: string }[] = []
  readonly corrections: JobState['corrections'][number][] = []
  readonly ordered: readonly Fact[]

  constructor(facts: readonly Fact[]) {
    this.ordered = [...facts].sort(compareFacts)
    const corrected = this.#readCorrections()
    this.ordered.forEach((fact, order) => {
      if (fact.kind === 'corrected') return
      const change = corrected.get(fact.id)
      if (change?.action === 'withdrawn') return
      this.#take(fact, change?.body ?? fact.body, order)
    })
  }

  /** Every entry of a kind, oldest first. */
  all<K extends Kind>(kind: K): readonly Entry<K>[] {
    return (this.#entries.get(kind) ?? []) as unknown as readonly Entry<K>[]
  }

  /** The latest entry of a kind, or null. */
  last<K extends Kind>(kind: K): Entry<K> | null {
    return this.all(kind).at(-1) ?? null
  }

  /** The last correction of a fact decides; correcting a correction is done by correcting the fact again. */
  #readCorrections(): Map<string, Body<'corrected'>> {
    const corrected = new Map<string, Body<'corrected'>>()
    for (const fact of this.ordered) {
      if (fact.kind !== 'corrected') continue
      const read = readBody('corrected', fact.body)
      if (!read.ok) {
        this.unreadable.push({ fact, path: read.path, what: read.what })
        continue
      }
      corrected.set(read.body.fact, read.body)
      this.corrections.push({
        fact: read.body.fact,
        action: read.body.action,
        reason: read.body.reason,
        at: fact.at,
        by: fact.by,
      })
    }
    return corrected
  }

  #take(fact: Fact, rawBody: Fact['body'], order: number): void {
    if (!isKnownKind(fact.kind)) {
      this.unknown.push(fact)
      return
    }
    // An erased body (retention) leaves its fact in the chain but nothing to fold.
    if ('erased' in rawBody) return
    const read = readBody(fact.kind, rawBody)
    if (!read.ok) {
      this.unreadable.push({ fact, path: read.path, what: read.what })
      return
    }
    const entry: Entry<Kind> = { id: fact.id, at: fact.at, by: fact.by, order, body: read.body }
    const list = this.#entries.get(fact.kind)
    if (list === undefined) this.#entries.set(fact.kind, [entry])
    else list.push(entry)
  }
}
