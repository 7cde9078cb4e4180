import {
  type ChainHead,
  type Device,
  describeDevice,
  emptyHead,
  type Sign,
  Verifier,
  writeFact,
} from '../chain/index.ts'
import type { BodyInput, Fact, Kind } from '../facts/index.ts'

/** A device with a real Ed25519 key that writes facts one second apart; for tests. */
export class TestDevice {
  readonly device: Device
  readonly sign: Sign
  readonly facts: Fact[] = []
  #head: ChainHead = emptyHead
  #clock = Date.UTC(2026, 0, 12, 8, 0, 0)

  private constructor(device: Device, sign: Sign) {
    this.device = device
    this.sign = sign
  }

  static async create(name = 'van tablet'): Promise<TestDevice> {
    const pair = await crypto.subtle.generateKey({ name: 'Ed25519' }, false, ['sign', 'verify'])
    const raw = new Uint8Array(await crypto.subtle.exportKey('raw', pair.publicKey))
    const sign: Sign = async (data) =>
      new Uint8Array(await crypto.subtle.sign('Ed25519', pair.privateKey, data))
    return new TestDevice(describeDevice(raw, name), sign)
  }

  /** Writes one fact of a job and keeps it. */
  async write<K extends Kind>(
    kind: K,
    body: BodyInput<K>,
    options: { job?: string; at?: string } = {},
  ): Promise<Fact> {
    this.#clock += 1000
    const at = options.at ?? new Date(this.#clock).toISOString()
    const draft = {
      id: crypto.randomUUID(),
      job: options.job ?? 'test-job',
      at,
      by: 'technician',
      kind,
      body: body as Fact['body'],
    }
    const written = await writeFact(draft, this.device.device, this.#head, this.sign)
    this.#head = written.head
    this.facts.push(written.fact)
    return written.fact
  }
}

/** A verifier over the runtime's own WebCrypto. */
export function testVerifier(): Verifier {
  return new Verifier(crypto.subtle)
}
