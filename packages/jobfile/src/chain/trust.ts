import type { Severity } from '@shearline/bus'
import type { Fact } from '../facts/envelope.ts'
import { treeHeadOfHashes } from './merkle.ts'
import { type DeviceStanding, isCutOff, mayBeExposed, type Register } from './register.ts'

export type TrustFindingCode = 'device-not-enrolled' | 'device-revoked' | 'not-witnessed'

/** A fact that its signature alone does not make trustworthy, and why. */
export interface Doubt {
  readonly fact: Fact
  readonly code: TrustFindingCode
  readonly severity: Severity
  readonly what: string
  readonly doNext: string
}

/**
 * Holds facts, in fold order with their hashes, against the register. A fact beyond its device's revocation is not
 * trusted. Before it, a fact of a key that may be in other hands is trusted only when something else than that key
 * dates it: a seal of another device over it, an unbroken chain to the fact the firm held when it revoked the
 * device, or its receipt before the revocation. Otherwise whoever has the key could have written it since.
 */
export function judgeTrust(
  facts: readonly Fact[],
  hashes: readonly string[],
  signedRight: ReadonlySet<Fact>,
  register: Register,
  received: ReadonlyMap<string, string>,
): readonly Doubt[] {
  const witnessed = witnesses(facts, hashes, signedRight, register)
  const doubts: Doubt[] = []
  facts.forEach((fact, index) => {
    const device = register.devices.get(fact.device)
    if (device === undefined) {
      doubts.push({
        fact,
        code: 'device-not-enrolled',
        severity: 'warning',
        what: `Its device ${fact.device} does not stand in the firm's register.`,
        doNext: 'Ask the firm whether the device is its own.',
      })
      return
    }
    const hash = hashes[index] ?? ''
    const { revoked } = device
    const forked = revoked?.last?.seq === fact.seq && revoked.last.hash !== hash
    if (isCutOff(device, fact) || forked) {
      doubts.push({
        fact,
        code: 'device-revoked',
        severity: 'error',
        what: cutOffWords(device, fact, forked),
        doNext: 'Do not rely on it. If it is true, record it again on a device that stands.',
      })
      return
    }
    if (revoked === null || !mayBeExposed(device) || witnessed.has(hash)) return
    const arrived = received.get(fact.id)
    if (arrived !== undefined && arrived < revoked.from) return
    doubts.push({
      fact,
      code: 'not-witnessed',
      severity: 'warning',
      what: `The key of ${fact.device} may be in other hands since ${revoked.from}. The fact says it is older, but nothing besides that key shows it.`,
      doNext: 'Compare it with what the firm received before that instant, or with a seal of another device.',
    })
  })
  return doubts
}

function cutOffWords(device: DeviceStanding, fact: Fact, forked: boolean): string {
  const { revoked, replaced } = device
  if (forked)
    return `Not trusted: the firm held another fact ${fact.seq} of ${fact.device} when it revoked the device.`
  if (revoked === null)
    return `Not trusted: ${fact.device} was replaced by ${replaced?.by ?? 'another device'} before it wrote this.`
  const last = revoked.last === null ? '' : ` and after its fact ${revoked.last.seq}`
  return `Not trusted: ${fact.device} was revoked (${revoked.because}) from ${revoked.from}${last}.`
}

/** Hashes of facts that something other than their own device's key dates. */
function witnesses(
  facts: readonly Fact[],
  hashes: readonly string[],
  signedRight: ReadonlySet<Fact>,
  register: Register,
): ReadonlySet<string> {
  const found = new Set<string>()
  facts.forEach((fact, index) => {
    if (fact.kind !== 'document-sealed' || !signedRight.has(fact)) return
    const sealer = register.devices.get(fact.device)
    if (sealer === undefined || mayBeExposed(sealer) || isCutOff(sealer, fact)) return
    const before = hashes.slice(0, index)
    if (fact.body.count !== before.length || fact.body.root !== treeHeadOfHashes(before)) return
    for (const hash of before) found.add(hash)
  })
  // Later facts first: each names the hash of the one before it, so a held fact vouches for the chain under it.
  const held = new Set([...register.devices.values()].map((device) => device.revoked?.last?.hash))
  const byNumber = facts.map((fact, index) => ({ fact, hash: hashes[index] ?? '' }))
  byNumber.sort((a, b) => b.fact.seq - a.fact.seq)
  for (const { fact, hash } of byNumber) {
    if (!held.has(hash) && !found.has(hash)) continue
    found.add(hash)
    if (fact.prev !== null) found.add(fact.prev)
  }
  return found
}
