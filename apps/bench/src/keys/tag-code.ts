/** @module What stands on a key's tag: a code a camera reads, and a short one a person can read out or type. */
import { sha256 } from '@noble/hashes/sha2.js'

/** Which key of which job a tag names. No customer, car or address: a lost tag tells nobody where the key fits. */
export interface TaggedKey {
  readonly job: string
  readonly key: string
}

/** Digits and capitals that are not taken for one another. */
const alphabet = '23456789ABCDEFGHJKMNPQRSTVWXYZ'
const codeLength = 4
const start = 'SHEARLINE:TAG:'

/**
 * The short code of a key: four signs from SHA-256 of job and key, so that every device prints the same. It tells the
 * keys of a bench apart; it keeps nothing secret.
 */
export function shortCode({ job, key }: TaggedKey): string {
  const digest = sha256(new TextEncoder().encode(`${job}/${key}`))
  return Array.from(
    { length: codeLength },
    (_, place) => alphabet[(digest[place] ?? 0) % alphabet.length],
  ).join('')
}

/** What the tag's QR code says. Capitals, digits and `/:-` only: the code stays coarse enough for a small tag. */
export function tagText(tagged: TaggedKey): string {
  return `${start}${tagged.job.toUpperCase()}/${tagged.key}/${shortCode(tagged)}`
}

/** Reads a tag's code; null when it is none of ours or its parts do not belong together. */
export function readTag(text: string): TaggedKey | null {
  const match = /^SHEARLINE:TAG:([A-Z0-9][A-Z0-9-]{2,63})\/([A-Z][A-Z0-9]?)\/([2-9A-Z]{4})$/.exec(text.trim())
  if (match === null) return null
  const tagged = { job: (match[1] ?? '').toLowerCase(), key: match[2] ?? '' }
  return shortCode(tagged) === match[3] ? tagged : null
}

/** A typed code as it is compared: capitals, and the signs that are never printed read as those they look like. */
export function tidyCode(typed: string): string {
  return typed.toUpperCase().replace(/[^A-Z0-9]/g, '')
}
