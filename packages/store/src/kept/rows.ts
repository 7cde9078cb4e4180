import { canonicalJson, compareFacts, type Fact } from '@shearline/jobfile'
import { type Kysely, sql, type Transaction } from 'kysely'
import type { Arriving, Held } from '../append/index.ts'
import { digestOf } from '../tables/digest.ts'
import type { Tables } from '../tables/tables.ts'

/** Rows in one insert and values in one `in` list: well under the limits of every database. */
const chunkSize = 500

/** The facts of a job in fold order. */
export async function factsOfJob(db: Kysely<Tables>, job: string): Promise<readonly Fact[]> {
  const rows = await db.selectFrom('facts').where('job', '=', job).select('fact').execute()
  // Ordered here and not by the database, whose text order may follow a language.
  return rows.map((row) => JSON.parse(row.fact) as Fact).sort(compareFacts)
}

/** When facts of a job were received here, by identifier; those that came before receipts were kept are left out. */
export async function receivedOfJob(db: Kysely<Tables>, job: string): Promise<ReadonlyMap<string, string>> {
  const rows = await db.selectFrom('facts').where('job', '=', job).select(['id', 'received']).execute()
  return new Map(rows.flatMap(({ id, received }) => (received === null ? [] : [[id, received] as const])))
}

/** What is held of one fact, and whose it is. */
interface HeldOf extends Held {
  readonly device: string
}

/** Where a device's chain ends, by its row. */
export interface Head {
  readonly device: string
  readonly seq: number
  readonly hash: string | null
}

/** Reads where chains end, in the order in which a database that locks rows must lock them. */
export function selectHeads(transaction: Transaction<Tables>, devices: readonly string[]) {
  return transaction
    .selectFrom('devices')
    .where('device', 'in', devices)
    .orderBy('device')
    .select(['device', 'head_seq as seq', 'head_hash as hash'])
}

/** Moves the ends of chains, all in one statement: a round trip each would cost more than the commit. */
export async function moveHeads(transaction: Transaction<Tables>, heads: readonly Head[]): Promise<void> {
  for (const some of chunks(heads)) {
    const rows = some.map(
      ({ device, seq, hash }) =>
        sql`(cast(${device} as text), cast(${seq} as integer), cast(${hash} as text))`,
    )
    await sql`with moved (device, seq, hash) as (values ${sql.join(rows)})
      update devices set head_seq = moved.seq, head_hash = moved.hash
      from moved where moved.device = devices.device`.execute(transaction)
  }
}

/**
 * What judgeChain needs to know of each device: the arriving facts, their neighbours, and all beyond its head.
 * `heads` are the ends of the chains, locked by this transaction.
 */
export async function heldAround(
  transaction: Transaction<Tables>,
  heads: readonly Head[],
  arriving: readonly Arriving[],
): Promise<ReadonlyMap<string, Map<number, Held>>> {
  const devices = heads.map(({ device }) => device)
  const held = await heldBeyond(transaction, heads)
  const ends = new Map(heads.map((head) => [head.device, head]))
  for (const [device, ones] of Map.groupBy(arriving, ({ fact }) => fact.device)) {
    const end = ends.get(device)?.seq ?? 0
    const near = ones.flatMap(({ fact: { seq } }) => [seq - 1, seq, seq + 1])
    const wanted = [...new Set(near.filter((seq) => seq < end))]
    for (const some of chunks(wanted))
      held.push(
        ...(await transaction
          .selectFrom('facts')
          .where('device', '=', device)
          .where('seq', 'in', some)
          .select(['device', 'seq', 'hash', 'prev'])
          .execute()),
      )
  }
  const around = new Map(devices.map((device) => [device, new Map<number, Held>()]))
  for (const { device, seq, hash, prev } of held) around.get(device)?.set(seq, { seq, hash, prev })
  // The end itself is known from its device; nothing that can still arrive comes before it, so its `prev` is not asked.
  for (const { device, seq, hash } of heads)
    if (hash !== null) around.get(device)?.set(seq, { seq, hash, prev: null })
  return around
}

/**
 * What is held beyond the ends of chains: only a bundle leaves such. The last number of each device is asked for
 * first, because one look into the index answers that; a database that knows nothing yet of its tables would answer
 * "all beyond" by reading every fact it holds.
 */
async function heldBeyond(transaction: Transaction<Tables>, heads: readonly Head[]): Promise<HeldOf[]> {
  const ends = new Map(heads.map(({ device, seq }) => [device, seq]))
  const last = await transaction
    .selectFrom('devices')
    .where('device', 'in', [...ends.keys()])
    .select(({ selectFrom }) => [
      'device',
      selectFrom('facts')
        .whereRef('facts.device', '=', 'devices.device')
        .select(({ fn }) => fn.max('facts.seq').as('seq'))
        .as('seq'),
    ])
    .execute()
  const beyond: HeldOf[] = []
  for (const { device, seq } of last)
    if ((seq ?? 0) > (ends.get(device) ?? 0))
      beyond.push(
        ...(await transaction
          .selectFrom('facts')
          .where('device', '=', device)
          .where('seq', '>', ends.get(device) ?? 0)
          .select(['device', 'seq', 'hash', 'prev'])
          .execute()),
      )
  return beyond
}

/** Writes facts in the order in which they came, `received` at this UTC instant. */
export async function insertFacts(
  transaction: Transaction<Tables>,
  arriving: readonly Arriving[],
  received: string,
): Promise<void> {
  const rows = arriving.map((one) => rowOf(one, received))
  for (const some of chunks(rows)) await transaction.insertInto('facts').values(some).execute()
}

/** Splits a list into pieces that every database takes in one statement. */
export function* chunks<T>(all: readonly T[]): Generator<T[]> {
  for (let at = 0; at < all.length; at += chunkSize) yield all.slice(at, at + chunkSize)
}

function rowOf({ fact, hash }: Arriving, received: string) {
  const { device, seq, id, job, at, kind, prev } = fact
  const received_digest = digestOf.receipt({ hash, received })
  return { device, seq, id, job, at, kind, prev, hash, fact: canonicalJson(fact), received, received_digest }
}
