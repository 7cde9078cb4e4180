import { utf8ToBytes } from '@noble/hashes/utils.js'
import type { Finding } from '@shearline/bus'
import { compareFacts, envelope, type Fact } from '../facts/envelope.ts'
import { isKnownKind, readBody } from '../facts/kinds.ts'
import { fromBase64Url, sha256OfBytes } from './bytes.ts'
import { type Device, deviceIdOf, type Verifier } from './device.ts'
import { signedText } from './link.ts'

export type ChainFindingCode =
  | 'not-a-fact'
  | 'body-does-not-fit'
  | 'unknown-kind'
  | 'unknown-device'
  | 'device-key-mismatch'
  | 'signature-wrong'
  | 'link-broken'
  | 'fact-twice'
  | 'other-job'

export interface ChainCheck {
  readonly facts: readonly Fact[]
  readonly hashes: readonly string[]
  readonly signaturesRight: number
  readonly linksRight: number
  readonly findings: readonly Finding<ChainFindingCode>[]
}

/** How a fact is named in findings and on paper: its place in the record, from 1, and its kind. */
export function factName(position: number, kind: string): string {
  return `fact ${position} (${kind})`
}

/**
 * Checks facts of one job: form, body, signature, and the links between facts of the same device that
 * follow each other. A jump in `seq` means the device wrote for other jobs in between; that nothing of
 * this job is missing is what the seal's tree head proves. Never throws on malformed facts.
 */
export async function verifyFacts(
  raw: readonly unknown[],
  devices: readonly Device[],
  verifier: Verifier,
): Promise<ChainCheck> {
  const findings: Finding<ChainFindingCode>[] = []
  const say = (
    code: ChainFindingCode,
    part: string,
    what: string,
    doNext: string,
    severity: Finding['severity'] = 'error',
  ) => {
    findings.push({ code, severity, where: { part }, what, doNext })
  }
  const known = new Map<string, Device>()
  for (const device of devices) {
    const key = fromBase64Url(device.publicKey)
    if (key?.length === 32 && deviceIdOf(key) === device.device) known.set(device.device, device)
    else
      say(
        'device-key-mismatch',
        `device ${device.device}`,
        'The public key does not belong to this device identifier.',
        'Do not trust facts of this device; ask its owner for the key.',
      )
  }

  const facts: Fact[] = []
  const names = new Map<Fact, string>()
  raw.forEach((value, index) => {
    const parsed = envelope.safeParse(value)
    if (!parsed.success) {
      const issue = parsed.error.issues[0]
      const kind =
        typeof value === 'object' && value !== null && 'kind' in value ? String(value.kind) : 'unknown kind'
      say(
        'not-a-fact',
        factName(index + 1, kind),
        `It is not a well-formed fact at ${issue?.path.join('.') || '(whole)'}: ${issue?.message ?? ''}.`,
        'Fetch the record again from the device that wrote it.',
      )
      return
    }
    facts.push(parsed.data)
    names.set(parsed.data, factName(index + 1, parsed.data.kind))
  })
  facts.sort(compareFacts)

  let signaturesRight = 0
  const hashes: string[] = []
  const hashOf = new Map<Fact, string>()
  const job = facts[0]?.job
  for (const fact of facts) {
    const name = names.get(fact) ?? fact.id
    if (fact.job !== job)
      say('other-job', name, `It belongs to job ${fact.job}, not ${job}.`, 'Remove it from this record.')
    const text = signedText(fact)
    const hash = sha256OfBytes(text)
    hashes.push(hash)
    hashOf.set(fact, hash)
    const device = known.get(fact.device)
    if (device === undefined) {
      say(
        'unknown-device',
        name,
        `Its device ${fact.device} is not listed with a key.`,
        'Ask the owner of the device for its public key.',
      )
    } else if (await verifier.verify(device.publicKey, fact.sig, new Uint8Array(utf8ToBytes(text)))) {
      signaturesRight++
    } else {
      say(
        'signature-wrong',
        name,
        'Its content and its signature do not belong together: one of them was changed.',
        'Fetch the record again from the device that wrote it.',
      )
    }
    if (!isKnownKind(fact.kind)) {
      say(
        'unknown-kind',
        name,
        'A newer version wrote this kind of fact; it is kept and proven but not interpreted.',
        'Update Shearline to read it.',
        'note',
      )
    } else if (!('erased' in fact.body)) {
      const body = readBody(fact.kind, fact.body)
      if (!body.ok)
        say(
          'body-does-not-fit',
          name,
          `Its content is wrong at ${body.path}: ${body.what}.`,
          'Record a correction.',
          'warning',
        )
    }
  }

  return { facts, hashes, signaturesRight, linksRight: checkLinks(facts, names, hashOf, say), findings }
}

function checkLinks(
  facts: readonly Fact[],
  names: ReadonlyMap<Fact, string>,
  hashOf: ReadonlyMap<Fact, string>,
  say: (code: ChainFindingCode, part: string, what: string, doNext: string) => void,
): number {
  let right = 0
  const chains = new Map<string, Fact[]>()
  for (const fact of facts) {
    const chain = chains.get(fact.device)
    if (chain === undefined) chains.set(fact.device, [fact])
    else chain.push(fact)
  }
  for (const chain of chains.values()) {
    chain.sort((a, b) => a.seq - b.seq)
    chain.forEach((fact, index) => {
      const name = names.get(fact) ?? fact.id
      const before = chain[index - 1]
      const isFirst = fact.seq === 1
      if (isFirst !== (fact.prev === null)) {
        say(
          'link-broken',
          name,
          'Only the first fact of a device has nothing before it.',
          'Fetch the record again from the device that wrote it.',
        )
      } else if (before !== undefined && before.seq === fact.seq) {
        say(
          'fact-twice',
          name,
          `The device wrote two facts numbered ${fact.seq}.`,
          'Ask the owner of the device which one is true and record a correction.',
        )
      } else if (before !== undefined && before.seq + 1 === fact.seq && fact.prev !== hashOf.get(before)) {
        say(
          'link-broken',
          name,
          `It does not follow ${names.get(before) ?? before.id}: that fact was changed or replaced.`,
          'Fetch the record again from the device that wrote it.',
        )
      } else {
        right++
      }
    })
  }
  return right
}
