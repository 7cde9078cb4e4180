/** @module Bodies of a kind as they count now: withdrawn ones left out, replaced ones as replaced. */
import { type Body, bodyOf, type Fact, type Kind } from '@shearline/jobfile'
import type { Desk } from '../job/desk.ts'

/** What is on record of a kind, in order, with the instant of each. */
export function recorded<K extends Kind>(
  { facts, state }: Pick<Desk, 'facts' | 'state'>,
  kind: K,
): readonly { readonly at: string; readonly body: Body<K> }[] {
  return facts.flatMap((fact) => {
    if (fact.kind !== kind) return []
    const correction = state.corrections.findLast((one) => one.fact === fact.id && one.stands === 'applied')
    if (correction?.action === 'withdrawn') return []
    const stands = correction === undefined ? fact : replaced(facts, fact)
    const read = bodyOf(stands, kind)
    return read.ok ? [{ at: fact.at, body: read.body }] : []
  })
}

function replaced(facts: readonly Fact[], fact: Fact): Pick<Fact, 'v' | 'body'> {
  for (const other of facts.toReversed()) {
    if (other.kind !== 'corrected') continue
    const read = bodyOf(other, 'corrected')
    if (read.ok && read.body.fact === fact.id && read.body.body !== undefined)
      return { v: read.body.v ?? fact.v, body: read.body.body as Fact['body'] }
  }
  return fact
}
