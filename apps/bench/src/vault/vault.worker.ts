/** @module Compares, seals and opens secrets away from the page, in memory only. */
import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex } from '@noble/hashes/utils.js'
import {
  compareReads,
  openSecret,
  readIdentities,
  type SecretClass,
  SecretDigest,
  sealSecret,
  secretHead,
} from '@shearline/jobfile'
import type { Answer, Ask, SealedBlob } from './worker-messages.ts'

addEventListener('message', (event: MessageEvent<Ask>) => {
  const ask = event.data
  const work = ask.what === 'prove' ? prove(ask) : ask.what === 'seal' ? seal(ask) : open(ask)
  work.then(
    (answer) => postMessage(answer),
    (error: unknown) =>
      postMessage({ what: 'failed', why: error instanceof Error ? error.message : String(error) }),
  )
})

async function prove(ask: Extract<Ask, { what: 'prove' }>): Promise<Answer> {
  const { first, second, words, recipients } = ask
  const key = crypto.getRandomValues(new Uint8Array(32))
  const comparison = await compareReads(
    () => first.stream(),
    () => second.stream(),
    key,
  )
  if (!comparison.proven) return { what: 'not-proven', comparison }
  const { bytes, digest } = comparison.first
  const secret = { class: 'immobiliser-data', what: words, bytes } as const
  const one = await sealed(first, secret, key, recipients, digest)
  return { what: 'proven', proven: { comparison, ...one } }
}

async function seal({ file, recipients }: Extract<Ask, { what: 'seal' }>): Promise<Answer> {
  const key = crypto.getRandomValues(new Uint8Array(32))
  const digest = new SecretDigest(key)
  const reader = file.stream().getReader()
  for (let { value, done } = await reader.read(); !done; { value, done } = await reader.read())
    if (value !== undefined) digest.update(value)
  const secret = { class: 'recording', what: file.name, bytes: file.size } as const
  return { what: 'sealed', one: await sealed(file, secret, key, recipients, digest.end()) }
}

/** Seals a file to the recipients and hashes what came out. */
async function sealed(
  file: File,
  secret: { readonly class: SecretClass; readonly what: string; readonly bytes: number },
  key: Uint8Array,
  recipients: readonly string[],
  digest: string,
): Promise<SealedBlob> {
  const head = secretHead(secret, key)
  const sealing = await sealSecret(() => file.stream(), head, { recipients }, digest)
  const hasher = sha256.create()
  const pieces: Uint8Array<ArrayBuffer>[] = []
  const reader = sealing.stream.getReader()
  for (let { value, done } = await reader.read(); !done; { value, done } = await reader.read()) {
    if (value === undefined) continue
    hasher.update(value)
    pieces.push(new Uint8Array(value))
  }
  const all = new Blob(pieces, { type: 'application/octet-stream' })
  const { class: kind, what, bytes: secretBytes } = secret
  const kept = { blob: bytesToHex(hasher.digest()), bytes: all.size, class: kind, what, secretBytes, digest }
  return { sealed: all, kept: { ...kept, to: { recipients } } }
}

async function open(ask: Extract<Ask, { what: 'open' }>): Promise<Answer> {
  const passphrases = ask.passphrase === '' ? [] : [ask.passphrase]
  const identities =
    ask.identity.trim() === ''
      ? []
      : await readIdentities(new TextEncoder().encode(ask.identity), passphrases[0])
  const opened = await openSecret(ask.sealed.stream(), { identities, passphrases })
  const secret = await new Response(opened.stream).blob()
  const asRecorded = ask.digest === null ? null : opened.digest() === ask.digest
  return { what: 'opened', opened: { secret, asRecorded } }
}
