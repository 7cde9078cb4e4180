/** @module Held against the firm's register: facts of devices that are no longer trusted. */
import { type Device, type Fact, foldRegister, registerJob, Verifier, verifyFacts } from '@shearline/jobfile'
import { keptFacts } from '../sync/read.ts'

/** What the register says against this record. */
export interface RegisterDoubts {
  readonly revoked: readonly Fact[]
  readonly notWitnessed: readonly Fact[]
  /** Why the firm no longer trusts this very device, or null. */
  readonly ownRevoked: string | null
  /** What the devices this one has heard of are called, by identifier. */
  readonly names: ReadonlyMap<string, string>
}

export const noDoubts: RegisterDoubts = {
  revoked: [],
  notWitnessed: [],
  ownRevoked: null,
  names: new Map(),
}

const verifier = new Verifier(crypto.subtle)

/**
 * Judges a job's facts by the register as this device knows it. A firm without a register revokes nothing. Never
 * throws on what the record holds.
 */
export async function registerDoubts(job: string, own: string | null): Promise<RegisterDoubts> {
  const register = await keptFacts(registerJob)
  const { facts, devices } = await keptFacts(job)
  const names = namesOf(devices)
  if (register.facts.length === 0) return { ...noDoubts, names }
  const { devices: standing } = await foldRegister(register.facts, verifier)
  const ownRevoked = own === null ? null : (standing.get(own)?.revoked?.because ?? null)
  if ([...standing.values()].every(({ revoked, replaced }) => revoked === null && replaced === null))
    return { ...noDoubts, ownRevoked, names }
  const check = await verifyFacts(facts, [...devices, ...register.devices], verifier, {
    register: register.facts,
  })
  // A finding names its fact by its place among those given, which are not in the order of the fold.
  const named = (code: string) =>
    check.findings
      .filter((finding) => finding.code === code)
      .flatMap((finding) => {
        const place = /\d+/.exec('part' in finding.where ? String(finding.where.part) : '')
        const fact = place === null ? undefined : facts[Number(place[0]) - 1]
        return fact === undefined ? [] : [fact]
      })
  return { revoked: named('device-revoked'), notWitnessed: named('not-witnessed'), ownRevoked, names }
}

/** Letters of an identifier that tell two devices of one name apart. */
const tellApart = 6

/** Names as people gave them; with the start of the identifier where two devices have the same. */
export function namesOf(devices: readonly Device[]): ReadonlyMap<string, string> {
  const named = devices.filter(({ name }) => name.trim() !== '')
  return new Map(
    named.map(({ device, name }) => {
      const alone = named.every((other) => other.device === device || other.name !== name)
      return [device, alone ? name : `${name} (${device.slice(0, tellApart)}\u2026)`]
    }),
  )
}
