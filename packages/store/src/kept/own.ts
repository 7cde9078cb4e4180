import {
  type ChainHead,
  type Fact,
  type FactDraft,
  factHash,
  isCutOff,
  type Sign,
  writeFact,
} from '@shearline/jobfile'
import type { Kysely, Transaction } from 'kysely'
import type { Arriving } from '../append/index.ts'
import type { Engine, HeldJob } from '../contract/engine.ts'
import { StoreError } from '../contract/index.ts'
import type { Tables } from '../tables/tables.ts'
import { factsOfJob, insertFacts, moveHeads } from './rows.ts'
import type { Standings } from './standings.ts'

/** How often own facts are signed outside the lock before they are signed under it. */
const roundsBeforeLocking = 4

/** Facts composed and signed after a chain's end and a job's facts as they stood when they were read. */
interface SignedFacts {
  readonly head: ChainHead
  readonly before: readonly Fact[]
  readonly written: readonly Arriving[]
}

/** What to write: for which job the drafts speak (null for none), and the drafts given that job's facts. */
export interface OwnWork {
  readonly job: string | null
  readonly compose: (before: readonly Fact[]) => readonly FactDraft[]
}

/** Who writes: the device of this directory, how devices stand in the register, and the UTC instant it is now. */
export interface OwnDevice {
  readonly device: string
  readonly sign: Sign
  readonly standings: Standings
  readonly now: () => string
}

/**
 * Signs drafts as the next facts of the own chain and appends them; see Store.writeOwn and writeOwnAfter.
 * Signing is done before the lock is taken, so that others can write meanwhile; when they did, it is done
 * again, and after some rounds under the lock, so that many drafts get through between many small writes.
 */
export async function writeOwn(
  engine: Engine,
  own: OwnDevice,
  work: OwnWork,
): Promise<{ readonly before: readonly Fact[]; readonly written: readonly Fact[] }> {
  for (let round = 1; round <= roundsBeforeLocking; round++) {
    const signed = await composeAndSign(engine.db, own, work)
    const kept = await engine.transact(async (transaction) => {
      await engine.holdJobs(transaction, heldFor(work, signed))
      const [head] = await engine.lockHeads(transaction, [own.device])
      const same =
        head?.seq === signed.head.seq &&
        (work.job === null || (await countOfJob(transaction, work.job)) === signed.before.length)
      if (same) await keepOwn(engine, transaction, own, signed)
      return same
    })
    if (kept) return answer(signed)
  }
  return await engine.transact(async (transaction) => {
    if (work.job !== null) await engine.holdJobs(transaction, [{ job: work.job, how: 'alone' }])
    await engine.lockHeads(transaction, [own.device])
    const signed = await composeAndSign(transaction, own, work)
    await engine.holdJobs(transaction, heldFor(work, signed))
    await keepOwn(engine, transaction, own, signed)
    return answer(signed)
  })
}

/** The job the drafts speak of is held alone: what they say of it must still be so when they are kept. */
function heldFor(work: OwnWork, signed: SignedFacts): readonly HeldJob[] {
  const touched = new Set(signed.written.map(({ fact }) => fact.job))
  if (work.job !== null) touched.add(work.job)
  return [...touched].map((job) => ({ job, how: job === work.job ? 'alone' : 'beside-others' }))
}

async function composeAndSign(
  db: Kysely<Tables>,
  own: Pick<OwnDevice, 'device' | 'sign'>,
  work: OwnWork,
): Promise<SignedFacts> {
  const row = await db
    .selectFrom('devices')
    .where('device', '=', own.device)
    .select(['head_seq', 'head_hash'])
    .executeTakeFirstOrThrow()
  const start: ChainHead = { seq: row.head_seq, hash: row.head_hash }
  const before = work.job === null ? [] : await factsOfJob(db, work.job)
  const written: Arriving[] = []
  let head = start
  for (const draft of work.compose(before)) {
    const { fact, head: next } = await writeFact(draft, own.device, head, own.sign)
    written.push({ index: written.length, fact, hash: next.hash ?? factHash(fact) })
    head = next
  }
  return { head: start, before, written }
}

async function keepOwn(
  engine: Engine,
  transaction: Transaction<Tables>,
  own: OwnDevice,
  signed: SignedFacts,
): Promise<void> {
  const { device } = own
  await refuseOwnFork(transaction, device, signed.head.seq)
  const last = signed.written.at(-1)
  if (last === undefined) return
  const standing = (await own.standings.read(transaction)).get(device)
  if (standing !== undefined && signed.written.some(({ fact }) => isCutOff(standing, fact)))
    throw cutOff(device)
  await insertFacts(transaction, signed.written, own.now())
  await moveHeads(transaction, [{ device, seq: last.fact.seq, hash: last.hash }])
  await engine.announce(transaction, [...new Set(signed.written.map(({ fact }) => fact.job))])
}

function cutOff(device: string): StoreError {
  return new StoreError(
    'own-device-revoked',
    `The key of this directory (${device}) was replaced or revoked, so what it writes would not be trusted.`,
    'If the key was rotated, start the program again: it then uses the new one. If it was revoked, move device.key and device.pub away and have the new device approved.',
  )
}

function answer({ before, written }: SignedFacts) {
  return { before, written: written.map(({ fact }) => fact) }
}

async function countOfJob(transaction: Transaction<Tables>, job: string): Promise<number> {
  const row = await transaction
    .selectFrom('facts')
    .where('job', '=', job)
    .select(({ fn }) => fn.countAll().as('facts'))
    .executeTakeFirstOrThrow()
  return Number(row.facts)
}

/**
 * After a database was set back to an earlier copy, facts of its own later chain can come in by a bundle.
 * Going on from the earlier end would give two facts one number, in one hand: that must not happen.
 */
async function refuseOwnFork(transaction: Transaction<Tables>, device: string, head: number): Promise<void> {
  const beyond = await transaction
    .selectFrom('facts')
    .where('device', '=', device)
    .where('seq', '>', head)
    .select('seq')
    .orderBy('seq', 'desc')
    .limit(1)
    .executeTakeFirst()
  if (beyond === undefined) return
  throw new StoreError(
    'own-chain-behind',
    `This device has written facts up to number ${beyond.seq}, but only those up to ${head} are all here.`,
    'The data was set back to an earlier copy. Import the missing facts, or move the file device.key away to go on as a new device.',
  )
}
