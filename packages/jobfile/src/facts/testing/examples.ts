import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { bodyHash, type Device, factHash } from '../../chain/index.ts'
import { TestDevice } from '../../testing/device.ts'
import { type Fact, type Kind, kinds, readBody, versionOf } from '../index.ts'
import { drafts } from './drafts.ts'

/** Frozen bodies of one kind in one version, each with the hash it had when it was written. */
export interface Examples {
  readonly kind: Kind
  readonly v: number
  readonly examples: readonly { readonly body: Fact['body']; readonly hash: string }[]
}

function fileOf(kind: Kind, v: number): URL {
  return new URL(`../examples/${kind}.v${v}.json`, import.meta.url)
}

/** The frozen examples of a kind in a version, or null when there are none. */
export function examplesOf(kind: Kind, v: number): Examples | null {
  const file = fileOf(kind, v)
  return existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as Examples) : null
}

/**
 * Freezes the drafts of every kind whose present version has no examples yet. What is frozen is never written again:
 * the file is opened so that an existing one makes it fail. Returns the names of the kinds written.
 */
export function freezeNew(): readonly Kind[] {
  return kinds.filter((kind) => {
    const v = versionOf(kind)
    if (examplesOf(kind, v) !== null) return false
    const examples = drafts[kind].map((draft) => {
      const read = readBody(kind, draft)
      if (!read.ok) throw new Error(`The draft of ${kind} is wrong at ${read.path}: ${read.what}`)
      const body = JSON.parse(JSON.stringify(read.body)) as Fact['body']
      return { body, hash: bodyHash(body) }
    })
    writeFileSync(fileOf(kind, v), `${JSON.stringify({ kind, v, examples }, null, 2)}\n`, { flag: 'wx' })
    return true
  })
}

/** One fact of every kind as a device signed it, with the hash each had: signing and hashing must never change. */
export interface SignedExamples {
  readonly device: Device
  readonly facts: readonly Fact[]
  readonly hashes: readonly string[]
}

const signedFile = new URL('../examples/signed.json', import.meta.url)

/** The frozen signed facts, or null before they were made. */
export function signedExamples(): SignedExamples | null {
  return existsSync(signedFile) ? (JSON.parse(readFileSync(signedFile, 'utf8')) as SignedExamples) : null
}

/** Signs one fact of every kind with a key made for it alone and freezes them; nothing when they are there. */
export async function freezeSigned(): Promise<boolean> {
  if (signedExamples() !== null) return false
  const tablet = await TestDevice.create()
  for (const kind of kinds) await tablet.write(kind, drafts[kind][0] as never)
  const { device, facts } = tablet
  const signed: SignedExamples = { device, facts, hashes: facts.map(factHash) }
  writeFileSync(signedFile, `${JSON.stringify(signed, null, 2)}\n`, { flag: 'wx' })
  return true
}
