import { createPublicKey, type KeyObject, verify } from 'node:crypto'
import { type SignaturePort, toBase64Url } from '@shearline/jobfile'

/**
 * Verifies in this thread. WebCrypto hands every signature to another thread and back, which for one fact takes
 * longer than verifying it; many at once are better off there.
 */
export const signaturesHere: SignaturePort = {
  importKey: async (_format, key) =>
    createPublicKey({ format: 'jwk', key: { kty: 'OKP', crv: 'Ed25519', x: toBase64Url(key) } }),
  verify: async (_algorithm, key, signature, data) => verify(null, data, key as KeyObject, signature),
}
