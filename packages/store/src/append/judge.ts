import { type ChainHead, type Fact, factName } from '@shearline/jobfile'
import type { FactSource, Outcome, Refusal, RefusalCode } from '../contract/index.ts'

/** A well-formed, rightly signed fact on its way in, with its hash and its place in what was sent. */
export interface Arriving {
  readonly index: number
  readonly fact: Fact
  readonly hash: string
}

/** What the store holds of one fact of the device. */
export interface Held {
  readonly seq: number
  readonly hash: string
  readonly prev: string | null
}

/** The facts of one device's chain that are new, how many were here, and where the unbroken chain then ends. */
export interface ChainVerdict {
  readonly fresh: readonly Arriving[]
  readonly already: number
  readonly head: ChainHead
}

/** Makes a refusal that names the fact by its place, its kind and its place in the device's chain. */
export function refuseFact(
  code: RefusalCode,
  arriving: Pick<Arriving, 'index' | 'fact'>,
  what: string,
  doNext: string,
): Refusal {
  const { index, fact } = arriving
  return {
    code,
    where: `${factName(index + 1, fact.kind)}, number ${fact.seq} of ${fact.device}`,
    what,
    doNext,
    fact: { index, device: fact.device, seq: fact.seq, id: fact.id },
  }
}

/**
 * Judges facts of one device against what is held of its chain (SPEC.md, STO-01 to STO-05). Pure.
 * `held` must contain every held fact whose `seq` arrives or neighbours one that arrives, and all beyond `head`.
 */
export function judgeChain(
  head: ChainHead,
  held: ReadonlyMap<number, Held>,
  arriving: readonly Arriving[],
  from: FactSource,
): Outcome<ChainVerdict> {
  const known = new Map<number, Held>(held)
  const fresh: Arriving[] = []
  let already = 0
  let end = advance(head, known)
  for (const one of [...arriving].sort((a, b) => a.fact.seq - b.fact.seq)) {
    const { fact, hash } = one
    const same = known.get(fact.seq)
    if (same !== undefined) {
      if (same.hash !== hash) return { ok: false, refusal: fork(one) }
      already++
      continue
    }
    if (from === 'device' && fact.seq !== end.seq + 1) return { ok: false, refusal: gap(one, end.seq) }
    const broken = brokenLink(one, known)
    if (broken !== null) return { ok: false, refusal: broken }
    known.set(fact.seq, { seq: fact.seq, hash, prev: fact.prev })
    fresh.push(one)
    end = advance(end, known)
  }
  return { ok: true, value: { fresh, already, head: end } }
}

function advance(head: ChainHead, known: ReadonlyMap<number, Held>): ChainHead {
  let end = head
  for (let next = known.get(end.seq + 1); next !== undefined; next = known.get(end.seq + 1)) {
    end = { seq: next.seq, hash: next.hash }
  }
  return end
}

/** A fact must name the hash of the one before it, and be named by the one after it, as far as these are held. */
function brokenLink(one: Arriving, known: ReadonlyMap<number, Held>): Refusal | null {
  const { fact, hash } = one
  if ((fact.seq === 1) !== (fact.prev === null)) {
    return refuseFact(
      'link-broken',
      one,
      'Only the first fact of a device has nothing before it.',
      'Send the facts as the device wrote them, unchanged.',
    )
  }
  const before = known.get(fact.seq - 1)
  if (before !== undefined && before.hash !== fact.prev) {
    return refuseFact(
      'link-broken',
      one,
      `It does not follow fact ${before.seq} of its device as kept here.`,
      'Keep the facts on the device and look at both versions of its chain; one of them was changed.',
    )
  }
  const after = known.get(fact.seq + 1)
  if (after !== undefined && after.prev !== hash) {
    return refuseFact(
      'link-broken',
      one,
      `Fact ${after.seq} of its device is kept here and follows another fact ${fact.seq}.`,
      'Keep the facts on the device and look at both versions of its chain; one of them was changed.',
    )
  }
  return null
}

function fork(one: Arriving): Refusal {
  return refuseFact(
    'fork',
    one,
    `The device wrote another fact with number ${one.fact.seq}, and that one is kept here.`,
    'Keep both on the device. Its key was used in two places, or its memory was set back: enrol it anew and record what is missing again.',
  )
}

function gap(one: Arriving, last: number): Refusal {
  return refuseFact(
    'gap',
    one,
    `The last fact here is number ${last}, so number ${last + 1} must come next.`,
    `Send the facts of this device from number ${last + 1} on.`,
  )
}
