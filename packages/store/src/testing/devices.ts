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

/** A device outside the store, with a real key and a chain of its own. */
export class OtherDevice {
  readonly device: Device
  readonly written: Fact[] = []
  head: ChainHead = emptyHead
  readonly #key: webcrypto.CryptoKey

  private constructor(device: Device, key: webcrypto.CryptoKey) {
    this.device = device
    this.#key = key
  }

  static async make(name = 'Van tablet'): Promise<OtherDevice> {
    const pair = (await webcrypto.subtle.generateKey({ name: 'Ed25519' }, true, [
      'sign',
      'verify',
    ])) as unknown as webcrypto.CryptoKeyPair
    const raw = new Uint8Array(await webcrypto.subtle.exportKey('raw', pair.publicKey))
    return new OtherDevice(describeDevice(raw, name), pair.privateKey)
  }

  /** Writes the next fact of this device's chain. */
  async write(draft: FactDraft): Promise<Fact> {
    const { fact, head } = await this.sign(draft, this.head)
    this.head = head
    this.written.push(fact)
    return fact
  }

  /** Signs a draft after any head, without going on from there: for chains that must not be. */
  async sign(draft: FactDraft, head: ChainHead): Promise<{ fact: Fact; head: ChainHead }> {
    return await writeFact(
      draft,
      this.device.device,
      head,
      async (data) => new Uint8Array(await webcrypto.subtle.sign('Ed25519', this.#key, data)),
    )
  }

  /** Writes `count` notes for a job, a minute apart. */
  async writeNotes(job: string, count: number): Promise<Fact[]> {
    const facts: Fact[] = []
    for (let i = 0; i < count; i++)
      facts.push(await this.write(note(job, `note ${this.head.seq + 1}`, this.head.seq)))
    return facts
  }
}

/** A note on a job, `minute` minutes after nine on an invented morning. */
export function note(job: string, text: string, minute = 0): FactDraft {
  const at = new Date(Date.UTC(2026, 10, 25, 9, minute)).toISOString()
  return { id: randomUUID(), job, at, by: 'Robin', kind: 'note-written', body: { text } }
}
