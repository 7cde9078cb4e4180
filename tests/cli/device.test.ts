import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { openStore } from '@shearline/store'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { serve } from '../../apps/server/src/index.ts'
import { note, OtherDevice } from '../../packages/store/src/testing/devices.ts'
import { shearline } from '../support/shearline.ts'

let folder = ''
let data = ''
const run = (...args: string[]) => shearline(args, { env: { SHEARLINE_DATA: data, SHEARLINE_BY: 'office' } })
const listed = () => JSON.parse(run('device', 'list', '--json').out)

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'shearline-device-'))
  data = join(folder, 'data')
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

describe('shearline device', () => {
  it('a device the server enrols stands in the register; once revoked, its later facts are refused and not trusted', async () => {
    const server = await serve({ data, port: 0 })
    const post = async (path: string, body: unknown) => {
      const answer = await fetch(new URL(path, server.url), {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify(body),
      })
      return { status: answer.status, body: (await answer.json()) as Record<string, unknown> }
    }
    try {
      const tablet = await OtherDevice.make('Van tablet')
      const { device } = tablet.device
      expect((await post('/api/devices', tablet.device)).status).toBe(200)
      const early = [await tablet.write(note('job-a', 'one')), await tablet.write(note('job-a', 'two', 1))]
      expect((await post('/api/facts', { facts: early })).body).toEqual({ accepted: 2, already: 0 })
      expect(listed()).toMatchObject({
        devices: [
          { device: server.store.device.device, own: true, standing: 'stands' },
          { device, name: 'Van tablet', own: false, last: 2, standing: 'stands' },
        ],
        troubles: [],
      })

      // The server goes on running while the office revokes by the command line.
      const revoked = run('device', 'revoke', device, '--because', 'stolen', '--why', 'Van broken into.')
      expect([revoked.code, revoked.err]).toEqual([0, ''])
      expect(revoked.out).toContain('after its fact 2')
      const late = await tablet.write(note('job-a', 'three', 2))
      const refused = await post('/api/facts', { facts: [late] })
      expect(refused).toMatchObject({ status: 403, body: { error: { code: 'device-revoked' } } })
      expect(JSON.stringify(refused.body)).toContain('Van broken into.')
      expect(JSON.stringify(refused.body)).toContain('stay on the device')
      expect(run('device', 'list').out).toContain('revoked (stolen)')

      const record = run('job', 'export', 'job-a')
      expect(record.code).toBe(0)
      const parsed = JSON.parse(record.out)
      expect(parsed.register).toHaveLength(3)
      // The fact the server did not take, put into a record by whoever holds the key.
      const forged = JSON.stringify({ ...parsed, facts: [...parsed.facts, late] })
      const verified = shearline(['verify', '-', '--json'], { input: forged })
      expect(verified.code).toBe(1)
      const { findings } = JSON.parse(verified.out) as { findings: { where: string; what: string }[] }
      expect(findings.filter(({ what }) => what.startsWith('Not trusted'))).toMatchObject([
        { where: expect.stringContaining('fact 3') },
      ])
      // Taken in by another way, it is shown in the data folder too.
      await server.store.appendFacts([late], { from: 'bundle' })
      expect(run('verify', data).out).toMatch(/job-a, fact 3 \(note-written\).*Not trusted/)
    } finally {
      await server.close()
    }
  })

  it('revokes after a number, refuses what cannot be, and says so', async () => {
    const store = await openStore(data)
    const tablet = await OtherDevice.make('Van tablet')
    await store.enrol(tablet.device)
    await store.appendFacts(await tablet.writeNotes('job-a', 3), { from: 'device' })
    const own = store.device.device
    await store.close()
    const { device } = tablet.device
    const revoke = (name: string, ...more: string[]) =>
      run('device', 'revoke', name, '--because', 'lost', '--why', 'x', ...more)
    // Known here, but nobody put it into the register.
    expect(listed().devices).toMatchObject([{ standing: 'not-in-register' }, { standing: 'not-in-register' }])
    expect(revoke(device)).toMatchObject({ code: 2, err: expect.stringContaining('register') })
    expect(run('device', 'approve', device).code).toBe(0)
    expect(run('device', 'approve', device).out).toContain('already')
    for (const [name, ...more] of [
      [own],
      ['dev-0000000000000000'],
      [device, '--after', '7'],
      [device, '--after', 'two'],
    ] as const)
      expect(revoke(name, ...more).code).toBe(2)
    expect(run('device', 'revoke', device, '--because', 'bored', '--why', 'x').code).toBe(2)
    const done = revoke(device, '--after', '1', '--json')
    expect(JSON.parse(done.out)).toMatchObject({ device, last: { seq: 1 } })
    const doubts = run('verify', data).out.match(/Not trusted/g)
    expect(doubts).toHaveLength(2)
    expect(revoke(device)).toMatchObject({ code: 2, err: expect.stringContaining('already') })
  })

  it('rotates the key of the data folder, signed by the old and the new one', async () => {
    const opened = run(
      ...['job', 'open', 'van-1', '--title', 'Small van', '--place', 'Harbour', '--vehicle', 'small van'],
      ...['--zone', 'Europe/Lisbon'],
    )
    expect(opened.code).toBe(0)
    const before = readFileSync(join(data, 'device.key'), 'utf8')
    const rotated = JSON.parse(run('device', 'rotate', '--why', 'Yearly.', '--json').out)
    expect(readFileSync(join(data, 'device.key'), 'utf8')).not.toBe(before)
    const { devices, troubles } = listed()
    expect(troubles).toEqual([])
    expect(devices).toMatchObject([
      { device: rotated.old, own: false, standing: 'replaced', replaced: { by: rotated.device } },
      { device: rotated.device, own: true, standing: 'stands' },
    ])
    // The new key goes on with the same job, and everything is proven.
    expect(run('job', 'record', 'van-1', 'note-written', '-').code).toBe(2)
    const sealed = run('job', 'seal', 'van-1', '--even-if-not-ready', '--out', join(folder, 'van-1.pdf'))
    expect([sealed.code, sealed.err]).toEqual([0, ''])
    expect(run('verify', data)).toMatchObject({ code: 0, out: expect.stringContaining('Proven.') })
    const record = shearline(['verify', '-'], { input: run('job', 'export', 'van-1').out })
    expect(record).toMatchObject({ code: 0, out: expect.not.stringContaining('Not trusted') })
  })
})
