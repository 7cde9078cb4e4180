import { mkdtemp, readdir, rm } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { connect } from 'node:net'
import { networkInterfaces, tmpdir } from 'node:os'
import { join } from 'node:path'
import type { JobSummary } from '@shearline/jobfile'
import { hc } from 'hono/client'
import { afterEach, beforeEach, describe, expect, expectTypeOf, test } from 'vitest'
import type { Api } from './api-type.ts'
import { type ServeOptions, serve } from './index.ts'
import { ask } from './testing/running.ts'

let data: string
const options = (more: Partial<ServeOptions> = {}): ServeOptions => ({
  data,
  port: 0,
  ...more,
})

beforeEach(async () => {
  data = await mkdtemp(join(tmpdir(), 'shearline-serve-'))
})
afterEach(async () => {
  await rm(data, { recursive: true, force: true })
})

describe('serving', () => {
  test('answers under every name of loopback, IPv6 too, and closes cleanly', async () => {
    const running = await serve(options())
    for (const host of [`127.0.0.1:${running.port}`, `localhost:${running.port}`, `[::1]:${running.port}`]) {
      expect((await ask(running.port, '/api/health', { headers: { host } })).status).toBe(200)
    }
    const own = { origin: `http://127.0.0.1:${running.port}`, 'sec-fetch-site': 'same-origin' }
    expect((await ask(running.port, '/api/health', { headers: own })).status).toBe(200)
    await running.close()
    await expect(ask(running.port, '/api/health')).rejects.toThrow('ECONNREFUSED')
  })

  test('cannot be reached from the network', async (context) => {
    const outward = Object.values(networkInterfaces())
      .flat()
      .find((address) => address?.family === 'IPv4' && !address.internal)?.address
    if (outward === undefined) context.skip('this machine has no address beside loopback')
    const running = await serve(options())
    const answer = await new Promise((resolve) => {
      const socket = connect(running.port, outward)
      socket.on('connect', () => resolve('connected')).on('error', (error) => resolve(error))
    })
    expect(answer).toMatchObject({ code: 'ECONNREFUSED' })
    await running.close()
  })

  test('refuses to listen beyond loopback, before it touches the data', async () => {
    await expect(serve(options({ host: '0.0.0.0' }))).rejects.toMatchObject({ code: 'not-loopback' })
    expect(await readdir(data)).toEqual([])
  })

  test('a port that is taken says so and leaves the data closed', async () => {
    const first = await serve(options())
    await expect(serve(options({ port: first.port }))).rejects.toMatchObject({ code: 'port-taken' })
    await first.close()
  })
})

describe('the type of the API', () => {
  test('types a client that works, and is nothing at run time', async () => {
    const running = await serve(options())
    const client = hc<Api>(running.url)
    const health = await client.api.health.$get()
    if (!health.ok) throw new Error('health answers')
    const body = await health.json()
    expectTypeOf(body.device.device).toEqualTypeOf<string>()
    expect(body.device).toEqual(running.store.device)
    const jobs = await client.api.jobs.$get()
    if (!jobs.ok) throw new Error('jobs answer')
    expectTypeOf((await jobs.json()).jobs[0]?.tumblers).toEqualTypeOf<JobSummary['tumblers'] | undefined>()
    // @ts-expect-error no such address
    client.api.nothing
    await running.close()
    const { resolve } = createRequire(import.meta.url)
    expect(resolve('@shearline/server')).toContain('server')
    expect(() => resolve('@shearline/server/api-type')).toThrow(
      expect.objectContaining({ code: 'ERR_PACKAGE_PATH_NOT_EXPORTED' }),
    )
  })
})
