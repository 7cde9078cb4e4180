import { utf8ToBytes } from '@noble/hashes/utils.js'
import { envelope, type Fact, type FactDraft } from '../facts/envelope.ts'
import { isKnownKind } from '../facts/kinds.ts'
import { readBody, versionOf } from '../facts/versions.ts'
import { canonicalJson, sha256OfBytes, toBase64Url } from './bytes.ts'
import type { Sign } from './device.ts'

/** Where a device's chain stands: the sequence and hash of its last fact, or 0 and null before its first. */
export interface ChainHead {
  readonly seq: number
  readonly hash: string | null
}

export const emptyHead: ChainHead = { seq: 0, hash: null }

/**
 * SHA-256 of a body's canonical JSON. A body that was erased keeps its place as `{ "erased": "<hash>" }`
 * and still answers with the hash it had, so that erasing never breaks the chain.
 */
export function bodyHash(body: Fact['body']): string {
  const erased = body.erased
  if (typeof erased === 'string' && Object.keys(body).length === 1) return erased
  return sha256OfBytes(canonicalJson(body))
}

/**
 * The text a device signs: the fact in RFC 8785 canonical JSON, without `sig`, its body replaced by the
 * body's SHA-256. See docs/decisions/0003-what-is-signed.md.
 */
export function signedText(fact: Omit<Fact, 'sig'>): string {
  const { v, id, job, device, seq, at, by, kind, prev } = fact
  return canonicalJson({ v, id, job, device, seq, at, by, kind, body: bodyHash(fact.body), prev })
}

/** Hash of a fact: SHA-256 of its signed text. The next fact of the device carries it as `prev`. */
export function factHash(fact: Omit<Fact, 'sig'>): string {
  return sha256OfBytes(signedText(fact))
}

/** A draft that its kind's schema or the envelope refuses. */
export class FactRefused extends Error {
  readonly path: string
  constructor(kind: string, path: string, what: string) {
    super(`A fact of kind "${kind}" was refused at ${path}: ${what}. Correct the value and record it again.`)
    this.name = 'FactRefused'
    this.path = path
  }
}

/**
 * Gives a draft its place after `head` in the device's chain and signs it.
 * Throws FactRefused when the body does not fit its kind; nothing is written then.
 */
export async function writeFact(
  draft: FactDraft,
  device: string,
  head: ChainHead,
  sign: Sign,
): Promise<{ fact: Fact; head: ChainHead }> {
  let body = draft.body
  const v = draft.v ?? versionOf(draft.kind)
  if (isKnownKind(draft.kind)) {
    // Older versions are read for ever but written no more.
    if (v !== versionOf(draft.kind))
      throw new FactRefused(draft.kind, 'v', `this program writes version ${versionOf(draft.kind)}, not ${v}`)
    const read = readBody(draft.kind, draft.body)
    if (!read.ok) throw new FactRefused(draft.kind, read.path, read.what)
    body = read.body
  }
  const unsigned: Omit<Fact, 'sig'> = {
    v,
    id: draft.id,
    job: draft.job,
    device,
    seq: head.seq + 1,
    at: draft.at,
    by: draft.by,
    kind: draft.kind,
    body,
    prev: head.hash,
  }
  const text = signedText(unsigned)
  const sig = toBase64Url(await sign(new Uint8Array(utf8ToBytes(text))))
  const checked = envelope.safeParse({ ...unsigned, sig })
  if (!checked.success) {
    const issue = checked.error.issues[0]
    throw new FactRefused(draft.kind, issue?.path.join('.') ?? '(fact)', issue?.message ?? 'is not a fact')
  }
  return { fact: checked.data, head: { seq: unsigned.seq, hash: sha256OfBytes(text) } }
}
