import {
  type ChainHead,
  canonicalJson,
  compareFacts,
  type Fact,
  type FactDraft,
  factHash,
  type Sign,
  type Verifier,
  writeFact,
} from '@shearline/jobfile'
import type { Kysely, Transaction } from 'kysely'
import { type Arriving, checkSignatures, type Held, judgeChain, readFacts } from '../append/index.ts'
import { type Appended, type FactSource, type Outcome, StoreError } from '../contract/index.ts'
import type { Tables } from '../tables/tables.ts'

/** Rows in one insert and values in one `in` list: well under the limits of every database. */
const chunkSize = 500

/** How often own facts are signed outside the lock before they are signed under it. */
const roundsBeforeLocking = 4

/** Appends facts of other devices; see Store.appendFacts. */
export async function appendFacts(
  db: Kysely<Tables>,
  verifier: Verifier,
  values: readonly unknown[],
  from: FactSource,
): Promise<Outcome<Appended>> {
  const read = readFacts(values)
  if (!read.ok) return read
  const devices = [...new Set(read.value.map(({ fact }) => fact.device))].sort()
  if (devices.length === 0) return { ok: true, value: { accepted: 0, already: 0 } }
  const rows = await db
    .selectFrom('devices')
    .where('device', 'in', devices)
    .select(['device', 'public_key'])
    .execute()
  const keys = new Map(rows.map((row) => [row.device, row.public_key]))
  const checked = await checkSignatures(read.value, keys, verifier)
  if (!checked.ok) return checked
  return await db.transaction().execute(async (transaction): Promise<Outcome<Appended>> => {
    const fresh: Arriving[] = []
    const heads = []
    let already = 0
    for (const device of devices) {
      const arriving = checked.value.filter(({ fact }) => fact.device === device)
      const head = await lockHead(transaction, device)
      const held = await heldAround(transaction, device, head.seq, arriving)
      const verdict = judgeChain(head, held, arriving, from)
      // Nothing has been written yet, so leaving here leaves everything as it was.
      if (!verdict.ok) return verdict
      fresh.push(...verdict.value.fresh)
      heads.push({ device, ...verdict.value.head })
      already += verdict.value.already
    }
    if (fresh.length > 0) {
      await insertFacts(transaction, fresh)
      for (const { device, seq, hash } of heads) await moveHead(transaction, device, seq, hash)
    }
    return { ok: true, value: { accepted: fresh.length, already } }
  })
}

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

/**
 * Signs drafts as the next facts of the own chain and appends them; see Store.writeOwn and writeOwnAfter.
 * Signing is done before the lock is taken, so that others can write meanwhile; when they did, it is done
 * again, and after some rounds under the lock, so that many drafts get through between many small writes.
 */
export async function writeOwn(
  db: Kysely<Tables>,
  own: { readonly device: string; readonly sign: Sign },
  work: OwnWork,
): Promise<{ readonly before: readonly Fact[]; readonly written: readonly Fact[] }> {
  for (let round = 1; round <= roundsBeforeLocking; round++) {
    const signed = await composeAndSign(db, own, work)
    const kept = await db.transaction().execute(async (transaction) => {
      const head = await lockHead(transaction, own.device)
      const same =
        head.seq === signed.head.seq &&
        (work.job === null || (await countOfJob(transaction, work.job)) === signed.before.length)
      if (same) await keepOwn(transaction, own.device, signed)
      return same
    })
    if (kept) return answer(signed)
  }
  return await db.transaction().execute(async (transaction) => {
    await lockHead(transaction, own.device)
    const signed = await composeAndSign(transaction, own, work)
    await keepOwn(transaction, own.device, signed)
    return answer(signed)
  })
}

async function composeAndSign(
  db: Kysely<Tables>,
  own: { readonly device: string; readonly sign: Sign },
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

async function keepOwn(transaction: Transaction<Tables>, device: string, signed: SignedFacts): Promise<void> {
  await refuseOwnFork(transaction, device, signed.head.seq)
  const last = signed.written.at(-1)
  if (last === undefined) return
  await insertFacts(transaction, signed.written)
  await moveHead(transaction, device, last.fact.seq, last.hash)
}

function answer({ before, written }: SignedFacts) {
  return { before, written: written.map(({ fact }) => fact) }
}

/** The facts of a job in fold order. */
export async function factsOfJob(db: Kysely<Tables>, job: string): Promise<readonly Fact[]> {
  const rows = await db.selectFrom('facts').where('job', '=', job).select('fact').execute()
  // Ordered here and not by the database, whose text order may follow a language.
  return rows.map((row) => JSON.parse(row.fact) as Fact).sort(compareFacts)
}

async function countOfJob(transaction: Transaction<Tables>, job: string): Promise<number> {
  const row = await transaction
    .selectFrom('facts')
    .where('job', '=', job)
    .select(({ fn }) => fn.countAll().as('facts'))
    .executeTakeFirstOrThrow()
  return Number(row.facts)
}

/** Reads where a device's chain ends, by an update, so that on any database this transaction alone may move it. */
async function lockHead(transaction: Transaction<Tables>, device: string) {
  const row = await transaction
    .updateTable('devices')
    .set(({ ref }) => ({ head_seq: ref('head_seq') }))
    .where('device', '=', device)
    .returning(['head_seq', 'head_hash'])
    .executeTakeFirstOrThrow()
  return { seq: row.head_seq, hash: row.head_hash }
}

async function moveHead(
  transaction: Transaction<Tables>,
  device: string,
  seq: number,
  hash: string | null,
): Promise<void> {
  await transaction
    .updateTable('devices')
    .set({ head_seq: seq, head_hash: hash })
    .where('device', '=', device)
    .execute()
}

/** What judgeChain needs to know of a device: the arriving facts, their neighbours, and all beyond its head. */
async function heldAround(
  transaction: Transaction<Tables>,
  device: string,
  head: number,
  arriving: readonly Arriving[],
): Promise<ReadonlyMap<number, Held>> {
  const wanted = new Set<number>()
  for (const { fact } of arriving)
    for (const seq of [fact.seq - 1, fact.seq, fact.seq + 1]) if (seq <= head) wanted.add(seq)
  const facts = transaction.selectFrom('facts').where('device', '=', device).select(['seq', 'hash', 'prev'])
  const held = await facts.where('seq', '>', head).execute()
  for (const some of chunks([...wanted])) held.push(...(await facts.where('seq', 'in', some).execute()))
  return new Map(held.map((row) => [row.seq, row]))
}

async function insertFacts(transaction: Transaction<Tables>, arriving: readonly Arriving[]): Promise<void> {
  const rows = [...arriving].sort((a, b) => a.index - b.index).map(rowOf)
  for (const some of chunks(rows)) await transaction.insertInto('facts').values(some).execute()
}

function rowOf({ fact, hash }: Arriving) {
  const { device, seq, id, job, at, kind, prev } = fact
  return { device, seq, id, job, at, kind, prev, hash, fact: canonicalJson(fact) }
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

function* chunks<T>(all: readonly T[]): Generator<T[]> {
  for (let at = 0; at < all.length; at += chunkSize) yield all.slice(at, at + chunkSize)
}
