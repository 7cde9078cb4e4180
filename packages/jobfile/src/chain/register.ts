import { utf8ToBytes } from '@noble/hashes/utils.js'
import { type Body, compareFacts, type Fact, type Kind, readBody } from '../facts/index.ts'
import { canonicalJson, fromBase64Url, toBase64Url } from './bytes.ts'
import { type Device, deviceIdOf, type Sign, type Verifier } from './device.ts'
import { signedText } from './link.ts'

/** The reserved job in which a firm keeps its device facts. It is never opened, so no board shows it. */
export const registerJob = 'device-register'

/** How a device stands in the firm's register. */
export interface DeviceStanding extends Device {
  readonly enrolledAt: string
  /** Who approved it, and the device that wrote so; its own identifier for the firm's first device. */
  readonly approvedBy: string
  readonly approvedOn: string
  /** The device that took its place by a key rotation, and the number of the fact that says so. */
  readonly replaced: { readonly by: string; readonly seq: number } | null
  readonly revoked: (Body<'device-revoked'> & { readonly at: string; readonly by: string }) | null
}

export type RegisterFindingCode =
  | 'register-fact-unreadable'
  | 'register-signature-wrong'
  | 'enrolled-by-stranger'
  | 'enrolment-key-mismatch'
  | 'rotation-not-proven'
  | 'revoked-by-stranger'

/** One thing in a register that cannot be relied on, with the fact that says it. */
export interface RegisterTrouble {
  readonly code: RegisterFindingCode
  readonly fact: Fact
  readonly what: string
}

export interface Register {
  /** Every device that was rightly enrolled, by identifier. */
  readonly devices: ReadonlyMap<string, DeviceStanding>
  readonly troubles: readonly RegisterTrouble[]
}

/** What both keys sign when a key is replaced: RFC 8785 canonical JSON that can stand for nothing else. */
export function rotationStatement(oldDevice: string, newDevice: string, newPublicKey: string): string {
  return canonicalJson({ statement: 'shearline-key-rotation', oldDevice, newDevice, newPublicKey })
}

/** The body of a `device-key-rotated` fact for the old device to write; `signNew` signs with the new key. */
export async function rotationBody(
  oldDevice: string,
  next: Device,
  signNew: Sign,
  because: string,
): Promise<Body<'device-key-rotated'>> {
  const { device: newDevice, publicKey: newPublicKey, name } = next
  const statement = rotationStatement(oldDevice, newDevice, newPublicKey)
  const proof = toBase64Url(await signNew(new Uint8Array(utf8ToBytes(statement))))
  return { newDevice, name, newPublicKey, proof, because }
}

type SignedRight = (fact: Fact, publicKey: string) => Promise<boolean>
type Revocations = ReadonlyMap<string, NonNullable<DeviceStanding['revoked']>>

/** A revocation reaches back to its `from`, so what it undoes may have been read before it: read again, a few times. */
const mostPasses = 4

/**
 * Folds device facts, in any order, into the register. Only facts of devices that stand in the register and are
 * not cut off count; the first self-enrolment is the root, which a reader has to know from the firm by another
 * way. Of two devices that revoke each other the earlier instant stands, and the other is a trouble to look at.
 */
export async function foldRegister(facts: readonly Fact[], verifier: Verifier): Promise<Register> {
  const known = new Map<string, Promise<boolean>>()
  const signedRight: SignedRight = (fact, publicKey) => {
    const key = `${publicKey} ${fact.sig} ${fact.id}`
    const before = known.get(key)
    if (before !== undefined) return before
    const now = verifier.verify(publicKey, fact.sig, new Uint8Array(utf8ToBytes(signedText(fact))))
    known.set(key, now)
    return now
  }
  const ordered = [...facts].sort(compareFacts)
  let revocations: Revocations = new Map()
  let register = await pass(ordered, verifier, signedRight, revocations)
  for (let round = 1; round < mostPasses; round++) {
    const found: Revocations = new Map(
      [...register.devices].flatMap(([id, { revoked }]) =>
        revoked === null ? [] : [[id, revoked] as const],
      ),
    )
    const same = found.size === revocations.size && [...found.keys()].every((id) => revocations.has(id))
    if (same) break
    revocations = found
    register = await pass(ordered, verifier, signedRight, revocations)
  }
  return register
}

async function pass(
  ordered: readonly Fact[],
  verifier: Verifier,
  signedRight: SignedRight,
  revocations: Revocations,
): Promise<Register> {
  const devices = new Map<string, DeviceStanding>()
  const troubles: RegisterTrouble[] = []
  const trouble = (code: RegisterFindingCode, fact: Fact, what: string) => troubles.push({ code, fact, what })

  for (const fact of ordered) {
    const writer = devices.get(fact.device)
    const revoked = revocations.get(fact.device) ?? null
    const mayWrite =
      writer !== undefined && !isCutOff(writer, fact) && !isCutOff({ ...writer, revoked }, fact)
    if (writer !== undefined && !(await signedRight(fact, writer.publicKey))) {
      trouble('register-signature-wrong', fact, 'Its content and its signature do not belong together.')
      continue
    }
    if (fact.kind === 'device-enrolled') {
      const body = bodyOf(fact, 'device-enrolled')
      if (body === null) trouble('register-fact-unreadable', fact, 'Its content does not fit its kind.')
      else if (!keyFits(body.device, body.publicKey))
        trouble('enrolment-key-mismatch', fact, `The key does not belong to ${body.device}.`)
      else if (devices.has(body.device)) continue
      else if (mayWrite || (devices.size === 0 && (await isRoot(fact, body, signedRight))))
        devices.set(body.device, standing(fact, body, body.approvedBy))
      else
        trouble(
          'enrolled-by-stranger',
          fact,
          `${fact.device} may not enrol ${body.device}: it stands in no register or was revoked.`,
        )
    } else if (fact.kind === 'device-key-rotated') {
      const body = bodyOf(fact, 'device-key-rotated')
      if (body === null) {
        trouble('register-fact-unreadable', fact, 'Its content does not fit its kind.')
        continue
      }
      const { newDevice: device, newPublicKey: publicKey, name, proof } = body
      const statement = new Uint8Array(utf8ToBytes(rotationStatement(fact.device, device, publicKey)))
      const proven = keyFits(device, publicKey) && (await verifier.verify(publicKey, proof, statement))
      if (!mayWrite || !proven) {
        trouble(
          'rotation-not-proven',
          fact,
          `The change to ${device} is not signed by both the old and the new key.`,
        )
        continue
      }
      if (!devices.has(device)) devices.set(device, standing(fact, { device, publicKey, name }, fact.by))
      devices.set(fact.device, { ...writer, replaced: { by: device, seq: fact.seq } })
    } else if (fact.kind === 'device-revoked') {
      const body = bodyOf(fact, 'device-revoked')
      const target = body === null ? undefined : devices.get(body.device)
      if (body === null) trouble('register-fact-unreadable', fact, 'Its content does not fit its kind.')
      else if (!mayWrite || target === undefined)
        trouble(
          'revoked-by-stranger',
          fact,
          `${fact.device} may not revoke ${body.device}: one of them stands in no register or was revoked.`,
        )
      // The earliest revocation stands: a later one could only widen what is trusted.
      else if (target.revoked === null)
        devices.set(body.device, { ...target, revoked: { ...body, at: fact.at, by: fact.by } })
    }
  }
  return { devices, troubles }
}

/** True when a fact lies beyond the revocation or replacement of its device: by its instant or its place in the chain. */
export function isCutOff(device: DeviceStanding, fact: Pick<Fact, 'at' | 'seq'>): boolean {
  const { revoked, replaced } = device
  if (replaced !== null && fact.seq > replaced.seq) return true
  if (revoked === null) return false
  return fact.at >= revoked.from || (revoked.last !== null && fact.seq > revoked.last.seq)
}

const exposing: ReadonlySet<Body<'device-revoked'>['because']> = new Set(['lost', 'stolen', 'key-exposed'])

/** True when the device's key may be in other hands, so that its own signature no longer dates anything. */
export function mayBeExposed(device: DeviceStanding): boolean {
  return device.revoked !== null && exposing.has(device.revoked.because)
}

function bodyOf<K extends Kind>(fact: Fact, kind: K): Body<K> | null {
  const read = readBody(kind, fact.body, fact.v)
  return read.ok ? read.body : null
}

function keyFits(device: string, publicKey: string): boolean {
  const key = fromBase64Url(publicKey)
  return key?.length === 32 && deviceIdOf(key) === device
}

async function isRoot(fact: Fact, body: Body<'device-enrolled'>, signedRight: SignedRight): Promise<boolean> {
  return fact.device === body.device && (await signedRight(fact, body.publicKey))
}

function standing(fact: Fact, device: Device, approvedBy: string): DeviceStanding {
  return {
    device: device.device,
    name: device.name,
    publicKey: device.publicKey,
    enrolledAt: fact.at,
    approvedBy,
    approvedOn: fact.device,
    replaced: null,
    revoked: null,
  }
}
