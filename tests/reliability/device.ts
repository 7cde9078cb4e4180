import { randomUUID, webcrypto } from 'node:crypto'
import {
  type ChainHead,
  type Device,
  describeDevice,
  emptyHead,
  type Fact,
  type FactDraft,
  writeFact,
} from '@shearline/jobfile'

/** Facts a device sends at a time, as the bench does (apps/bench/src/sync/outbox.ts). */
const factsInBatch = 200

/** What a server answers to facts: which it has now, or why it took none. */
export type Answer =
  | { readonly ok: true; readonly facts: readonly Fact[] }
  | { readonly ok: false; readonly code: string }

/**
 * A tablet with a real key. What it wrote and what is still to be sent is its durable store and survives its restart;
 * it follows the bench's rules: it writes first, sends in order, forgets nothing that was not acknowledged, and offers
 * its whole chain when the server says that facts are missing.
 */
export class Tablet {
  readonly device: Device
  /** Its own facts, in order. */
  readonly written: Fact[] = []
  /** Everything it has seen, by device and number: its own facts and those of others it fetched. */
  readonly seen = new Map<string, Fact>()
  /** Numbers of own facts that no server acknowledged yet. */
  readonly outbox = new Set<number>()
  /** Own facts a server acknowledged, by identifier. */
  readonly acknowledged = new Map<string, Fact>()
  #head: ChainHead = emptyHead
  readonly #key: webcrypto.CryptoKey

  private constructor(device: Device, key: webcrypto.CryptoKey) {
    this.device = device
    this.#key = key
  }

  static async make(name: string): Promise<Tablet> {
    const pair = (await webcrypto.subtle.generateKey({ name: 'Ed25519' }, true, [
      'sign',
      'verify',
    ])) as unknown as webcrypto.CryptoKeyPair
    const raw = new Uint8Array(await webcrypto.subtle.exportKey('raw', pair.publicKey))
    return new Tablet(describeDevice(raw, name), pair.privateKey)
  }

  /** Writes the next fact of its chain to its own store. */
  async write(draft: Pick<FactDraft, 'job' | 'kind' | 'body' | 'at'>): Promise<Fact> {
    const full = { id: randomUUID(), by: 'Robin', ...draft }
    const { fact, head } = await writeFact(full, this.device.device, this.#head, async (data) => {
      return new Uint8Array(await webcrypto.subtle.sign('Ed25519', this.#key, data))
    })
    this.#head = head
    this.written.push(fact)
    this.outbox.add(fact.seq)
    this.keep([fact])
    return fact
  }

  /** The next facts to send, in order; at most a batch. */
  nextBatch(): readonly Fact[] {
    return this.written.filter(({ seq }) => this.outbox.has(seq)).slice(0, factsInBatch)
  }

  /** Takes an answer to facts that were sent. */
  hear(answer: Answer): void {
    if (answer.ok)
      for (const fact of answer.facts) {
        this.outbox.delete(fact.seq)
        this.acknowledged.set(fact.id, fact)
      }
    else if (answer.code === 'gap') for (const { seq } of this.written) this.outbox.add(seq)
  }

  /** Keeps facts it fetched; what is here is never overwritten. */
  keep(facts: readonly Fact[]): void {
    for (const fact of facts) {
      const key = `${fact.device}:${fact.seq}`
      if (!this.seen.has(key)) this.seen.set(key, fact)
    }
  }

  /** What it knows of a job. */
  factsOf(job: string): readonly Fact[] {
    return [...this.seen.values()].filter((fact) => fact.job === job)
  }
}
