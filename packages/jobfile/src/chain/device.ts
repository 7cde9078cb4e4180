import { fromBase64Url, sha256OfBytes, toBase64Url } from './bytes.ts'

/** The two WebCrypto operations the chain needs; `crypto.subtle` of Node or a browser fits. */
export interface SignaturePort {
  importKey(
    format: 'raw',
    key: Uint8Array<ArrayBuffer>,
    algorithm: { name: 'Ed25519' },
    extractable: boolean,
    usages: ['verify'],
  ): Promise<unknown>
  verify(
    algorithm: 'Ed25519',
    key: never,
    signature: Uint8Array<ArrayBuffer>,
    data: Uint8Array<ArrayBuffer>,
  ): Promise<boolean>
}

/** A device as others know it. The identifier is derived from the key, so a key cannot be swapped under it. */
export interface Device {
  readonly device: string
  readonly name: string
  /** Ed25519 public key, 32 bytes in base64url. */
  readonly publicKey: string
}

/** Signs bytes with the device's Ed25519 private key, which may never leave its key store. */
export type Sign = (data: Uint8Array<ArrayBuffer>) => Promise<Uint8Array>

/** Identifier of a device: `dev-` and the first 16 hex digits of the SHA-256 of its 32-byte public key. */
export function deviceIdOf(publicKey: Uint8Array): string {
  return `dev-${sha256OfBytes(publicKey).slice(0, 16)}`
}

/** Describes a device from its raw public key and a name people will read. */
export function describeDevice(publicKey: Uint8Array, name: string): Device {
  return { device: deviceIdOf(publicKey), name, publicKey: toBase64Url(publicKey) }
}

/** Imports devices' keys once and verifies many signatures with them. */
export class Verifier {
  readonly #port: SignaturePort
  readonly #keys = new Map<string, Promise<unknown>>()

  constructor(port: SignaturePort) {
    this.#port = port
  }

  /** True when `signature` (base64url) is the device's over `data`. False for malformed keys or signatures too. */
  async verify(publicKey: string, signature: string, data: Uint8Array<ArrayBuffer>): Promise<boolean> {
    const key = fromBase64Url(publicKey)
    const sig = fromBase64Url(signature)
    if (key?.length !== 32 || sig?.length !== 64) return false
    let imported = this.#keys.get(publicKey)
    if (imported === undefined) {
      imported = this.#port.importKey('raw', new Uint8Array(key), { name: 'Ed25519' }, false, ['verify'])
      this.#keys.set(publicKey, imported)
    }
    try {
      return await this.#port.verify('Ed25519', (await imported) as never, new Uint8Array(sig), data)
    } catch {
      return false
    }
  }
}
