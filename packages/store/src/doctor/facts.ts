import {
  canonicalJson,
  envelope,
  type Fact,
  makeRecord,
  sha256OfBytes,
  signedText,
  type Verifier,
  verifyRecord,
} from '@shearline/jobfile'
import type { Kysely, Selectable } from 'kysely'
import { factsOfJob } from '../kept/rows.ts'
import { digestOf } from '../tables/digest.ts'
import type { Tables } from '../tables/tables.ts'
import type { KnownDevices } from './devices.ts'
import { type Notes, restore } from './finding.ts'

/** Facts read and verified at a time. */
const factsAtOnce = 500

const text = new TextEncoder()

/** What the chain of a device is checked by. */
interface Link {
  readonly seq: number
  readonly hash: string
  readonly prev: string | null
  readonly where: string
}

type FactRow = Selectable<Tables['facts']>

/** Checks every fact by itself, then the chains they form, then every seal over them. */
export async function checkFacts(
  db: Kysely<Tables>,
  devices: KnownDevices,
  verifier: Verifier,
  notes: Notes,
): Promise<void> {
  const chains = new Map<string, Link[]>()
  const sealed = new Set<string>()
  // In order of arrival, which is the table itself: a damaged index cannot hide a row.
  for (let last = 0; ; ) {
    const rows = await db
      .selectFrom('facts')
      .selectAll()
      .where('arrival', '>', last)
      .orderBy('arrival')
      .limit(factsAtOnce)
      .execute()
    if (rows.length === 0) break
    last = rows.at(-1)?.arrival ?? last
    await Promise.all(rows.map((row) => checkFact(row, devices, verifier, notes)))
    for (const row of rows) {
      const chain = chains.get(row.device) ?? []
      chains.set(row.device, chain)
      chain.push({ seq: row.seq, hash: row.hash, prev: row.prev, where: placeOf(row) })
      if (row.kind === 'document-sealed') sealed.add(row.job)
    }
    notes.looked.facts += rows.length
  }
  for (const [device, chain] of chains) checkChain(device, chain, devices, notes)
  for (const [device, { head }] of devices)
    if (head.seq > 0 && !chains.has(device))
      notes.say('chain-end-wrong', `device ${device}`, `Its ${head.seq} facts are gone.`, restore)
  for (const job of sealed) await checkSeal(db, job, devices, verifier, notes)
}

function placeOf(row: Pick<FactRow, 'seq' | 'device' | 'kind' | 'arrival'>): string {
  return `fact ${row.seq} of ${row.device} (${row.kind}, arrival ${row.arrival})`
}

async function checkFact(
  row: FactRow,
  devices: KnownDevices,
  verifier: Verifier,
  notes: Notes,
): Promise<void> {
  const where = placeOf(row)
  const fact = readFact(row.fact)
  if (fact === null) {
    notes.say('fact-unreadable', where, 'Its text is not a fact any more.', restore)
    return
  }
  const wrong = (['device', 'seq', 'id', 'job', 'at', 'kind', 'prev'] as const).filter(
    (member) => fact[member] !== row[member],
  )
  if (wrong.length > 0)
    notes.say('fact-changed', where, `Its text says another ${wrong.join(', ')} than its row.`, restore)
  // The text is kept as it was signed; one that reads the same but is written otherwise was changed too.
  else if (canonicalJson(fact) !== row.fact)
    notes.say('fact-changed', where, 'Its text is not written as it was kept.', restore)
  const signed = signedText(fact)
  const { hash, received, received_digest: receipt } = row
  if (receipt !== (received === null ? null : digestOf.receipt({ hash, received })))
    notes.say('receipt-changed', where, 'The time at which it was received was changed.', restore)
  if (sha256OfBytes(signed) !== hash)
    notes.say('fact-changed', where, 'Its content does not hash to what was kept beside it.', restore)
  const key = devices.get(row.device)?.device.publicKey
  if (key !== undefined && (await verifier.verify(key, fact.sig, text.encode(signed)))) {
    notes.looked.signatures++
    return
  }
  notes.say('signature-wrong', where, 'Its content and its signature do not belong together.', restore)
}

function readFact(value: string): Fact | null {
  try {
    return envelope.safeParse(JSON.parse(value)).data ?? null
  } catch {
    return null
  }
}

/** Links between neighbours, numbers used twice, gaps, and where the device's row says that the chain ends. */
function checkChain(device: string, chain: Link[], devices: KnownDevices, notes: Notes): void {
  chain.sort((a, b) => a.seq - b.seq)
  let end = 0
  let endHash: string | null = null
  for (const [index, link] of chain.entries()) {
    const before = chain[index - 1]
    const follows = before?.seq === link.seq - 1
    if (before?.seq === link.seq)
      notes.say('link-broken', link.where, `Its device has two facts with number ${link.seq}.`, restore)
    else if (follows && link.prev !== before.hash)
      notes.say(
        'link-broken',
        link.where,
        `It does not follow ${before.where}: one of them was changed.`,
        restore,
      )
    else if ((link.seq === 1) !== (link.prev === null))
      notes.say('link-broken', link.where, 'Only the first fact of a device has nothing before it.', restore)
    else notes.looked.links++
    if (link.seq === end + 1) {
      end = link.seq
      endHash = link.hash
    } else if (!follows && before?.seq !== link.seq)
      notes.say(
        'chain-gap',
        `device ${device}`,
        `Its facts ${(before?.seq ?? 0) + 1} to ${link.seq - 1} are not here.`,
        'That is so when a single job was imported. If this device sends its whole chain here, let it send again.',
        'note',
      )
  }
  const head = devices.get(device)?.head
  if (head !== undefined && (head.seq !== end || head.hash !== endHash))
    notes.say(
      'chain-end-wrong',
      `device ${device}`,
      `Its row says that its chain ends with fact ${head.seq}, but its facts are whole up to ${end}.`,
      restore,
    )
}

/** The latest seal of a job against the facts before it. */
async function checkSeal(
  db: Kysely<Tables>,
  job: string,
  devices: KnownDevices,
  verifier: Verifier,
  notes: Notes,
): Promise<void> {
  notes.looked.seals++
  const known = [...devices.values()].map(({ device }) => device)
  const check = await verifyRecord(makeRecord(job, await factsOfJob(db, job), known), verifier)
  for (const { code, severity, where, what } of check.findings)
    if (
      severity === 'error' &&
      (code === 'facts-missing' || code === 'facts-added' || code === 'tree-head-wrong')
    )
      notes.say('seal-broken', `job ${job}, ${where.part ?? 'seal'}`, what, restore)
}
