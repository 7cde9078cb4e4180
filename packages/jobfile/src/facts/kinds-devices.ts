import { z } from 'zod'
import { deviceId, instant, sha256Hex, signature } from './envelope.ts'

const words = z.string().trim().min(1).max(2000)
const publicKey = z.string().regex(/^[A-Za-z0-9_-]{43}$/, '43 base64url characters')

/** Facts about devices. They stand in the firm's register (`registerJob`), not in a customer's job. */
export const deviceKinds = {
  /** The writer's device vouches for another; the firm's first device vouches for itself. */
  'device-enrolled': z.object({
    device: deviceId,
    name: words,
    /** Ed25519 public key, 32 bytes in base64url. */
    publicKey,
    approvedBy: words,
  }),
  /** Written, and so signed, by the old device; `proof` is the new key's signature over `rotationStatement`. */
  'device-key-rotated': z.object({
    newDevice: deviceId,
    name: words,
    newPublicKey: publicKey,
    proof: signature,
    because: words,
  }),
  'device-revoked': z.object({
    device: deviceId,
    because: z.enum(['retired', 'replaced', 'lost', 'stolen', 'key-exposed']),
    /** Facts that say they were written at or after this instant are not trusted. */
    from: instant,
    /** The last fact of the device that the firm held when it revoked it: what follows is not trusted. */
    last: z.object({ seq: z.number().int().min(1), hash: sha256Hex }).nullable(),
    reason: words,
  }),
} as const
