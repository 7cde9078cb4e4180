/** @module Opens what was sealed, by us or with age itself. */
import { hexToBytes } from '@noble/hashes/utils.js'
import { age } from './age.ts'
import { SecretDigest } from './digest.ts'
import { VaultError } from './errors.ts'
import { headMost, headStart, readHead, type SecretHead } from './secret.ts'
import { bytesOf, joinBytes, piecesOf, streamFrom, streamOf } from './streams.ts'

/** What may open it: private keys and passphrases, tried one after the other. */
export interface OpenWith {
  readonly identities?: readonly string[]
  readonly passphrases?: readonly string[]
}

/** A sealed file that a key fitted. Nothing of the secret was given out yet. */
export interface Opened {
  /** What the file says of itself; null when it was sealed by other means, so that all of it is the secret. */
  readonly head: SecretHead | null
  /** The secret. It breaks off with VaultError `damaged` where the file was changed or cut off. */
  readonly stream: ReadableStream<Uint8Array>
  /** The digest of the secret, to be held against its fact; there when the stream has ended, null without a head. */
  digest(): string | null
}

/**
 * Opens a sealed file, binary or in age's text form. Every piece is authenticated before it is given out.
 * Throws VaultError `no-key-fits`, `not-sealed`, `damaged`.
 */
export async function openSecret(sealed: ReadableStream<Uint8Array>, keys: OpenWith): Promise<Opened> {
  const { Decrypter } = await age()
  const decrypter = new Decrypter()
  for (const identity of keys.identities ?? []) decrypter.addIdentity(identity)
  for (const passphrase of keys.passphrases ?? []) decrypter.addPassphrase(passphrase)
  const binary = await withoutArmor(sealed)
  let plain: ReadableStream<Uint8Array>
  try {
    plain = await decrypter.decrypt(binary)
  } catch (error) {
    throw explained(error)
  }
  return withoutHead(plain)
}

/** Splits the first line off, when it is one of ours. */
async function withoutHead(plain: ReadableStream<Uint8Array>): Promise<Opened> {
  const pieces = piecesOf(plain)
  let start: Uint8Array = new Uint8Array(0)
  let lineEnd = -1
  let looksLikeOurs = true
  try {
    while (lineEnd < 0 && looksLikeOurs && start.length < headMost) {
      const { value, done } = await pieces.next()
      if (done === true) break
      start = joinBytes([start, value])
      lineEnd = start.indexOf(0x0a)
      looksLikeOurs = beginsLikeHead(start)
    }
  } catch (error) {
    throw explained(error)
  }
  const head = lineEnd < 0 || !looksLikeOurs ? null : readHead(start.subarray(0, lineEnd))
  const taken = head === null ? null : new SecretDigest(hexToBytes(head.key))
  const rest = head === null ? start : start.subarray(lineEnd + 1)
  let digest: string | null | undefined
  const secret = async function* (): AsyncGenerator<Uint8Array> {
    try {
      if (rest.length > 0) {
        taken?.update(rest)
        yield rest
      }
      for await (const piece of pieces) {
        taken?.update(piece)
        yield piece
      }
    } catch (error) {
      throw explained(error)
    }
    digest = taken?.end() ?? null
  }
  return {
    head,
    stream: streamFrom(secret()),
    digest: () => {
      if (digest === undefined) throw new Error('the secret was not read to its end')
      return digest
    },
  }
}

function beginsLikeHead(start: Uint8Array): boolean {
  const length = Math.min(start.length, headStart.length)
  for (let at = 0; at < length; at++) if (start[at] !== headStart.charCodeAt(at)) return false
  return true
}

const armorStart = '-----BEGIN AGE'

/** Takes age's text form off; a file in that form is read whole. */
async function withoutArmor(sealed: ReadableStream<Uint8Array>): Promise<ReadableStream<Uint8Array>> {
  const pieces = piecesOf(sealed)
  let start: Uint8Array = new Uint8Array(0)
  // Blank lines may stand before the text form (C2SP age v1, ASCII armor).
  const text = () => new TextDecoder('latin1').decode(start.subarray(0, 1024)).trimStart()
  while (text().length < armorStart.length && start.length < 1024) {
    const { value, done } = await pieces.next()
    if (done === true) break
    start = joinBytes([start, value])
  }
  const whole = async function* (): AsyncGenerator<Uint8Array> {
    yield start
    yield* pieces
  }
  if (!text().startsWith(armorStart)) return streamFrom(whole())
  const bytes = await bytesOf(streamFrom(whole()))
  const { armor } = await age()
  try {
    return streamOf(armor.decode(new TextDecoder('utf-8', { fatal: true }).decode(bytes)))
  } catch {
    throw damaged()
  }
}

function damaged(): VaultError {
  return new VaultError(
    'damaged',
    'The sealed file was changed or cut off.',
    'Fetch it again from where it was sealed.',
  )
}

/** The library's errors as ours. Its messages speak of the file only, never of its content. */
function explained(error: unknown): VaultError {
  if (error instanceof VaultError) return error
  const said = error instanceof Error ? error.message : ''
  if (said.startsWith('no identity matched'))
    return new VaultError(
      'no-key-fits',
      'None of the keys given opens it.',
      'Look up to whom it was sealed (shearline vault list) and give that private key or passphrase.',
    )
  if (said.startsWith('invalid version'))
    return new VaultError('not-sealed', 'This is no file sealed with age.', 'Name the sealed file.')
  return damaged()
}
