import { webcrypto } from 'node:crypto'
import { canonicalJson, type Fact, foldJob, Verifier, verifyFacts } from '@shearline/jobfile'
import type { Store } from '@shearline/store'
import { expect } from 'vitest'
import { type Draw, drawing, oneOf } from '../fuzz/draw.ts'
import { type Answer, Tablet } from './device.ts'

/** Two servers on one database, each a store of its own that can be ended and started. */
export interface Servers {
  readonly open: () => Promise<Store>
  readonly stores: [Store, Store]
}

/** One letter on its way: facts to a server, its answer, or a job's facts that a tablet asked for. */
type Letter = { readonly tablet: number; readonly server: 0 | 1 } & (
  | { readonly what: 'facts'; readonly facts: readonly Fact[] }
  | { readonly what: 'answer'; readonly answer: Answer }
  | { readonly what: 'fetched'; readonly facts: readonly Fact[] }
)

const steps = 70

/**
 * Three tablets and two servers: writes, sends, fetches, partitions, restarts, and a network that reorders, repeats and
 * loses. Everything that is drawn comes from the seed. At the end the network heals, and every tablet and both servers
 * must fold every job to the same state, with everything that was ever acknowledged in it.
 */
export class Schedule {
  readonly #draw: Draw
  readonly #servers: Servers
  readonly #jobs: readonly string[]
  readonly #tablets: Tablet[] = []
  readonly #letters: Letter[] = []
  readonly #cut = new Set<string>()
  /** Facts a server said it took, whether or not the tablet heard of it. */
  readonly #taken = new Map<string, Fact>()
  #minute = 0

  constructor(seed: number, name: string, servers: Servers) {
    this.#draw = drawing(seed)
    this.#servers = servers
    this.#jobs = [`${name}-first`, `${name}-second`]
  }

  /** Runs it. Throws what the assertions throw; answers with the number of facts. */
  async run(): Promise<number> {
    for (const name of ['one', 'two', 'three']) {
      const tablet = await Tablet.make(`Tablet ${name}`)
      this.#tablets.push(tablet)
      const enrolled = await this.#servers.stores[this.#server()].enrol(tablet.device)
      expect(enrolled.ok).toBe(true)
    }
    for (let step = 0; step < steps; step++) await this.#step()
    await this.#heal()
    return await this.#compare()
  }

  async #step(): Promise<void> {
    const chance = this.#draw(100)
    const tablet = this.#draw(3)
    const server = this.#server()
    if (chance < 30) await this.#write(tablet)
    else if (chance < 48) this.#send(tablet, server)
    else if (chance < 76) await this.#deliver()
    else if (chance < 82) await this.#deliverTogether()
    else if (chance < 89) await this.#fetch(tablet, server)
    else if (chance < 96) this.#partition(tablet, server)
    else await this.#restart(server)
  }

  #server(): 0 | 1 {
    return this.#draw(2) === 0 ? 0 : 1
  }

  async #write(tablet: number): Promise<void> {
    const job = oneOf(this.#draw, this.#jobs)
    // Clocks differ: a tablet's may be minutes ahead or behind.
    const at = new Date(Date.UTC(2026, 10, 25, 9, this.#minute++ + tablet * 7 - this.#draw(15))).toISOString()
    for (let facts = 1 + this.#draw(3); facts > 0; facts--)
      await this.#tablets[tablet]?.write({ job, at, ...oneOf(this.#draw, drafts)(this.#draw) })
  }

  #send(tablet: number, server: 0 | 1): void {
    const all = this.#tablets[tablet]?.nextBatch() ?? []
    if (all.length === 0) return
    // A long chain goes in several letters, which may then overtake each other.
    const half = this.#draw(3) === 0 ? Math.ceil(all.length / 2) : all.length
    for (const facts of [all.slice(0, half), all.slice(half)])
      if (facts.length > 0) this.#letters.push({ tablet, server, what: 'facts', facts })
  }

  async #deliver(): Promise<void> {
    if (this.#letters.length === 0) return
    const at = this.#draw(this.#letters.length)
    const letter = this.#letters[at]
    if (letter === undefined || this.#cut.has(`${letter.tablet}:${letter.server}`)) return
    const fate = this.#draw(10)
    // Repeated: it stays on its way and comes again. Lost: it is gone. Else it comes once.
    if (fate > 2) this.#letters.splice(at, 1)
    if (fate !== 9) await this.#arrive(letter)
  }

  /** Both servers work at once on the one database. */
  async #deliverTogether(): Promise<void> {
    const some = this.#letters
      .filter(({ tablet, server }) => !this.#cut.has(`${tablet}:${server}`))
      .slice(0, 4)
    for (const letter of some) this.#letters.splice(this.#letters.indexOf(letter), 1)
    await Promise.all(some.map((letter) => this.#arrive(letter)))
  }

  async #arrive(letter: Letter): Promise<void> {
    const tablet = this.#tablets[letter.tablet]
    if (letter.what === 'answer') tablet?.hear(letter.answer)
    if (letter.what === 'fetched') tablet?.keep(letter.facts)
    if (letter.what !== 'facts') return
    const { facts } = letter
    const outcome = await this.#servers.stores[letter.server].appendFacts(facts, { from: 'device' })
    if (outcome.ok) for (const fact of facts) this.#taken.set(fact.id, fact)
    else expect(['gap']).toContain(outcome.refusal.code)
    const answer: Answer = outcome.ok ? { ok: true, facts } : { ok: false, code: outcome.refusal.code }
    this.#letters.push({ tablet: letter.tablet, server: letter.server, what: 'answer', answer })
  }

  async #fetch(tablet: number, server: 0 | 1): Promise<void> {
    if (this.#cut.has(`${tablet}:${server}`)) return
    const facts = await this.#servers.stores[server].factsOfJob(oneOf(this.#draw, this.#jobs))
    this.#letters.push({ tablet, server, what: 'fetched', facts })
  }

  #partition(tablet: number, server: 0 | 1): void {
    const line = `${tablet}:${server}`
    if (!this.#cut.delete(line)) this.#cut.add(line)
  }

  async #restart(server: 0 | 1): Promise<void> {
    await this.#servers.stores[server].close()
    this.#servers.stores[server] = await this.#servers.open()
  }

  async #heal(): Promise<void> {
    this.#cut.clear()
    for (let rounds = 0; this.#letters.length > 0; rounds++) {
      expect(rounds, 'the network empties').toBeLessThan(5000)
      const letter = this.#letters.splice(this.#draw(this.#letters.length), 1)[0]
      if (letter !== undefined) await this.#arrive(letter)
    }
    for (const [index, tablet] of this.#tablets.entries()) {
      for (let rounds = 0; tablet.outbox.size > 0; rounds++) {
        expect(rounds, 'a tablet sends everything it has').toBeLessThan(10)
        const facts = tablet.nextBatch()
        await this.#arrive({ tablet: index, server: this.#server(), what: 'facts', facts })
        while (this.#letters.length > 0) {
          const answer = this.#letters.pop()
          if (answer !== undefined) await this.#arrive(answer)
        }
      }
    }
    for (const tablet of this.#tablets)
      for (const job of this.#jobs) tablet.keep(await this.#servers.stores[this.#server()].factsOfJob(job))
  }

  async #compare(): Promise<number> {
    const [one, two] = this.#servers.stores
    const devices = this.#tablets.map(({ device }) => device)
    const kept = new Map<string, number>()
    for (const job of this.#jobs) {
      const facts = await one.factsOfJob(job)
      const check = await verifyFacts(facts, devices, new Verifier(webcrypto.subtle))
      expect(check.findings.filter(({ severity }) => severity === 'error')).toEqual([])
      for (const { id } of facts) kept.set(id, (kept.get(id) ?? 0) + 1)
      const state = canonicalJson(foldJob(job, facts))
      expect(canonicalJson(foldJob(job, await two.factsOfJob(job)))).toBe(state)
      for (const tablet of this.#tablets) expect(canonicalJson(foldJob(job, tablet.factsOf(job)))).toBe(state)
    }
    const written = this.#tablets.flatMap((tablet) => tablet.written)
    for (const { id } of written) expect(kept.get(id), 'every fact is there exactly once').toBe(1)
    for (const id of this.#taken.keys()) expect(kept.get(id), 'what was acknowledged is there').toBe(1)
    expect(kept.size).toBe(written.length)
    return written.length
  }
}

/** Facts that change what a job folds to, so that two orders would be seen. */
const drafts: readonly ((draw: Draw) => { readonly kind: string; readonly body: Record<string, unknown> })[] =
  [
    (draw) => ({ kind: 'note-written', body: { text: `note ${draw(1000)}` } }),
    (draw) => ({ kind: 'keys-said', body: { count: draw(6), absent: [] } }),
    (draw) => ({
      kind: 'job-opened',
      body: {
        title: `Spare key ${draw(10)}`,
        place: 'Harbour yard',
        zone: 'Europe/Lisbon',
        work: 'add-a-key',
        customer: 'fleet',
        vehicle: 'Small van',
        language: 'en',
        demo: true,
      },
    }),
  ]
