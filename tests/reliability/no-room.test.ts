import { spawnSync } from 'node:child_process'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { DatabaseSync } from 'node:sqlite'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { Tablet } from './device.ts'
import { type Posted, ServerProcess } from './server.ts'

let folder: string
let server: ServerProcess | null = null
let tablet: Tablet

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'shearline-room-'))
  tablet = await Tablet.make('Van tablet')
})
afterEach(async () => {
  await server?.end('SIGTERM')
  server = null
  await rm(folder, { recursive: true, force: true, maxRetries: 5 })
})

/** Writes facts and sends what is unsent; answers with what the server said. */
async function writeAndSend(words: string, count = 1): Promise<{ status: number; body: Posted }> {
  if (server === null) throw new Error('the server was started')
  for (let i = 0; i < count; i++)
    await tablet.write({
      job: 'job-a',
      at: new Date(Date.UTC(2026, 10, 25, 9, tablet.written.length % 600)).toISOString(),
      kind: 'note-written',
      body: { text: words },
    })
  const facts = tablet.nextBatch()
  const said = await server.post('api/facts', { facts })
  tablet.hear(said.status === 200 ? { ok: true, facts } : { ok: false, code: said.body.error?.code ?? '' })
  return said
}

/** What the server has of the job. */
async function kept(): Promise<readonly { id: string }[]> {
  const answer = await fetch(`${server?.url}api/jobs/job-a/facts`)
  return ((await answer.json()) as { facts: { id: string }[] }).facts
}

describe('a server that cannot write', () => {
  test('says that the disk is full and what to do; the tablet keeps its facts and sends them when there is room', async (context) => {
    if (process.platform !== 'linux' || spawnSync('unshare', ['-rm', 'true']).status !== 0)
      context.skip('needs Linux and unshare, to mount a small disk of its own')
    const mount =
      'mount -t tmpfs -o size=5m tmpfs "$1" && head -c 1500000 /dev/zero > "$1/ballast" && shift && exec "$@"'
    server = await ServerProcess.start(join(folder, 'data'), '', [
      ...['unshare', '-rm', 'sh', '-c', mount, 'sh', folder],
    ])
    expect((await server.post('api/devices', tablet.device)).status).toBe(200)
    let said: { status: number; body: Posted }
    do said = await writeAndSend('x'.repeat(1900), 40)
    while (said.status === 200 && tablet.written.length < 8000)
    expect(said.status).toBe(507)
    expect(said.body.error).toMatchObject({ code: 'disk-full' })
    expect(said.body.error?.doNext).toContain('stays on the device')
    expect(tablet.outbox.size).toBe(40)
    expect(await kept()).toHaveLength(tablet.written.length - 40)

    // The small disk is seen only from inside; its files are reached through the process that is there.
    await rm(`/proc/${server.child.pid}/root${folder}/ballast`)
    said = await writeAndSend('there is room again')
    expect([said.status, said.body]).toEqual([200, { accepted: 41, already: 0 }])
    expect(tablet.outbox.size).toBe(0)
    expect((await kept()).map(({ id }) => id).sort()).toEqual(tablet.written.map(({ id }) => id).sort())
  })

  test('says that the database is locked; the tablet keeps its facts and sends them when it is free', async () => {
    server = await ServerProcess.start(join(folder, 'data'))
    expect((await server.post('api/devices', tablet.device)).status).toBe(200)
    expect((await writeAndSend('before')).status).toBe(200)
    const holder = new DatabaseSync(join(folder, 'data', 'shearline.sqlite'))
    holder.exec('begin immediate')
    const said = await writeAndSend('meanwhile')
    expect(said.status).toBe(503)
    expect(said.body.error).toMatchObject({ code: 'locked' })
    expect(said.body.error?.doNext).toContain('Try again')
    expect(tablet.outbox.size).toBe(1)
    // Reading goes on.
    expect(await kept()).toHaveLength(1)
    holder.exec('rollback')
    holder.close()
    expect((await writeAndSend('after')).body).toEqual({ accepted: 2, already: 0 })
    expect(await kept()).toHaveLength(3)
  })
})
