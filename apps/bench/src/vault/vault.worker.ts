/** @module Compares, seals and opens secrets away from the page, in memory only. */
import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex } from '@noble/hashes/utils.js'
import { compareReads, openSecret, readIdentities, sealSecret, secretHead } from '@shearline/jobfile'
import type { Answer, Ask } from './worker-messages.ts'

addEventListener('message', (event: MessageEvent<Ask>) => {
  const ask = event.data
  const work = ask.what === 'prove' ? prove(ask) : open(ask)
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
  const { bytes: secretBytes, digest } = comparison.first
  const head = secretHead({ class: 'immobiliser-data', what: words, bytes: secretBytes }, key)
  const sealing = await sealSecret(() => first.stream(), head, { recipients }, digest)
  const hasher = sha256.create()
  const pieces: Uint8Array<ArrayBuffer>[] = []
  const reader = sealing.stream.getReader()
  for (let { value, done } = await reader.read(); !done; { value, done } = await reader.read()) {
    if (value === undefined) continue
    hasher.update(value)
    pieces.push(new Uint8Array(value))
  }
  const sealed = new Blob(pieces, { type: 'application/octet-stream' })
  const blob = bytesToHex(hasher.digest())
  const kept = {
    blob,
    bytes: sealed.size,
    class: 'immobiliser-data',
    what: words,
    secretBytes,
    digest,
  } as const
  return { what: 'proven', proven: { comparison, sealed, kept: { ...kept, to: { recipients } } } }
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
