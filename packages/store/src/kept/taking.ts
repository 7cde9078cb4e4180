import { setImmediate as nextTurn } from 'node:timers/promises'
import { type ChainHead, type DeviceStanding, isCutOff, Verifier } from '@shearline/jobfile'
import type { Transaction } from 'kysely'
import {
  type Arriving,
  checkSignatures,
  type Held,
  judgeChain,
  readFacts,
  refuseFact,
  signaturesHere,
} from '../append/index.ts'
import type { Engine } from '../contract/engine.ts'
import type { Appended, FactSource, Outcome, Refusal } from '../contract/index.ts'
import type { Tables } from '../tables/tables.ts'
import { heldAround, insertFacts, moveHeads } from './rows.ts'
import type { Standings } from './standings.ts'

/** Facts in one shared commit; more wait for the next. */
const factsInGroup = 2000

/** How long a commit waits for signatures that are being checked, milliseconds: a fraction of what it costs itself. */
const gatherMilliseconds = 1

/** So few facts, when no other call is being checked, are verified in this thread. */
const factsVerifiedHere = 3

/** One call of `append`, its signatures checked, waiting for a commit. */
interface Waiting {
  readonly arriving: readonly Arriving[]
  readonly from: FactSource
  readonly answer: (outcome: Outcome<Appended>) => void
  readonly fail: (error: unknown) => void
}

/**
 * Takes facts that other devices signed (Store.appendFacts). Calls that come while a commit is on its way to the
 * disk share the next one; each is judged by itself and answered only after its commit (SPEC.md, STO-28).
 */
export class Taking {
  readonly #engine: Engine
  readonly #verifier: Verifier
  readonly #here = new Verifier(signaturesHere)
  readonly #standings: Standings
  readonly #now: () => string
  readonly #keys = new Map<string, string>()
  readonly #waiting: Waiting[] = []
  #checking = 0
  #committing = false

  /** `now` answers with the UTC instant at which facts count as received. */
  constructor(engine: Engine, verifier: Verifier, standings: Standings, now: () => string) {
    this.#engine = engine
    this.#verifier = verifier
    this.#standings = standings
    this.#now = now
  }

  async append(values: readonly unknown[], from: FactSource): Promise<Outcome<Appended>> {
    this.#checking++
    let checked: Outcome<readonly Arriving[]>
    try {
      checked = await this.#check(values)
    } finally {
      this.#checking--
    }
    if (!checked.ok) return checked
    const arriving = checked.value
    if (arriving.length === 0) return { ok: true, value: { accepted: 0, already: 0 } }
    return await new Promise((answer, fail) => {
      this.#waiting.push({ arriving, from, answer, fail })
      void this.#commitAll()
    })
  }

  async #check(values: readonly unknown[]): Promise<Outcome<readonly Arriving[]>> {
    const read = readFacts(values)
    if (!read.ok) return read
    const strange = [...new Set(read.value.map(({ fact }) => fact.device))].filter(
      (device) => !this.#keys.has(device),
    )
    if (strange.length > 0) {
      const rows = await this.#engine.db
        .selectFrom('devices')
        .where('device', 'in', strange)
        .select(['device', 'public_key'])
        .execute()
      // The key of an identifier never changes (STO-15), so it is asked for once.
      for (const row of rows) this.#keys.set(row.device, row.public_key)
    }
    const alone = this.#checking === 1 && read.value.length <= factsVerifiedHere
    return await checkSignatures(read.value, this.#keys, alone ? this.#here : this.#verifier)
  }

  async #commitAll(): Promise<void> {
    if (this.#committing) return
    this.#committing = true
    while (this.#waiting.length > 0) {
      await this.#gather()
      const group = this.#nextGroup()
      try {
        const outcomes = await this.#engine.transact((transaction) => this.#appendGroup(transaction, group))
        await this.#engine.wrote()
        for (const [index, { answer, fail }] of group.entries()) {
          const outcome = outcomes[index]
          if (outcome === undefined) fail(new Error('every call of a group is judged'))
          else answer(outcome)
        }
      } catch (error) {
        for (const { fail } of group) fail(error)
      }
    }
    this.#committing = false
  }

  /** Lets calls whose signatures are being checked catch up, so that they need no commit of their own. */
  async #gather(): Promise<void> {
    const until = performance.now() + gatherMilliseconds
    while (this.#checking > 0 && performance.now() < until) await nextTurn()
  }

  #nextGroup(): readonly Waiting[] {
    let facts = 0
    let calls = 0
    for (const { arriving } of this.#waiting) {
      if (calls > 0 && facts + arriving.length > factsInGroup) break
      facts += arriving.length
      calls++
    }
    return this.#waiting.splice(0, calls)
  }

  async #appendGroup(
    transaction: Transaction<Tables>,
    group: readonly Waiting[],
  ): Promise<readonly Outcome<Appended>[]> {
    const all = group.flatMap(({ arriving }) => arriving)
    const jobs = [...new Set(all.map(({ fact }) => fact.job))]
    await this.#engine.holdJobs(
      transaction,
      jobs.map((job) => ({ job, how: 'beside-others' })),
    )
    const devices = [...new Set(all.map(({ fact }) => fact.device))]
    const heads = await this.#engine.lockHeads(transaction, devices)
    const held = await heldAround(transaction, heads, all)
    const chains = new Map<string, Chain>(
      heads.map((head) => [head.device, { start: head, head, held: held.get(head.device) ?? new Map() }]),
    )
    const standings = await this.#standings.read(transaction)
    const fresh: Arriving[] = []
    const outcomes = group.map((one) => judgeCall(one, chains, standings, fresh))
    if (fresh.length > 0) {
      await insertFacts(transaction, fresh, this.#now())
      const moved = [...chains].filter(([, { start, head }]) => head.seq !== start.seq)
      await moveHeads(
        transaction,
        moved.map(([device, { head }]) => ({ device, ...head })),
      )
      await this.#engine.announce(transaction, [...new Set(fresh.map(({ fact }) => fact.job))])
    }
    return outcomes
  }
}

/** A device's chain while a group is judged: what is held, the group's earlier calls included. */
interface Chain {
  readonly start: ChainHead
  head: ChainHead
  readonly held: Map<number, Held>
}

/** Judges one call, all or none; what is new goes to `fresh` and into the chains, so that the next call sees it. */
function judgeCall(
  { arriving, from }: Waiting,
  chains: ReadonlyMap<string, Chain>,
  standings: ReadonlyMap<string, DeviceStanding>,
  fresh: Arriving[],
): Outcome<Appended> {
  const judged: { readonly chain: Chain; readonly fresh: readonly Arriving[]; readonly head: ChainHead }[] =
    []
  let already = 0
  for (const [device, chain] of chains) {
    const own = arriving.filter(({ fact }) => fact.device === device)
    if (own.length === 0) continue
    const verdict = judgeChain(chain.head, chain.held, own, from)
    if (!verdict.ok) return verdict
    // A bundle is taken as evidence of what was written: verifying says which of it is not trusted.
    const refused = from === 'device' ? refuseCutOff(standings.get(device), verdict.value.fresh) : null
    if (refused !== null) return { ok: false, refusal: refused }
    judged.push({ chain, fresh: verdict.value.fresh, head: verdict.value.head })
    already += verdict.value.already
  }
  const taken = judged.flatMap((one) => one.fresh).sort((a, b) => a.index - b.index)
  fresh.push(...taken)
  for (const { chain, head, fresh: added } of judged) {
    for (const { fact, hash } of added) chain.held.set(fact.seq, { seq: fact.seq, hash, prev: fact.prev })
    chain.head = head
  }
  return { ok: true, value: { accepted: taken.length, already } }
}

/** The first of these facts that lies beyond the revocation or replacement of its device, as a refusal; else null. */
function refuseCutOff(standing: DeviceStanding | undefined, fresh: readonly Arriving[]): Refusal | null {
  const one = standing === undefined ? undefined : fresh.find(({ fact }) => isCutOff(standing, fact))
  if (standing === undefined || one === undefined) return null
  const { revoked, replaced } = standing
  const why =
    revoked === null
      ? `The device was replaced by ${replaced?.by ?? 'another'} after its fact ${replaced?.seq ?? 0}.`
      : `The device was revoked by ${revoked.by} from ${revoked.from} (${revoked.because}): ${revoked.reason}`
  return refuseFact(
    'device-revoked',
    one,
    why,
    'The facts stay on the device. If they are true, record them again on a device that stands in the register.',
  )
}
