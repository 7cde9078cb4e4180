/** @module The firm's register of devices, written by this directory's own device: who may write, and since when not. */
import { randomUUID, webcrypto } from 'node:crypto'
import {
  type Body,
  type Device,
  type DeviceStanding,
  type Fact,
  type FactDraft,
  foldRegister,
  isCutOff,
  type Register,
  registerJob,
  Verifier,
} from '@shearline/jobfile'
import type { EnrolledDevice, Outcome, Store } from '../contract/index.ts'

/** Who writes into the register, and the present instant, milliseconds since 1970 UTC. */
export interface RegisterWriter {
  readonly by: string
  readonly now: number
}

/** What came of a wish to write into the register: nothing was written when `ok` is false. */
export type RegisterOutcome =
  | { readonly ok: true; readonly fact: Fact | null }
  | { readonly ok: false; readonly what: string; readonly doNext: string }

/** The firm's device facts in fold order; empty where no device was ever enrolled by a fact. */
export function registerOf(store: Store): Promise<readonly Fact[]> {
  return store.factsOfJob(registerJob)
}

/** How the devices of the firm stand. */
export async function standingsOf(store: Store): Promise<Register> {
  return await foldRegister(await registerOf(store), new Verifier(webcrypto.subtle))
}

/**
 * Makes a device known and writes `device-enrolled` for it. The first time, the own device enrols itself before: it
 * is the root of the register. Where the own device does not stand in the register (another server of the firm,
 * not approved yet), the device is made known and the register is left to a device that does.
 */
export async function enrolDevice(
  store: Store,
  device: Device,
  writer: RegisterWriter,
): Promise<Outcome<EnrolledDevice>> {
  const known = await store.enrol(device)
  if (known.ok) await approve(store, known.value, writer)
  return known
}

/** Writes `device-enrolled` for a device that is known here; `fact` is null when it stands in the register already. */
export function approve(store: Store, device: Device, writer: RegisterWriter): Promise<RegisterOutcome> {
  const own = store.device
  return write(store, writer, ({ devices }, empty) => {
    if (devices.has(device.device)) return []
    if (!empty && !stands(devices.get(own.device), writer.now)) return cannotWrite(own.device)
    const others = own.device === device.device ? [] : [enrolled(device, writer.by)]
    return empty ? [enrolled(own, writer.by), ...others] : others
  })
}

/** Why and from when a device is not trusted any more. */
export interface Revocation {
  readonly device: string
  readonly because: Body<'device-revoked'>['because']
  readonly reason: string
  /** The last number of its chain that still counts; the last that is here when left out. */
  readonly after?: number
}

/** Writes `device-revoked`. What the device wrote up to the last fact named there keeps its standing. */
export async function revoke(
  store: Store,
  wish: Revocation,
  writer: RegisterWriter,
): Promise<RegisterOutcome> {
  const { device, because, reason } = wish
  if (device === store.device.device)
    return no('This directory cannot revoke its own key.', 'Rotate it, or revoke it from another device.')
  const end = await store.chainEnd(device)
  const seq = wish.after ?? end?.seq ?? 0
  const hash = seq === 0 ? null : await store.factHashOf(device, seq)
  if (seq > 0 && hash === null)
    return no(`Fact ${seq} of ${device} is not here.`, 'Name the last number that is here and still counts.')
  const last = hash === null ? null : { seq, hash }
  return await write(store, writer, ({ devices }, _empty, at) => {
    const standing = devices.get(device)
    if (standing === undefined)
      return no(`${device} does not stand in the register.`, 'See: shearline device list.')
    if (standing.revoked !== null) return no(`${device} was revoked already.`, 'See: shearline device list.')
    if (!stands(devices.get(store.device.device), writer.now)) return cannotWrite(store.device.device)
    return [{ kind: 'device-revoked', body: { device, because, from: at, last, reason } }]
  })
}

/** Writes `device-key-rotated` for the own device; `body` is jobfile's `rotationBody`, signed by the new key. */
export function recordRotation(
  store: Store,
  body: Body<'device-key-rotated'>,
  writer: RegisterWriter,
): Promise<RegisterOutcome> {
  return write(store, writer, ({ devices }) =>
    stands(devices.get(store.device.device), writer.now)
      ? [{ kind: 'device-key-rotated', body: { ...body } }]
      : cannotWrite(store.device.device),
  )
}

type Entry = Pick<FactDraft, 'kind' | 'body'>
type Refused = Extract<RegisterOutcome, { ok: false }>

/** Composes entries after the register as it stands and writes them; again when it grew meanwhile. */
async function write(
  store: Store,
  { by, now }: RegisterWriter,
  compose: (register: Register, empty: boolean, at: string) => readonly Entry[] | Refused,
): Promise<RegisterOutcome> {
  for (;;) {
    const facts = await registerOf(store)
    const register = await foldRegister(facts, new Verifier(webcrypto.subtle))
    // Later than every entry before it: the register is read in the order of its instants.
    const last = Date.parse(facts.at(-1)?.at ?? '')
    const at = new Date(Number.isNaN(last) ? now : Math.max(now, last + 1)).toISOString()
    const entries = compose(register, facts.length === 0, at)
    if ('ok' in entries) return entries
    let grown = false
    const { written } = await store.writeOwnAfter(registerJob, (before) => {
      grown = before.length !== facts.length
      return grown ? [] : entries.map((entry) => ({ id: randomUUID(), job: registerJob, at, by, ...entry }))
    })
    if (!grown) return { ok: true, fact: written.at(-1) ?? null }
  }
}

function enrolled({ device, name, publicKey }: Device, approvedBy: string): Entry {
  return { kind: 'device-enrolled', body: { device, name, publicKey, approvedBy } }
}

/** True when what the device writes now counts. */
function stands(device: DeviceStanding | undefined, now: number): boolean {
  return (
    device !== undefined &&
    device.replaced === null &&
    !isCutOff({ ...device }, { at: new Date(now).toISOString(), seq: Number.MAX_SAFE_INTEGER })
  )
}

function cannotWrite(device: string): Refused {
  return no(
    `This directory's key (${device}) does not stand in the firm's register, so what it says of devices would not count.`,
    'Do this on a computer that stands in it, or have this one approved there: shearline device approve.',
  )
}

function no(what: string, doNext: string): Refused {
  return { ok: false, what, doNext }
}
