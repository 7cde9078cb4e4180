import { describe, expect, it } from 'vitest'
import {
  addRecipient,
  type ByteSource,
  compareReads,
  identityText,
  newIdentity,
  openSecret,
  readIdentities,
  readRecipient,
  readRecipients,
  recipientsText,
  type SealTo,
  sealSecret,
  secretHead,
  streamOf,
  VaultError,
  wrapIdentity,
} from './index.ts'
import { bytesOf } from './streams.ts'

/** Bytes that look like nothing: a multiplicative walk, so that every value and no run occurs. */
function memory(length: number, seed = 7): Uint8Array {
  const bytes = new Uint8Array(length)
  let state = seed
  for (let at = 0; at < length; at++) {
    state = (Math.imul(state, 1_103_515_245) + 12_345) >>> 0
    bytes[at] = state >>> 16
  }
  return bytes
}

const key = memory(32, 99)
const source =
  (bytes: Uint8Array, piece = 1000): ByteSource =>
  () =>
    streamOf(
      ...Array.from({ length: Math.ceil(bytes.length / piece) }, (_, index) =>
        bytes.slice(index * piece, (index + 1) * piece),
      ),
    )

async function sealed(secret: Uint8Array, to: SealTo) {
  const head = secretHead({ class: 'immobiliser-data', what: 'body unit', bytes: secret.length }, key)
  const sealing = await sealSecret(source(secret), head, to)
  const file = await bytesOf(sealing.stream)
  return { file, sealing }
}

async function hmacOf(secret: Uint8Array): Promise<string> {
  const imported = await crypto.subtle.importKey(
    'raw',
    new Uint8Array(key),
    { name: 'HMAC', hash: 'SHA-256' },
    false,
    ['sign'],
  )
  return Buffer.from(await crypto.subtle.sign('HMAC', imported, new Uint8Array(secret))).toString('hex')
}

const codeOf = async (work: Promise<unknown>): Promise<string> =>
  work.then(
    () => 'nothing',
    (error: unknown) => (error instanceof VaultError ? error.code : `not ours: ${String(error)}`),
  )

describe('sealing and opening', () => {
  it.each([0, 1, 63, 65_535, 65_536, 65_537, 300_000])(
    'gives back a secret of %i bytes, with the digest WebCrypto makes of it',
    async (length) => {
      const { identity, recipient } = await newIdentity()
      const secret = memory(length)
      const { file, sealing } = await sealed(secret, { recipients: [recipient] })
      expect(file.length).toBe(sealing.bytes)
      const opened = await openSecret(streamOf(file), { identities: [identity] })
      expect(opened.head).toMatchObject({ class: 'immobiliser-data', what: 'body unit', bytes: length })
      expect(Buffer.from(await bytesOf(opened.stream)).equals(secret)).toBe(true)
      expect(opened.digest()).toBe(await hmacOf(secret))
      expect(sealing.digest()).toBe(opened.digest())
    },
  )

  it('gives every recipient the secret and a stranger nothing', async () => {
    const [office, van, stranger] = await Promise.all([newIdentity(), newIdentity(), newIdentity()])
    const { file } = await sealed(memory(500), { recipients: [office.recipient, van.recipient] })
    for (const { identity } of [office, van]) {
      const opened = await openSecret(streamOf(file), { identities: [identity] })
      expect(await bytesOf(opened.stream)).toEqual(memory(500))
    }
    expect(await codeOf(openSecret(streamOf(file), { identities: [stranger.identity] }))).toBe('no-key-fits')
    expect(await codeOf(openSecret(streamOf(file), {}))).toBe('no-key-fits')
  })

  it('seals by a passphrase, and a wrong one opens nothing', async () => {
    const { file } = await sealed(memory(100), { passphrase: 'marsh-lantern-oval-tin\n' })
    const opened = await openSecret(streamOf(file), { passphrases: ['marsh-lantern-oval-tin'] })
    expect(await bytesOf(opened.stream)).toEqual(memory(100))
    expect(await codeOf(openSecret(streamOf(file), { passphrases: ['marsh-lantern-oval-tan'] }))).toBe(
      'no-key-fits',
    )
    expect(await codeOf(sealed(memory(1), { passphrase: 'short' }))).toBe('passphrase-too-short')
  })

  it('finds every changed byte and every cut, and gives out no byte of the changed piece', async () => {
    const { identity, recipient } = await newIdentity()
    const { file } = await sealed(memory(40), { recipients: [recipient] })
    const keys = { identities: [identity] }
    const outcomes = new Set<string>()
    for (let at = 0; at < file.length; at++) {
      const forged = file.slice()
      forged[at] = (forged[at] ?? 0) ^ 1
      outcomes.add(await codeOf(openSecret(streamOf(forged), keys).then((opened) => bytesOf(opened.stream))))
    }
    for (let length = 0; length < file.length; length += 7)
      outcomes.add(
        await codeOf(
          openSecret(streamOf(file.slice(0, length)), keys).then((opened) => bytesOf(opened.stream)),
        ),
      )
    expect([...outcomes].sort()).toEqual(['damaged', 'no-key-fits', 'not-sealed'])
  })

  it('breaks off when the source gives other bytes than were compared', async () => {
    const { recipient } = await newIdentity()
    const head = secretHead({ class: 'other', what: 'x', bytes: 100 }, key)
    const to = { recipients: [recipient] }
    const longer = await sealSecret(source(memory(101)), head, to)
    expect(await codeOf(bytesOf(longer.stream))).toBe('changed-while-read')
    const other = await sealSecret(source(memory(100, 3)), head, to, await hmacOf(memory(100)))
    expect(await codeOf(bytesOf(other.stream))).toBe('changed-while-read')
    expect(() => other.digest()).toThrow('not read to its end')
  })

  it('takes a secret that only looks like our first line as what it is', async () => {
    const { identity, recipient } = await newIdentity()
    for (const text of ['{"bytes":', '{"bytes":1}\nrest', '\n', '', 'plain\ntext']) {
      const { age } = await import('./age.ts')
      const encrypter = new (await age()).Encrypter()
      encrypter.addRecipient(recipient)
      const opened = await openSecret(streamOf(await encrypter.encrypt(text)), { identities: [identity] })
      expect([opened.head, new TextDecoder().decode(await bytesOf(opened.stream))]).toEqual([null, text])
      expect(opened.digest()).toBeNull()
    }
  })
})

describe('comparing two reads', () => {
  const compare = (first: Uint8Array, second: Uint8Array) =>
    compareReads(source(first, 999), source(second, 1024), key)

  it('proves two equal reads by their keyed digests, whatever pieces they come in', async () => {
    const comparison = await compare(memory(5000), memory(5000))
    expect(comparison).toEqual({
      proven: true,
      first: { bytes: 5000, digest: await hmacOf(memory(5000)) },
      second: { bytes: 5000, digest: await hmacOf(memory(5000)) },
      findings: [],
    })
  })

  it('names the first byte at which they differ, and a difference in size', async () => {
    const other = memory(5000)
    other[3210] = (other[3210] ?? 0) ^ 0x80
    other[4000] = (other[4000] ?? 0) ^ 0x80
    const differing = await compare(memory(5000), other)
    expect(differing.proven).toBe(false)
    expect(differing.findings).toMatchObject([{ code: 'reads-differ', where: { byteOffset: 3210 } }])
    const shorter = await compare(memory(5000), memory(4999))
    expect(shorter.findings).toMatchObject([
      { code: 'reads-differ-in-size', what: 'The first read has 5000 bytes, the second 4999.' },
    ])
    expect(shorter.second).toEqual({ bytes: 4999, digest: await hmacOf(memory(4999)) })
  })

  it.each([
    ['nothing', new Uint8Array(0), 'read-empty', false],
    ['all 00', new Uint8Array(4096), 'read-one-value', false],
    ['all FF', new Uint8Array(4096).fill(0xff), 'read-one-value', false],
    ['all 5A', new Uint8Array(4096).fill(0x5a), 'read-one-value', false],
    ['sixteen bytes', memory(16), 'read-too-small', true],
    [
      'one page in a blank memory',
      Uint8Array.from([...memory(100), ...new Uint8Array(9900)]),
      'read-mostly-blank',
      true,
    ],
  ] as const)('tells of a read that is %s', async (_, bytes, code, proven) => {
    const comparison = await compare(bytes, bytes)
    expect(comparison.proven).toBe(proven)
    expect(comparison.findings.map((finding) => finding.code)).toEqual([code, code])
  })
})

describe('recipients and identities', () => {
  // From memory, a pair that age's own test files use; that the two belong together is checked below.
  const recipient = 'age1zvkyg2lqzraa2lnjvqej32nkuu0ues2s82hzrye869xeexvn73equnujwj'
  const identity = 'AGE-SECRET-KEY-1GFPYYSJZGFPYYSJZGFPYYSJZGFPYYSJZGFPYYSJZGFPYYSJZGFPQ4EGAEX'

  it('takes a right public key and refuses one with a wrong character or a private key', async () => {
    expect(readRecipient(` ${recipient}\n`)).toBe(recipient)
    for (let at = 4; at < recipient.length; at++) {
      const letter = recipient[at] === 'q' ? 'p' : 'q'
      const forged = `${recipient.slice(0, at)}${letter}${recipient.slice(at + 1)}`
      expect(() => readRecipient(forged)).toThrow(VaultError)
    }
    expect(() => readRecipient(identity)).toThrow('That is a private key')
    expect(() => readRecipient(identity)).not.toThrow(identity)
    const { identityToRecipient } = await import('age-encryption')
    expect(await identityToRecipient(identity)).toBe(recipient)
  })

  it('keeps a list of them, each once', () => {
    const list = addRecipient(addRecipient([], { recipient, name: 'office' }), { recipient, name: 'safe' })
    expect(readRecipients(recipientsText(list))).toEqual([{ recipient, name: 'safe' }])
    expect(readRecipients(null)).toEqual([])
    expect(() => readRecipients('{"not":"a list"}')).toThrow('damaged')
    expect(() => readRecipients(recipientsText([{ recipient: 'age1x', name: 'x' }]))).toThrow(VaultError)
  })

  it('wraps a private key by a passphrase and reads it again', async () => {
    const text = identityText({ identity, recipient }, '2026-11-25T09:12:00Z')
    const bytes = new TextEncoder().encode(text)
    expect(await readIdentities(bytes)).toEqual([identity])
    const wrapped = new TextEncoder().encode(await wrapIdentity(text, 'marsh-lantern-oval-tin'))
    expect(new TextDecoder().decode(wrapped)).not.toContain(identity)
    expect(await codeOf(readIdentities(wrapped))).toBe('passphrase-needed')
    expect(await readIdentities(wrapped, 'marsh-lantern-oval-tin')).toEqual([identity])
    expect(await codeOf(readIdentities(wrapped, 'something-else'))).toBe('no-key-fits')
    expect(await codeOf(readIdentities(new TextEncoder().encode('hello')))).toBe('not-an-identity')
  })
})
