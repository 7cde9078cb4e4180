import { createHash, webcrypto } from 'node:crypto'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Verifier, verifyFacts } from '@shearline/jobfile'
import { examine, openStore, type Store } from '@shearline/store'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import {
  PostgresServer,
  postgresAbsent,
  postgresPrograms,
} from '../../packages/store/src/testing/postgres.ts'
import { type Draw, drawing } from '../fuzz/draw.ts'
import { Tablet } from './device.ts'
import { ServerProcess } from './server.ts'

/** Rounds on each database; fewer for a quick look. */
const rounds = Number(process.env.SHEARLINE_KILL_ROUNDS ?? 50)

/** Writes the three tablets begin in a round; the kill comes somewhere in between. */
const writesInRound = 200

let folder: string
beforeAll(async () => {
  // On a disk: the server's own files are what the kill must not hurt.
  folder = await mkdtemp(join(tmpdir(), 'shearline-killed-'))
})
afterAll(async () => {
  await rm(folder, { recursive: true, force: true, maxRetries: 5 })
})

/** Counts writes of all tablets, and ends the server at a drawn one. */
class Round {
  writes = 0
  readonly #killAt: number
  readonly server: ServerProcess
  killed: Promise<void> | null = null

  constructor(draw: Draw, server: ServerProcess) {
    this.#killAt = 1 + draw(writesInRound - 1)
    this.server = server
  }

  /** True as long as there is something to write. */
  begin(): boolean {
    this.writes++
    if (this.writes >= this.#killAt) this.killed ??= this.server.end('SIGKILL')
    return this.killed === null && this.writes < writesInRound
  }
}

/** One tablet writes and sends, one request after the other, until the server is gone. Keeps acknowledged blobs. */
async function keepWriting(tablet: Tablet, job: string, round: Round, draw: Draw, blobs: Set<string>) {
  const at = (minute: number) => new Date(Date.UTC(2026, 10, 25, 9, minute % 600)).toISOString()
  try {
    while (round.begin()) {
      if (draw(12) === 0) {
        const bytes = Buffer.alloc(1 + draw(200_000), draw(256))
        const sha256 = createHash('sha256').update(bytes).digest('hex')
        const put = await fetch(`${round.server.url}api/blobs/${sha256}`, { method: 'PUT', body: bytes })
        if (put.ok) blobs.add(sha256)
        continue
      }
      for (let facts = 1 + draw(4); facts > 0; facts--)
        await tablet.write({
          job,
          at: at(tablet.written.length),
          kind: 'note-written',
          body: { text: `${draw(1e6)}` },
        })
      const facts = tablet.nextBatch()
      const { status, body } = await round.server.post('api/facts', { facts })
      if (status === 200) tablet.hear({ ok: true, facts })
      else tablet.hear({ ok: false, code: body.error?.code ?? '' })
    }
  } catch (error) {
    // The line breaks when the server is killed; anything earlier is a fault.
    if (round.killed === null) throw error
  }
}

async function killAgainAndAgain(name: string, data: string, database?: string): Promise<void> {
  const draw = drawing(name.length)
  const place = database === undefined ? {} : { database }
  const tablets = await Promise.all(['one', 'two', 'three'].map((one) => Tablet.make(`Tablet ${one}`)))
  const devices = tablets.map(({ device }) => device)
  const blobs = new Set<string>()
  let resent = 0
  const first = await openStore(data, place)
  for (const device of devices) expect((await first.enrol(device)).ok).toBe(true)
  await first.close()
  for (let number = 1; number <= rounds; number++) {
    const job = `round-${number}`
    const round = new Round(draw, await ServerProcess.start(data, database))
    await Promise.all(tablets.map((tablet) => keepWriting(tablet, job, round, draw, blobs)))
    await round.killed
    await round.server.end('SIGKILL')

    const store = await openStore(data, place)
    await checkRound(store, job, number)
    // What was not acknowledged is sent again, whether or not it had arrived.
    for (const tablet of tablets) {
      const facts = tablet.nextBatch()
      resent += facts.length
      if (facts.length === 0) continue
      const taken = await store.appendFacts(facts, { from: 'device' })
      expect(taken.ok).toBe(true)
      tablet.hear({ ok: true, facts })
    }
    await checkRound(store, job, number)
    await store.close()
  }
  const { findings, looked } = await examine({ data, ...place })
  expect(findings.filter(({ severity }) => severity === 'error')).toEqual([])
  expect(looked.facts).toBe(tablets.reduce((sum, { written }) => sum + written.length, 0))
  expect(looked.blobs).toBeGreaterThanOrEqual(blobs.size)
  expect(resent).toBeGreaterThan(0)

  async function checkRound(store: Store, job: string, number: number): Promise<void> {
    const facts = await store.factsOfJob(job)
    const times = Map.groupBy(facts, ({ id }) => id)
    for (const { acknowledged } of tablets)
      for (const fact of acknowledged.values())
        if (fact.job === job)
          expect(times.get(fact.id), `fact ${fact.seq} of round ${number}`).toEqual([fact])
    const check = await verifyFacts(facts, devices, new Verifier(webcrypto.subtle))
    expect(check.findings).toEqual([])
    expect(check.linksRight).toBe(facts.length)
    for (const sha256 of blobs)
      expect(await store.blobEntry(sha256), `blob of round ${number}`).not.toBeNull()
  }
}

describe(`a server killed in the middle of ${writesInRound} writes, ${rounds} times`, () => {
  test.concurrent('on SQLite has every acknowledged fact exactly once', { timeout: 1_800_000 }, () =>
    killAgainAndAgain('SQLite', join(folder, 'data')),
  )

  const absent = postgresPrograms === null
  test
    .skipIf(absent)
    .concurrent(
      absent ? `PostgreSQL: ${postgresAbsent}` : 'on PostgreSQL has every acknowledged fact exactly once',
      { timeout: 1_800_000 },
      async () => {
        const server = new PostgresServer()
        try {
          await killAgainAndAgain('PostgreSQL', join(folder, 'firm'), await server.makeDatabase())
        } finally {
          server.remove()
        }
      },
    )
})
