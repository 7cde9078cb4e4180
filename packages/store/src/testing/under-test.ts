import { type Fact, factHash } from '@shearline/jobfile'
import { expect } from 'vitest'
import type { Appended, Outcome, RefusalCode, Store } from '../contract/index.ts'
import type { OtherDevice } from './devices.ts'

/** A database an implementer brings: `open` gives one more store on the same data each time it is called. */
export interface Place {
  open(): Promise<Store>
  /** Where a copy of the database may be written, and how to read the facts of a job from such a copy. */
  readonly backup: { readonly file: string; factsIn(file: string, job: string): Promise<readonly unknown[]> }
  clear(): Promise<void>
}

/** What each test of the suite works on: made anew before it. */
export class UnderTest {
  place!: Place
  store!: Store
  /** A device enrolled in the store. */
  tablet!: OtherDevice

  fromDevice(facts: readonly unknown[]): Promise<Outcome<Appended>> {
    return this.store.appendFacts(facts, { from: 'device' })
  }

  fromBundle(facts: readonly unknown[]): Promise<Outcome<Appended>> {
    return this.store.appendFacts(facts, { from: 'bundle' })
  }
}

/** The head of a chain that ends with a fact. */
export function headAfter(fact: Fact | undefined) {
  if (fact === undefined) throw new Error('a fact was written')
  return { seq: fact.seq, hash: factHash(fact) }
}

/** How many facts an outcome says were new. */
export function accepted(outcome: Outcome<Appended>): number {
  if (!outcome.ok) throw new Error(outcome.refusal.what)
  return outcome.value.accepted
}

/** Expects a refusal with its code, the fact it names, and words in every part. */
export function expectRefused(outcome: Outcome<unknown>, code: RefusalCode, fact?: object): void {
  expect(outcome).toMatchObject({ ok: false, refusal: { code, ...(fact === undefined ? {} : { fact }) } })
  if (outcome.ok) return
  for (const words of [outcome.refusal.where, outcome.refusal.what, outcome.refusal.doNext])
    expect(words.length).toBeGreaterThan(5)
}
