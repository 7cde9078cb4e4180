import { createHash } from 'node:crypto'
import { rm } from 'node:fs/promises'
import { join } from 'node:path'
import { beforeEach, describe, expect, test } from 'vitest'
import { type Answer, ask, askJson, withServer } from '../testing/running.ts'
import { problemCodes } from './problem.ts'

interface Address {
  readonly method: string
  readonly path: string
  /** True when it takes a JSON body. */
  readonly takesJson: boolean
  readonly params: readonly string[]
}

const place = withServer()
let port: number
let addresses: readonly Address[]

beforeEach(async () => {
  port = place().running.port
  const { body } = await askJson(port, '/api/openapi.json')
  addresses = Object.entries<Record<string, { requestBody?: unknown }>>(body.paths).flatMap(
    ([path, methods]) =>
      Object.entries(methods).map(([method, { requestBody }]) => ({
        method: method.toUpperCase(),
        path,
        takesJson: requestBody !== undefined,
        params: [...path.matchAll(/\{(\w+)\}/g)].map((match) => match[1] ?? ''),
      })),
  )
  expect(addresses.length).toBeGreaterThan(10)
})

/** Addresses that take JSON, with a body each of them takes. A new one belongs here. */
const bodies: Readonly<Record<string, object>> = {
  'POST /api/devices': {},
  'POST /api/facts': { facts: [] },
  'POST /api/jobs/{job}/seal': { by: 'Robin' },
  'PUT /api/jobs/{job}/document': {
    seal: '11111111-1111-4111-8111-111111111111',
    blob: '0'.repeat(64),
  },
}

/** Fills an address's parameters with values that are well formed and stand for nothing. */
function filled(path: string): string {
  return path.replace('{job}', 'job-nowhere').replace('{sha256}', '0'.repeat(64))
}

/** Checks the one shape: a known code, words, and nothing else but what that code adds. */
function expectProblem(answer: Answer, status: number, code: (typeof problemCodes)[number]): void {
  expect(answer.headers['content-type']).toMatch(/^application\/json/)
  expect(answer.headers['x-content-type-options']).toBe('nosniff')
  const body = JSON.parse(answer.text)
  expect(Object.keys(body)).toEqual(['error'])
  expect([answer.status, body.error.code], answer.text).toEqual([status, code])
  expect(problemCodes).toContain(body.error.code)
  const { code: _code, where, what, doNext, ...more } = body.error
  for (const words of [what, doNext, ...(where === undefined ? [] : [where])]) {
    expect(typeof words).toBe('string')
    expect(words.length).toBeGreaterThan(0)
  }
  expect(more).toEqual({})
}

describe('one shape for every address', () => {
  test('a method it does not take', async () => {
    for (const path of new Set(addresses.map((address) => address.path))) {
      const allowed = addresses.filter((address) => address.path === path).map(({ method }) => method)
      // A method of WebDAV (RFC 4918, 9.1), which no address takes.
      const answer = await ask(port, filled(path), { method: 'PROPFIND' })
      expectProblem(answer, 405, 'wrong-method')
      const told = String(answer.headers.allow).split(', ')
      expect(told.filter((method) => method !== 'HEAD').sort()).toEqual(allowed.sort())
    }
  })

  test('another host', async () => {
    for (const { method, path } of addresses) {
      for (const host of ['shearline.example', `192.0.2.1:${port}`, 'localhost.example', '']) {
        expectProblem(await ask(port, filled(path), { method, headers: { host } }), 403, 'wrong-host')
      }
    }
  })

  test('a page of another site', async () => {
    for (const { method, path } of addresses) {
      for (const headers of [
        { origin: 'https://shearline.example' },
        { origin: 'null' },
        { origin: 'http://localhost:1' },
        { origin: `https://127.0.0.1:${port}` },
        { 'sec-fetch-site': 'cross-site' },
        { 'sec-fetch-site': 'same-site' },
      ]) {
        expectProblem(await ask(port, filled(path), { method, headers }), 403, 'foreign-origin')
      }
    }
  })

  test('a body that is not JSON', async () => {
    const taking = addresses.filter(({ takesJson }) => takesJson)
    expect(taking.map(({ method, path }) => `${method} ${path}`).sort()).toEqual(Object.keys(bodies).sort())
    for (const { method, path } of taking) {
      const headers = { 'content-type': 'application/json' }
      expectProblem(await ask(port, filled(path), { method, headers, body: '{"facts": [' }), 400, 'bad-json')
      expectProblem(await ask(port, filled(path), { method, headers }), 400, 'bad-json')
    }
  })

  test('a body of another media type', async () => {
    for (const { method, path } of addresses.filter(({ takesJson }) => takesJson)) {
      const headers = { 'content-type': 'text/plain' }
      expectProblem(await ask(port, filled(path), { method, headers, body: '{}' }), 415, 'wrong-media-type')
    }
  })

  test('a body of wrong types', async () => {
    for (const { method, path } of addresses.filter(({ takesJson }) => takesJson)) {
      for (const body of ['null', '[]', '7', '{}', '{"facts":7,"by":7,"device":7}']) {
        const headers = { 'content-type': 'application/json' }
        expectProblem(await ask(port, filled(path), { method, headers, body }), 422, 'wrong-form')
      }
    }
  })

  test('a parameter that cannot be one', async () => {
    for (const { method, path, params } of addresses.filter(({ params }) => params.length > 0)) {
      const wrong = path.replace(/\{\w+\}/, 'NOT%20ONE')
      const headers = { 'content-type': 'application/json' }
      const body = method === 'POST' ? '{"by":"Robin"}' : undefined
      const answer = await ask(port, wrong, { method, headers, ...(body === undefined ? {} : { body }) })
      expectProblem(answer, 422, 'wrong-form')
      expect(JSON.parse(answer.text).error.where).toContain(params[0])
    }
  })

  test('a job that is not here', async () => {
    for (const { method, path } of addresses.filter(({ params }) => params.includes('job'))) {
      const taken = bodies[`${method} ${path}`]
      const body = taken === undefined ? {} : { body: JSON.stringify(taken) }
      const headers = { 'content-type': 'application/json' }
      expectProblem(await ask(port, filled(path), { method, headers, ...body }), 404, 'unknown-job')
    }
  })

  test('bytes that are not here', async () => {
    expectProblem(await ask(port, filled('/api/blobs/{sha256}')), 404, 'unknown-blob')
  })

  test('an address that is not one', async () => {
    for (const path of ['/api', '/api/', '/api/nothing', '/api/jobs/a/b/c', '/assets/nothing.js']) {
      expectProblem(await ask(port, path), 404, 'unknown-path')
    }
    expectProblem(await ask(port, '/', { method: 'DELETE' }), 404, 'unknown-path')
  })

  test('an address that cannot be read', async () => {
    expectProblem(await ask(port, '/api\\jobs'), 400, 'wrong-form')
  })

  test('more bytes than one request may carry', async () => {
    const body = `{"facts":["${'x'.repeat(33 * 1024 * 1024)}"]}`
    const headers = { 'content-type': 'application/json' }
    expectProblem(await ask(port, '/api/facts', { method: 'POST', headers, body }), 413, 'too-large')
  })

  test('bytes whose file is gone from the disk, until they are sent again', async () => {
    const sha256 = createHash('sha256').update('abc').digest('hex')
    const address = `/api/blobs/${sha256}`
    await ask(port, address, { method: 'PUT', body: 'abc' })
    await rm(join(place().data, 'blobs', sha256.slice(0, 2)), { recursive: true })
    expectProblem(await ask(port, address), 500, 'blob-missing')
    expect((await ask(port, address, { method: 'HEAD' })).status).toBe(404)
    await ask(port, address, { method: 'PUT', body: 'abc' })
    expect((await ask(port, address)).text).toBe('abc')
  })
})
