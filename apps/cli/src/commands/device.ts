import type { DeviceStanding } from '@shearline/jobfile'
import {
  approve,
  type EnrolledDevice,
  type Revocation,
  revoke,
  rotateKey,
  type Store,
  standingsOf,
} from '@shearline/store'
import { type Command, Option } from 'commander'
import { type DataFlags, keptIn, orCouldNot, whoRecords, withStore } from '../job/data.ts'
import { CouldNot, countOf, paint, print, printJson } from '../output/answer.ts'

type Flags = DataFlags & { readonly json?: boolean }

/** `shearline device ...`: the firm's register of devices, in which each entry is a signed fact. */
export function addDevice(program: Command): void {
  const device = program
    .command('device')
    .description('The devices of the firm: which stand, which were replaced or revoked')
  const verb = (name: string, description: string) =>
    device
      .command(name)
      .description(description)
      .option('--data <folder>', 'data folder (default: SHEARLINE_DATA, else .shearline here)')
      .option('--by <name>', 'who records (default: SHEARLINE_BY, else this user)')
      .option('--json', 'one JSON object')

  verb('list', 'List every device that is known here and how it stands in the register').action(
    (flags: Flags) => list(flags),
  )
  verb('approve', 'Put a device that is known here into the register')
    .argument('<device>', 'its identifier, as "shearline device list" prints it')
    .action((name: string, flags: Flags) => approveDevice(name, flags))
  verb('rotate', "Replace this data folder's key by a new one, signed by both")
    .requiredOption('--why <words>', 'why now')
    .action((flags: Flags & { why: string }) => rotate(flags))
  verb('revoke', 'Trust a device no more: from now, or after a number of its chain')
    .argument('<device>')
    .addOption(
      new Option('--because <reason>', 'what happened to it')
        .choices(['retired', 'replaced', 'lost', 'stolen', 'key-exposed'])
        .makeOptionMandatory(),
    )
    .requiredOption('--why <words>', 'the reason in words')
    .option('--after <number>', 'last number of its chain that still counts (default: the last that is here)')
    .action((name: string, flags: RevokeFlags) => revokeDevice(name, flags))
}

type RevokeFlags = Flags & Pick<Revocation, 'because'> & { readonly why: string; readonly after?: string }

/** A device as it is listed. */
interface Listed {
  readonly device: string
  readonly name: string
  readonly own: boolean
  /** Last number of its chain that is whole here; 0 when none is. */
  readonly last: number
  readonly standing: 'stands' | 'not-in-register' | 'replaced' | 'revoked'
  readonly replaced: DeviceStanding['replaced']
  readonly revoked: DeviceStanding['revoked']
}

function list(flags: Flags): Promise<void> {
  return withStore(flags, async (store) => {
    const { devices: standings, troubles } = await standingsOf(store)
    const listed: Listed[] = []
    for (const known of await store.devices()) listed.push(await describe(store, known, standings))
    const wrong = troubles.map(({ code, fact, what }) => ({ code, device: fact.device, seq: fact.seq, what }))
    if (flags.json === true) {
      printJson({ devices: listed, troubles: wrong })
      return
    }
    for (const one of listed)
      print(
        `${one.device}  ${one.name}${one.own ? ' (this data folder)' : ''}, ${countOf(one.last, 'fact')}: ${inWords(one)}`,
      )
    for (const { device, seq, what } of wrong)
      print(`${paint('does not count', 'yellow')}: fact ${seq} of ${device}: ${what}`)
  })
}

async function describe(
  store: Store,
  known: EnrolledDevice,
  standings: ReadonlyMap<string, DeviceStanding>,
): Promise<Listed> {
  const standing = standings.get(known.device)
  const { replaced = null, revoked = null } = standing ?? {}
  return {
    device: known.device,
    name: known.name,
    own: known.device === store.device.device,
    last: (await store.chainEnd(known.device))?.seq ?? 0,
    standing:
      standing === undefined
        ? 'not-in-register'
        : revoked !== null
          ? 'revoked'
          : replaced !== null
            ? 'replaced'
            : 'stands',
    replaced,
    revoked,
  }
}

function inWords({ standing, replaced, revoked }: Listed): string {
  if (revoked !== null) {
    const last = revoked.last === null ? '' : `, after its fact ${revoked.last.seq}`
    return `${paint('revoked', 'red')} (${revoked.because}) from ${revoked.from}${last}, by ${revoked.by}: ${revoked.reason}`
  }
  if (replaced !== null)
    return `${paint('replaced', 'yellow')} by ${replaced.by} after its fact ${replaced.seq}`
  return standing === 'stands' ? paint('stands', 'green') : paint('not in the register', 'yellow')
}

function approveDevice(name: string, flags: Flags): Promise<void> {
  return withStore(flags, async (store) => {
    const known = (await store.devices()).find(({ device }) => device === name)
    if (known === undefined) throw unknown(name)
    const outcome = await approve(store, known, { by: whoRecords(flags), now: Date.now() })
    if (!outcome.ok) throw new CouldNot(outcome.what, outcome.doNext)
    if (flags.json === true) printJson({ device: name, fact: outcome.fact?.id ?? null })
    else
      print(
        outcome.fact === null ? `${name} stands in the register already.` : `${name} stands in the register.`,
      )
  })
}

async function rotate(flags: Flags & { why: string }): Promise<void> {
  const { data, ...where } = keptIn(flags)
  const writer = { by: whoRecords(flags), now: Date.now() }
  const outcome = await orCouldNot(() => rotateKey(data, where, flags.why, writer))
  if (!outcome.ok) throw new CouldNot(outcome.what, outcome.doNext)
  const { old, device } = outcome
  if (flags.json === true) printJson({ old, device })
  else {
    print(`${old} was replaced by ${device}; the old key is gone.`)
    print('A server that has this folder open records nothing of its own until it is started again.')
  }
}

function revokeDevice(name: string, flags: RevokeFlags): Promise<void> {
  const after = flags.after === undefined ? undefined : Number(flags.after)
  if (after !== undefined && (!Number.isSafeInteger(after) || after < 1))
    throw new CouldNot(`"${flags.after}" is no number of a fact.`, 'Give a whole number from 1.')
  return withStore(flags, async (store) => {
    if (!(await store.devices()).some(({ device }) => device === name)) throw unknown(name)
    const wish: Revocation = {
      device: name,
      because: flags.because,
      reason: flags.why,
      ...(after === undefined ? {} : { after }),
    }
    const outcome = await revoke(store, wish, { by: whoRecords(flags), now: Date.now() })
    if (!outcome.ok) throw new CouldNot(outcome.what, outcome.doNext)
    const last = (outcome.fact?.body.last ?? null) as { seq: number } | null
    if (flags.json === true) printJson({ device: name, from: outcome.fact?.body.from, last })
    else
      print(
        `${name} is trusted no more${last === null ? '' : ` after its fact ${last.seq}`}. Facts it sends from now on are refused and stay on it.`,
      )
  })
}

function unknown(device: string): CouldNot {
  return new CouldNot(`No device ${device} is known here.`, 'See: shearline device list.')
}
