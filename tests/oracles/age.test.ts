/**
 * Our vault against Debian's age 1.1.1 (`age`, `age-keygen`) and against the test vectors of the age format
 * (C2SP CCTV, npm `cctv-age` 0.2.0), both from the authors of the format.
 */
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { inflateSync } from 'node:zlib'
import {
  identityText,
  newIdentity,
  openSecret,
  readIdentities,
  type SealTo,
  sealSecret,
  secretHead,
  streamOf,
  VaultError,
  wrapIdentity,
} from '@shearline/jobfile'
import * as files from 'cctv-age'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'

const absent = ['age', 'age-keygen', 'openssl', 'python3'].filter(
  (program) => spawnSync('sh', ['-c', `command -v ${program}`]).status !== 0,
)
const note = absent.length === 0 ? '' : ` [skipped: ${absent.join(', ')} not on this machine]`

let folder = ''
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'shearline-age-'))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const at = (name: string) => join(folder, name)

/** Runs a program; what it answers is text unless `out` names a file. Throws with its words when it fails. */
function run(program: string, args: readonly string[]): string {
  const ran = spawnSync(program, args, { encoding: 'utf8' })
  if (ran.status !== 0) throw new Error(`${program} ${args.join(' ')}: ${ran.stderr}`)
  return ran.stdout.trim()
}

/** Runs a program that asks for a passphrase on its terminal. */
function typing(passphrase: string, ...words: readonly string[]): void {
  run('python3', [join(import.meta.dirname, 'answer_prompts.py'), passphrase, ...words])
}

/** More than two pieces of the format, so that their order and the last one's mark are tried. */
const secret = new Uint8Array(150_001).map((_, index) => (index * 2_654_435_761) >>> 13)
const key = new Uint8Array(32).map((_, index) => 200 - index)
const passphrase = 'marsh-lantern-oval-tin'

async function seal(to: SealTo): Promise<{ file: Uint8Array; digest: string }> {
  const head = secretHead({ class: 'immobiliser-data', what: 'body unit', bytes: secret.length }, key)
  const sealing = await sealSecret(() => streamOf(secret.slice(0, 70_000), secret.slice(70_000)), head, to)
  const file = await gathered(sealing.stream)
  return { file, digest: sealing.digest() }
}

async function gathered(stream: ReadableStream<Uint8Array>): Promise<Buffer> {
  return Buffer.from(await new Response(stream).arrayBuffer())
}

/** What age made of a file of ours: our first line, and the secret after it. */
function split(file: string): { head: Record<string, unknown>; rest: Buffer } {
  const plain = readFileSync(file)
  const end = plain.indexOf(0x0a)
  return { head: JSON.parse(plain.subarray(0, end).toString()), rest: plain.subarray(end + 1) }
}

describe.skipIf(absent.length > 0)(`the vault and Debian's age${note}`, () => {
  it('age opens what we seal to two recipients, and openssl makes the same digest', async () => {
    for (const name of ['office', 'van']) run('age-keygen', ['-o', at(`${name}.key`)])
    const recipients = ['office', 'van'].map((name) => run('age-keygen', ['-y', at(`${name}.key`)]))
    const { file, digest } = await seal({ recipients })
    writeFileSync(at('ours.age'), file)
    for (const name of ['office', 'van']) {
      run('age', ['-d', '-i', at(`${name}.key`), '-o', at(`${name}.plain`), at('ours.age')])
      const { head, rest } = split(at(`${name}.plain`))
      expect(head).toMatchObject({ format: 'shearline-secret', bytes: secret.length, what: 'body unit' })
      expect(rest.equals(secret)).toBe(true)
      writeFileSync(at('secret.bin'), rest)
      const mac = ['dgst', '-sha256', '-mac', 'HMAC', '-macopt', `hexkey:${String(head.key)}`]
      expect(run('openssl', [...mac, at('secret.bin')])).toContain(digest)
    }
    run('age-keygen', ['-o', at('stranger.key')])
    expect(() => run('age', ['-d', '-i', at('stranger.key'), at('ours.age')])).toThrow('no identity matched')
  })

  it('we open what age seals, in its binary and its text form', async () => {
    run('age-keygen', ['-o', at('theirs.key')])
    const recipient = run('age-keygen', ['-y', at('theirs.key')])
    writeFileSync(at('plain'), secret)
    const identities = await readIdentities(readFileSync(at('theirs.key')))
    for (const form of [[], ['-a']]) {
      run('age', [...form, '-r', recipient, '-o', at('theirs.age'), at('plain')])
      const opened = await openSecret(streamOf(readFileSync(at('theirs.age'))), { identities })
      expect(opened.head).toBeNull()
      expect((await gathered(opened.stream)).equals(secret)).toBe(true)
    }
  })

  it('a passphrase opens the same way on both sides', async () => {
    writeFileSync(at('ours-p.age'), (await seal({ passphrase })).file)
    typing(passphrase, 'age', '-d', '-o', at('ours-p.plain'), at('ours-p.age'))
    expect(split(at('ours-p.plain')).rest.equals(secret)).toBe(true)
    expect(() => typing('another passphrase', 'age', '-d', '-o', at('no'), at('ours-p.age'))).toThrow()

    writeFileSync(at('plain'), secret)
    typing(passphrase, 'age', '-p', '-o', at('theirs-p.age'), at('plain'))
    const opened = await openSecret(streamOf(readFileSync(at('theirs-p.age'))), { passphrases: [passphrase] })
    expect((await gathered(opened.stream)).equals(secret)).toBe(true)
  })

  it('a private key made and wrapped on one side serves on the other', async () => {
    const made = await newIdentity()
    const text = identityText(made, '2026-11-25T09:12:00Z')
    writeFileSync(at('made.key'), text)
    expect(run('age-keygen', ['-y', at('made.key')])).toBe(made.recipient)
    writeFileSync(at('wrapped.key'), await wrapIdentity(text, passphrase))
    writeFileSync(at('sealed.age'), (await seal({ recipients: [made.recipient] })).file)
    typing(passphrase, 'age', '-d', '-i', at('wrapped.key'), '-o', at('w.plain'), at('sealed.age'))
    expect(split(at('w.plain')).rest.equals(secret)).toBe(true)

    typing(passphrase, 'age', '-p', '-a', '-o', at('theirs-wrapped.key'), at('made.key'))
    expect(await readIdentities(readFileSync(at('theirs-wrapped.key')), passphrase)).toEqual([made.identity])
  })
})

interface Vector {
  readonly name: string
  readonly expect: string
  /** SHA-256 of all that may be given out, also when it fails later. */
  readonly payload: string
  readonly identities: string[]
  readonly passphrases: string[]
  readonly file: Uint8Array
}

/** Reads a vector: lines of names and values, an empty line, the file (README of cctv-age). */
function vectorOf(name: string, bytes: Uint8Array): Vector {
  const all = Buffer.from(bytes)
  const end = all.indexOf('\n\n')
  const fields = all
    .subarray(0, end)
    .toString()
    .split('\n')
    .map((line): [string, string] => {
      const colon = line.indexOf(': ')
      return [line.slice(0, colon), line.slice(colon + 2)]
    })
  const valuesOf = (field: string) => fields.filter(([one]) => one === field).map(([, value]) => value)
  const rest = all.subarray(end + 2)
  return {
    name,
    expect: valuesOf('expect')[0] ?? '',
    payload: valuesOf('payload')[0] ?? createHash('sha256').digest('hex'),
    identities: valuesOf('identity'),
    passphrases: valuesOf('passphrase'),
    file: valuesOf('compressed')[0] === 'zlib' ? inflateSync(rest) : rest,
  }
}

/** A file as a disk gives it: an error in one piece must not swallow what the pieces before it gave. */
function inPieces(file: Uint8Array): ReadableStream<Uint8Array> {
  const count = Math.ceil(file.length / 4096)
  return streamOf(...Array.from({ length: count }, (_, at) => file.slice(at * 4096, (at + 1) * 4096)))
}

const vectors = Object.entries(files as unknown as Record<string, Uint8Array>).map(([name, bytes]) =>
  vectorOf(name, bytes),
)

describe('the test vectors of the format (cctv-age)', () => {
  it('are the 143 that version 0.2.0 holds', () => {
    expect(vectors).toHaveLength(143)
  })

  it.each(vectors.map((vector) => [vector.name, vector] as const))(
    '%s ends as the vector says, and gives out no other byte',
    async (_, vector) => {
      const given: Uint8Array[] = []
      let ended = 'success'
      try {
        const { identities, passphrases } = vector
        const opened = await openSecret(inPieces(vector.file), { identities, passphrases })
        expect(opened.head).toBeNull()
        for await (const piece of opened.stream) given.push(piece)
      } catch (error) {
        if (!(error instanceof VaultError)) throw error
        ended = error.code
      }
      expect(ended).toBeOneOf(outcomes[vector.expect] ?? [])
      const bytes = Buffer.concat(given)
      if (vector.expect !== 'payload failure') expect(sha256(bytes)).toBe(vector.payload)
      else if (absent.length === 0) {
        // The library holds the last piece back until it knows that it is the last: less than the vector allows.
        const allowed = givenByAge(vector)
        expect(sha256(allowed)).toBe(vector.payload)
        expect(allowed.subarray(0, bytes.length).equals(bytes)).toBe(true)
      }
    },
  )
})

const sha256 = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex')

/** What Debian's age gives out of a file before it finds it broken. */
function givenByAge(vector: Vector): Buffer {
  writeFileSync(at('vector.key'), vector.identities.join('\n'))
  return spawnSync('age', ['-d', '-i', at('vector.key')], { input: vector.file, maxBuffer: 1 << 28 }).stdout
}

/** How each expectation of a vector reads in our codes. */
const outcomes: Readonly<Record<string, readonly string[]>> = {
  success: ['success'],
  'no match': ['no-key-fits'],
  'HMAC failure': ['damaged'],
  'header failure': ['damaged', 'not-sealed'],
  'payload failure': ['damaged'],
  'armor failure': ['damaged', 'not-sealed'],
}
