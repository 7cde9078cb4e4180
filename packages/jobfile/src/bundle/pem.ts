/** @module Public keys of devices as openssl reads them. */

/** What stands before the 32 bytes of an Ed25519 key in SubjectPublicKeyInfo, base64 (RFC 8410, section 4). */
export const pemStart = 'MCowBQYDK2VwAyEA'

/** A public key (base64url) in PEM (RFC 7468). The prefix is 12 bytes, so the key's base64 follows it unshifted. */
export function pemOf(publicKey: string): string {
  const standard = publicKey.replaceAll('-', '+').replaceAll('_', '/')
  return `-----BEGIN PUBLIC KEY-----\n${pemStart}${standard}=\n-----END PUBLIC KEY-----\n`
}
