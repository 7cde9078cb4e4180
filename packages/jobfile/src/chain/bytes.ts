import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'
import canonicalize from 'canonicalize'

/** RFC 8785 canonical JSON of a value. Throws on values JSON cannot hold (functions, NaN, lone undefined). */
export function canonicalJson(value: unknown): string {
  const text = canonicalize(value)
  if (text === undefined)
    throw new TypeError('This value has no JSON form, so it cannot be signed or hashed.')
  return text
}

/** SHA-256 of bytes or of a text's UTF-8, lower-case hex. */
export function sha256OfBytes(data: Uint8Array | string): string {
  return bytesToHex(sha256(typeof data === 'string' ? utf8ToBytes(data) : data))
}

const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_'

/** base64url without padding (RFC 4648 section 5). */
export function toBase64Url(bytes: Uint8Array): string {
  let text = ''
  for (let i = 0; i < bytes.length; i += 3) {
    const left = bytes.length - i
    const word = ((bytes[i] ?? 0) << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0)
    text += alphabet.charAt(word >> 18) + alphabet.charAt((word >> 12) & 63)
    if (left > 1) text += alphabet.charAt((word >> 6) & 63)
    if (left > 2) text += alphabet.charAt(word & 63)
  }
  return text
}

/** Reads base64url without padding; null when the text is not that. */
export function fromBase64Url(text: string): Uint8Array | null {
  if (!/^[A-Za-z0-9_-]*$/.test(text) || text.length % 4 === 1) return null
  const out = new Uint8Array(Math.floor((text.length * 3) / 4))
  let bits = 0
  let held = 0
  let at = 0
  for (const character of text) {
    bits = ((bits << 6) | alphabet.indexOf(character)) & 0xffffff
    held += 6
    if (held >= 8) {
      held -= 8
      out[at++] = (bits >> held) & 255
    }
  }
  // Two texts must never stand for the same bytes: unused last bits have to be zero.
  if (held > 0 && (bits & ((1 << held) - 1)) !== 0) return null
  return out
}
