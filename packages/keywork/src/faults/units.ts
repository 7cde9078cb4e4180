/** @module Which control units of several scans are one and the same: by name, by address, or because a person said so. */

import { remembered } from './remembered.ts'
import { roleOf } from './roles.ts'
import type { FaultFinding, Scan, UnitMatch, UnitRole, UnitScan } from './types.ts'

/** The scans with one name for each unit, every name it had, and the pairs a person must decide about. */
export interface JoinedUnits {
  readonly scans: readonly Scan[]
  /** Every name and address of a unit, by the name it goes by here: the one met first. */
  readonly names: Readonly<Record<string, readonly string[]>>
  readonly questions: readonly FaultFinding[]
}

/** One unit of one scan. `label` is its name, with its address where the same name has several. */
interface Met {
  readonly scan: number
  readonly unit: UnitScan
  readonly addresses: readonly string[]
  readonly label: string
}

/**
 * Joins units of several scans (FLT-18 to FLT-20): the same name, unless it stands at different addresses; the same
 * address, unless one scan has both names; what a person said. What only looks alike is asked, never joined.
 */
export function joinUnits(scans: readonly Scan[], told: readonly UnitMatch[] = []): JoinedUnits {
  const met = labelled(scans)
  const labels = [...new Set(met.map(({ label }) => label))]
  const groups = new Groups(met)
  for (const { unit, other, same } of told) if (same) groups.join(unit, other)
  const addresses = addressesOf(met)
  const doubts: [string, string][] = []
  for (const [index, label] of labels.entries())
    for (const other of labels.slice(index + 1)) {
      if (groups.of(label) === groups.of(other)) continue
      if (meets(addresses.get(label) ?? [], addresses.get(other) ?? [])) {
        if (groups.inOneScan(label, other)) doubts.push([label, other])
        else groups.join(label, other)
      } else if (looksAlike(label, other) && !groups.inOneScan(label, other)) doubts.push([label, other])
    }
  const nameOf = new Map(labels.map((label) => [label, groups.of(label)]))
  const names = new Map<string, string[]>()
  for (const { label, addresses } of met) {
    const name = nameOf.get(label) ?? label
    const known = names.get(name) ?? [name]
    names.set(name, known)
    for (const each of [label, ...addresses]) if (!known.includes(each)) known.push(each)
  }
  return {
    scans: renamed(scans, met, nameOf),
    names: Object.fromEntries(names),
    questions: asked(doubts, told, nameOf),
  }
}

/**
 * Addresses as they can be compared: upper-case hexadecimal without a mark. The request identifiers that ISO 15765-4
 * pairs with a response (7E0 with 7E8, 18DA10F1 with 18DAF110) become the response; of a DoIP pair the sender is kept.
 * Null when the text is no identifier.
 */
export const addressOf: (text: string) => string | null = remembered((text) => {
  const [sender = '', receiver] = text.trim().toUpperCase().split('>')
  const plain = sender.replace(/^0X|^\$/, '').replace(/H$/, '')
  if (receiver !== undefined) return /^[0-9A-F]{4}$/.test(plain) ? plain : null
  if (/^18D[AB][0-9A-F]{2}F1$/.test(plain)) return `${plain.slice(0, 4)}F1${plain.slice(4, 6)}`
  if (/^7E[0-7]$/.test(plain))
    return `7E${(Number.parseInt(plain.slice(2), 16) + 8).toString(16).toUpperCase()}`
  return /^([0-7][0-9A-F]{2}|[01][0-9A-F]{7}|[0-9A-F]{4})$/.test(plain) ? plain : null
})

/** What each unit is for: as told by any of its names, else by the words of any, when they agree. */
export function rolesOf(
  names: JoinedUnits['names'],
  told: Readonly<Record<string, UnitRole>> = {},
): Readonly<Record<string, UnitRole>> {
  const roles: Record<string, UnitRole> = { ...told }
  for (const [name, all] of Object.entries(names)) {
    const said = all.find((each) => Object.hasOwn(told, each))
    const role = said === undefined ? onlyRole(all) : told[said]
    if (role !== undefined) roles[name] = role
  }
  return roles
}

/** The one role that the words of these names say; undefined when none does or they differ. */
function onlyRole(names: readonly string[]): UnitRole | undefined {
  let only: UnitRole | undefined
  for (const name of names) {
    const role = roleOf(name) ?? only
    if (only !== undefined && role !== only) return undefined
    only = role
  }
  return only
}

function labelled(scans: readonly Scan[]): readonly Met[] {
  const met: Omit<Met, 'label'>[] = []
  for (const [scan, { units }] of scans.entries())
    for (const unit of units) met.push({ scan, unit, addresses: addressesAt(unit) })
  const places = placesOf(met)
  return met.map(({ scan, unit, addresses }) => {
    const known = places.get(unit.unit) ?? []
    const place = known.length > 1 ? known.find((one) => meets(one, addresses))?.[0] : undefined
    return { scan, unit, addresses, label: place === undefined ? unit.unit : `${unit.unit} (${place})` }
  })
}

/** A recording knows a unit by its identifier alone, which then is its address too. */
function addressesAt({ unit, ids = [] }: UnitScan): readonly string[] {
  const own = addressOf(unit)
  if (ids.length === 0) return own === null ? [] : [own]
  return [...new Set([...ids.flatMap((each) => addressOf(each) ?? []), ...(own === null ? [] : [own])])]
}

/** The addresses that belong together, by the name of the unit that was met at them. */
function placesOf(met: readonly Omit<Met, 'label'>[]): ReadonlyMap<string, readonly (readonly string[])[]> {
  const places = new Map<string, (readonly string[])[]>()
  for (const { unit, addresses } of met) {
    if (addresses.length === 0) continue
    const known = places.get(unit.unit) ?? []
    if (known.some((one) => addresses.every((address) => one.includes(address)))) continue
    const near = known.filter((one) => meets(one, addresses))
    const apart = known.filter((one) => !meets(one, addresses))
    places.set(unit.unit, [...apart, [...near.flat(), ...addresses]])
  }
  return places
}

function meets(one: readonly string[], other: readonly string[]): boolean {
  return one.some((address) => other.includes(address))
}

/** Every address of each label. */
function addressesOf(met: readonly Met[]): ReadonlyMap<string, readonly string[]> {
  const all = new Map<string, string[]>()
  for (const { label, addresses } of met) {
    const known = all.get(label)
    if (known === undefined) all.set(label, [...addresses])
    else known.push(...addresses)
  }
  return all
}

/** Words that a name may have or lack. Common practice, no source. */
const FILLERS = /\b(control|controller|electronic|electronics|unit|module|ecu|system)\b/g

/** The same but for case, marks, spaces and filling words, or for the address behind it. */
function looksAlike(one: string, other: string): boolean {
  return bare(one) === bare(other)
}

const bare: (name: string) => string = remembered((name) => {
  const plain = name.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase()
  const short = plain
    .replace(/\(\w+\)$/, '')
    .replace(FILLERS, '')
    .replace(/[^\p{L}\p{N}]/gu, '')
  return short === '' ? plain : short
})

/** Names that are one unit so far; a group goes by the name that was met first. */
class Groups {
  readonly #met: readonly Met[]
  readonly #first = new Map<string, string>()
  readonly #order: readonly string[]

  constructor(met: readonly Met[]) {
    this.#met = met
    this.#order = met.map(({ label }) => label)
  }

  of(label: string): string {
    return this.#first.get(label) ?? label
  }

  join(one: string, other: string): void {
    const [a, b] = [this.of(one), this.of(other)]
    if (a === b || !this.#order.includes(a) || !this.#order.includes(b)) return
    const [first, later] = this.#order.indexOf(a) < this.#order.indexOf(b) ? [a, b] : [b, a]
    for (const label of new Set(this.#order)) if (this.of(label) === later) this.#first.set(label, first)
  }

  /** One scan read both: they are two units, whatever they are called. */
  inOneScan(one: string, other: string): boolean {
    const scansOf = (label: string) =>
      new Set(this.#met.filter((each) => this.of(each.label) === this.of(label)).map(({ scan }) => scan))
    const others = scansOf(other)
    return [...scansOf(one)].some((scan) => others.has(scan))
  }
}

function renamed(
  scans: readonly Scan[],
  met: readonly Met[],
  nameOf: ReadonlyMap<string, string>,
): readonly Scan[] {
  const renamed = scans.map(({ phase }) => ({ phase, units: [] as UnitScan[] }))
  for (const { scan, unit, label } of met) {
    const name = nameOf.get(label) ?? label
    renamed[scan]?.units.push(name === unit.unit ? unit : { ...unit, unit: name })
  }
  return renamed
}

function asked(
  doubts: readonly (readonly [string, string])[],
  told: readonly UnitMatch[],
  nameOf: ReadonlyMap<string, string>,
): readonly FaultFinding[] {
  const name = (label: string) => nameOf.get(label) ?? label
  const pair = (one: string, other: string) => [name(one), name(other)].sort().join('\n')
  const settled = new Set(told.map(({ unit, other }) => pair(unit, other)))
  const open = new Map<string, FaultFinding>()
  for (const [one, other] of doubts) {
    const key = pair(one, other)
    if (name(one) === name(other) || settled.has(key) || open.has(key)) continue
    open.set(key, {
      code: 'units-perhaps-one',
      severity: 'warning',
      where: { part: name(one) },
      params: { unit: name(one), other: name(other) },
    })
  }
  return [...open.values()]
}
