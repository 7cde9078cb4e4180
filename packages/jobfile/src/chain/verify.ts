import { utf8ToBytes } from '@noble/hashes/utils.js'
import type { Finding } from '@shearline/bus'
import { compareFacts, envelope, type Fact } from '../facts/envelope.ts'
import { isKnownKind } from '../facts/kinds.ts'
import { readBody, understands } from '../facts/versions.ts'
import { fromBase64Url, sha256OfBytes } from './bytes.ts'
import { type Device, deviceIdOf, type Verifier } from './device.ts'
import { signedText } from './link.ts'
import { foldRegister, type Register, type RegisterFindingCode } from './register.ts'
import { judgeTrust, type TrustFindingCode } from './trust.ts'

export type ChainFindingCode =
  | 'not-a-fact'
  | 'body-does-not-fit'
  | 'unknown-kind'
  | 'newer-version'
  | 'unknown-device'
  | 'device-key-mismatch'
  | 'signature-wrong'
  | 'link-broken'
  | 'fact-twice'
  | 'other-job'
  | 'erased-without-proof'
  | RegisterFindingCode
  | TrustFindingCode

export interface ChainOptions {
  /** The firm's device facts: enrolments, key rotations, revocations. Without them no device is cut off. */
  readonly register?: readonly unknown[]
  /** When facts were received here, by identifier: a UTC instant that does not depend on the writer's key. */
  readonly received?: ReadonlyMap<string, string>
}

export interface ChainCheck {
  readonly facts: readonly Fact[]
  readonly hashes: readonly string[]
  readonly signaturesRight: number
  readonly linksRight: number
  /** How the devices stand; null when no register was given. */
  readonly register: Register | null
  /** The well-formed facts of that register. */
  readonly registerFacts: readonly Fact[]
  readonly findings: readonly Finding<ChainFindingCode>[]
}

/** How a fact is named in findings and on paper: its place in the record, from 1, and its kind. */
export function factName(position: number, kind: string): string {
  return `fact ${position} (${kind})`
}

/**
 * Checks facts of one job: form, body, signature, and the links between facts of the same device that
 * follow each other. A jump in `seq` means the device wrote for other jobs in between; that nothing of
 * this job is missing is what the seal's tree head proves. With a register, facts beyond a revocation are
 * named as not trusted. Never throws on malformed facts.
 */
export async function verifyFacts(
  raw: readonly unknown[],
  devices: readonly Device[],
  verifier: Verifier,
  options: ChainOptions = {},
): Promise<ChainCheck> {
  const findings: Finding<ChainFindingCode>[] = []
  const say: Say = (code, part, what, doNext, severity = 'error') => {
    findings.push({ code, severity, where: { part }, what, doNext })
  }
  const registerFacts = options.register === undefined ? [] : wellFormed(options.register, say)
  const register = options.register === undefined ? null : await readRegister(registerFacts, verifier, say)
  const known = new Map<string, Device>(register?.devices)
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

  const hashes: string[] = []
  const hashOf = new Map<Fact, string>()
  const right = new Set<Fact>()
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
      right.add(fact)
    } else {
      say(
        'signature-wrong',
        name,
        'Its content and its signature do not belong together: one of them was changed.',
        'Fetch the record again from the device that wrote it.',
      )
    }
    checkBody(fact, name, say)
  }

  checkErased(facts, names, say)
  if (register !== null) {
    const judged = judgeTrust(facts, hashes, right, register, options.received ?? new Map())
    for (const { fact, code, severity, what, doNext } of judged)
      say(code, names.get(fact) ?? fact.id, what, doNext, severity)
  }
  return {
    facts,
    hashes,
    signaturesRight: right.size,
    linksRight: checkLinks(facts, names, hashOf, say),
    register,
    registerFacts,
    findings,
  }
}

type Say = (
  code: ChainFindingCode,
  part: string,
  what: string,
  doNext: string,
  severity?: Finding['severity'],
) => void

function checkBody(fact: Fact, name: string, say: Say): void {
  const understood = understands(fact)
  if (understood === 'unknown-kind') {
    say(
      'unknown-kind',
      name,
      'A newer version wrote this kind of fact; it is kept and proven but not understood.',
      'Update Shearline to read it.',
      'note',
    )
  } else if (understood === 'newer-version') {
    say(
      'newer-version',
      name,
      `A newer version wrote it in form ${fact.v}; it is kept and proven but not understood.`,
      'Update Shearline to read it.',
      'note',
    )
  } else if (isKnownKind(fact.kind) && !('erased' in fact.body)) {
    const body = readBody(fact.kind, fact.body, fact.v)
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

/** An erased body keeps its hash, so anybody can erase one: only a proof on record says that the firm did. */
function checkErased(facts: readonly Fact[], names: ReadonlyMap<Fact, string>, say: Say): void {
  const erased = facts.filter((fact) => typeof fact.body.erased === 'string')
  if (erased.length === 0) return
  const proven = new Set<string>()
  for (const fact of facts) {
    if (fact.kind !== 'deletion-proven') continue
    const read = readBody('deletion-proven', fact.body, fact.v)
    for (const item of read.ok ? read.body.items : []) proven.add(`${item.fact} ${item.sha256}`)
  }
  for (const fact of erased)
    if (!proven.has(`${fact.id} ${String(fact.body.erased)}`))
      say(
        'erased-without-proof',
        names.get(fact) ?? fact.id,
        'Its content was taken out, and no deletion on record says who did so and why.',
        'Fetch the record again from the firm, or ask for the proof of the deletion.',
        'warning',
      )
}

function wellFormed(raw: readonly unknown[], say: Say): readonly Fact[] {
  return raw.flatMap((value, index) => {
    const parsed = envelope.safeParse(value)
    if (parsed.success) return [parsed.data]
    const part = `register, fact ${index + 1}`
    say(
      'register-fact-unreadable',
      part,
      'It is not a well-formed fact.',
      'Fetch the register again from the firm.',
    )
    return []
  })
}

async function readRegister(facts: readonly Fact[], verifier: Verifier, say: Say): Promise<Register> {
  const register = await foldRegister(facts, verifier)
  for (const { code, fact, what } of register.troubles)
    say(
      code,
      `register, ${fact.kind} of ${fact.device}`,
      what,
      'Ask the firm which of its devices stand; what this fact says does not count.',
      'warning',
    )
  return register
}

function checkLinks(
  facts: readonly Fact[],
  names: ReadonlyMap<Fact, string>,
  hashOf: ReadonlyMap<Fact, string>,
  say: Say,
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
