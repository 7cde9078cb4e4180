import { randomUUID } from 'node:crypto'
import {
  type Due,
  dueInJob,
  type FactDraft,
  neutralRetention,
  type RetentionPack,
  readRetentionPack,
  registerJob,
  say as words,
} from '@shearline/jobfile'
import type { Store } from '@shearline/store'
import type { Command } from 'commander'
import { type DataFlags, whoRecords, withStore } from '../job/data.ts'
import { CouldNot, exit, paint, print, printJson } from '../output/answer.ts'
import { jsonOf } from '../output/input.ts'
import { deleteDue, instantAfter } from '../retention/erasing.ts'

type Flags = DataFlags & { readonly json?: boolean }

/** Setting of the data folder that holds the firm's retention pack. */
const packSetting = 'retention.pack'

/** `shearline retention ...`: what is kept, what is due for deletion, and the proof of a deletion. */
export function addRetention(program: Command): void {
  const retention = program
    .command('retention')
    .description('What is kept how long; deleting it with a proof')
  const verb = (name: string, description: string) =>
    retention
      .command(name)
      .description(description)
      .option('--data <folder>', 'data folder (default: SHEARLINE_DATA, else .shearline here)')
      .option('--by <name>', 'who records (default: SHEARLINE_BY, else this user)')
      .option('--json', 'one JSON object')

  verb('due', 'List what is due for deletion. Exit 1 when something is')
    .argument('[job]', 'one job; without it all of them')
    .option('--on <day>', 'as it will stand on a day, like 2030-01-31 (default: now)')
    .action((job: string | undefined, flags: Flags & { on?: string }) => due(job, flags))
  verb('delete', 'Delete what is due in a job and record the proof. Exit 1 when nothing may be deleted')
    .argument('<job>')
    .requiredOption('--why <words>', 'why now')
    .option('--class <class>', 'only this class, like recording')
    .action((job: string, flags: Flags & { why: string; class?: string }) => remove(job, flags))
  verb('hold', 'Stop deletion in a job, for a dispute or a legal order')
    .argument('<job>')
    .requiredOption('--why <words>', 'on whose demand')
    .action((job: string, flags: Flags & { why: string }) =>
      record(job, 'hold-placed', { reason: flags.why }, flags),
    )
  verb('lift', 'End a hold')
    .argument('<job>')
    .argument('<hold>', 'its identifier, as "shearline retention due" prints it')
    .requiredOption('--why <words>', 'why it is over')
    .action((job: string, hold: string, flags: Flags & { why: string }) =>
      record(job, 'hold-lifted', { hold, reason: flags.why }, flags),
    )
  verb('pack', "Show the firm's periods, or take them from a file")
    .argument('[file]', 'a retention pack in JSON; - for standard input')
    .action((file: string | undefined, flags: Flags) => pack(file, flags))
}

/** The firm's pack, or the neutral default when it has set none. */
async function packOf(store: Store): Promise<RetentionPack> {
  const kept = await store.setting(packSetting)
  if (kept === null) return neutralRetention
  const read = readRetentionPack(JSON.parse(kept))
  if (read.ok) return read.pack
  throw new CouldNot(
    `The firm's retention pack is wrong at ${read.troubles[0]?.path}: ${read.troubles[0]?.what}.`,
    'Set it again: shearline retention pack FILE.',
  )
}

async function dueNow(store: Store, job: string | undefined, now: number): Promise<readonly Due[]> {
  const firm = await packOf(store)
  const jobs = job === undefined ? (await store.jobs()).map((entry) => entry.job) : [job]
  const found: Due[] = []
  for (const name of jobs) {
    const facts = await store.factsOfJob(name)
    if (facts.length === 0)
      throw new CouldNot(`There is no job "${name}".`, 'List them with: shearline job list.')
    if (name !== registerJob) found.push(...dueInJob(name, facts, now, firm))
  }
  return found.sort((a, b) => a.until - b.until)
}

function due(job: string | undefined, flags: Flags & { on?: string }): Promise<void> {
  return withStore(flags, async (store) => {
    const now = flags.on === undefined ? Date.now() : Date.parse(`${flags.on}T23:59:59.999Z`)
    if (Number.isNaN(now)) throw new CouldNot(`"${flags.on}" is no day.`, 'Give one like 2030-01-31.')
    const found = await dueNow(store, job, now)
    process.exitCode = found.length === 0 ? exit.answered : exit.no
    if (flags.json === true) {
      printJson({ due: found.map((one) => ({ ...one, until: new Date(one.until).toISOString() })) })
      return
    }
    if (found.length === 0) print('Nothing is due.')
    for (const one of found) {
      print(
        `${one.job.padEnd(24)} ${words('en', `retention.${one.class}`)}: ${one.items.length} ${one.items.length === 1 ? 'thing' : 'things'}, due since ${new Date(one.until).toISOString().slice(0, 10)}`,
      )
      const rule = one.stalled
        ? 'its clock never started; it was started from the last fact'
        : words('en', `trigger.${one.trigger}`, { count: one.days })
      print(`    ${rule} (${one.source})`)
      if (one.documents.length > 0)
        print(`    with ${one.documents.length} sealed document(s) that state the same`)
      for (const hold of one.heldBy)
        print(`    ${paint('held', 'yellow')} since ${hold.at} by ${hold.by}: ${hold.reason} (${hold.fact})`)
    }
  })
}

function remove(job: string, flags: Flags & { why: string; class?: string }): Promise<void> {
  return withStore(flags, async (store) => {
    const now = Date.now()
    const all = await dueNow(store, job, now)
    const asked = flags.class === undefined ? all : all.filter((one) => one.class === flags.class)
    const free = asked.filter((one) => one.heldBy.length === 0)
    if (free.length === 0) {
      const held = [...new Set(asked.flatMap((one) => one.heldBy.map((hold) => hold.reason)))]
      process.exitCode = exit.no
      if (flags.json === true) printJson({ job, deleted: [], heldBy: held })
      else print(held.length === 0 ? 'Nothing is due.' : `Nothing may be deleted: ${held.join('; ')}`)
      return
    }
    const firm = await packOf(store)
    const deleted = []
    for (const one of free) deleted.push(await deleteDue(store, one, whoRecords(flags), flags.why, firm, now))
    if (flags.json === true) printJson({ job, deleted, copiesStay })
    else {
      for (const one of deleted) {
        print(`${words('en', `retention.${one.class}`)}: ${one.items} deleted, proof ${one.proof ?? 'none'}`)
        for (const blob of one.shared) print(`    kept, because it is named elsewhere: ${blob}`)
      }
      print(copiesStay)
    }
  })
}

/** What a deletion here cannot reach, said with every one. */
const copiesStay =
  'Copies made before still hold it: backups (also those in the folder "backups" of the data folder), and what was handed out. Replace the backups by new ones; other devices delete theirs when they hear of the proof.'

function record(job: string, kind: string, body: FactDraft['body'], flags: Flags): Promise<void> {
  return withStore(flags, async (store) => {
    const facts = await store.factsOfJob(job)
    if (facts.length === 0)
      throw new CouldNot(`There is no job "${job}".`, 'List them with: shearline job list.')
    if (kind === 'hold-lifted' && !facts.some((fact) => fact.kind === 'hold-placed' && fact.id === body.hold))
      throw new CouldNot(`Job "${job}" has no hold ${String(body.hold)}.`, 'See: shearline retention due.')
    const [fact] = await store.writeOwn([
      { id: randomUUID(), job, at: instantAfter(facts, Date.now()), by: whoRecords(flags), kind, body },
    ])
    if (flags.json === true) printJson(fact)
    else print(kind === 'hold-placed' ? `Held: ${fact?.id}` : 'The hold is over.')
  })
}

function pack(file: string | undefined, flags: Flags): Promise<void> {
  return withStore(flags, async (store) => {
    if (file !== undefined) {
      const read = readRetentionPack(await jsonOf(file))
      if (!read.ok) {
        const [first] = read.troubles
        const more = read.troubles.length === 1 ? '' : ` (and ${read.troubles.length - 1} more)`
        throw new CouldNot(`${file}, ${first?.path}: ${first?.what}${more}.`, first?.doNext ?? '')
      }
      await store.putSetting(packSetting, JSON.stringify(read.pack))
    }
    const firm = await packOf(store)
    if (flags.json === true) {
      printJson(firm)
      return
    }
    print(`${paint(firm.name, 'bold')}, ${firm.region}, checked ${firm.dated}`)
    for (const rule of firm.rules)
      print(
        `${words('en', `retention.${rule.class}`).padEnd(44)} ${words('en', `trigger.${rule.trigger}`, { count: rule.days })} (${rule.source})`,
      )
    print(`A job that is never finished: ${firm.stalledAfterDays} days after its last fact.`)
  })
}
