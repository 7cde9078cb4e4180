import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, hexToBytes } from '@noble/hashes/utils.js'

function leaf(hash: string): Uint8Array {
  const bytes = hexToBytes(hash)
  return hashParts(0, bytes)
}

function hashParts(prefix: 0 | 1, ...parts: readonly Uint8Array[]): Uint8Array {
  const hasher = sha256.create().update(Uint8Array.of(prefix))
  for (const part of parts) hasher.update(part)
  return hasher.digest()
}

/** Tree head over raw leaf entries (RFC 6962 section 2.1): SHA-256, leaves prefixed 00, inner nodes 01. */
export function treeHead(entries: readonly Uint8Array[]): string {
  return bytesToHex(head(entries.map((entry) => hashParts(0, entry))))
}

/** Tree head over fact hashes given as hex, in the order of the fold. */
export function treeHeadOfHashes(hashes: readonly string[]): string {
  return bytesToHex(head(hashes.map(leaf)))
}

function head(leaves: readonly Uint8Array[]): Uint8Array {
  const [first] = leaves
  if (first === undefined) return sha256(new Uint8Array(0))
  if (leaves.length === 1) return first
  let split = 1
  while (split * 2 < leaves.length) split *= 2
  return hashParts(1, head(leaves.slice(0, split)), head(leaves.slice(split)))
}
