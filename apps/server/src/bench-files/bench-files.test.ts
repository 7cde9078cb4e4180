import { rm } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { ask, withServer } from '../testing/running.ts'

const place = withServer()
const get = (path: string, headers: Record<string, string> = {}) =>
  ask(place().running.port, path, { headers })

describe('the built bench', () => {
  test('the page and the service worker are asked for anew, hashed assets are kept', async () => {
    for (const path of ['/', '/index.html', '/sw.js']) {
      const { status, headers } = await get(path)
      expect([status, headers['cache-control']]).toEqual([200, 'no-cache'])
    }
    const { status, headers } = await get('/assets/main-3f9a.js')
    expect([status, headers['cache-control']]).toEqual([200, 'public, max-age=31536000, immutable'])
    expect(headers['content-type']).toMatch(/^text\/javascript/)
  })

  test('a place inside the page gets the page, also when a link elsewhere led here', async () => {
    for (const path of ['/job/job-a', '/board', '/board?filter=today']) {
      const { status, text, headers } = await get(path, { 'sec-fetch-site': 'cross-site' })
      expect([status, text]).toEqual([200, '<!doctype html><title>Bench</title>'])
      expect(headers['cache-control']).toBe('no-cache')
    }
  })

  test('nothing outside the folder and no hidden file is given out', async () => {
    for (const path of [
      '/../outside.txt',
      '/%2e%2e/outside.txt',
      '/..%2foutside.txt',
      '/assets/..%2f..%2foutside.txt',
      '/.tsbuildinfo',
    ]) {
      const { status, text } = await get(path)
      expect(text).not.toContain('not for others')
      expect(status).toBe(404)
    }
  })

  test('a bench that was not built says so', async () => {
    await rm(join(place().bench, 'index.html'))
    const { status, text } = await get('/')
    expect([status, JSON.parse(text).error.code]).toEqual([503, 'bench-not-built'])
  })

  test('the content policy allows the bench itself, compiled WebAssembly, and no third party', async () => {
    const { headers } = await get('/')
    const policy = new Map(
      String(headers['content-security-policy'])
        .split('; ')
        .map((directive) => {
          const [name = '', ...sources] = directive.split(' ')
          return [name, sources]
        }),
    )
    expect(policy.get('default-src')).toEqual(["'none'"])
    expect(policy.get('script-src')).toEqual(["'self'", "'wasm-unsafe-eval'"])
    expect(policy.get('connect-src')).toEqual(["'self'"])
    expect(policy.get('frame-ancestors')).toEqual(["'none'"])
    for (const sources of policy.values())
      for (const source of sources)
        expect(source).toMatch(/^('self'|'none'|'wasm-unsafe-eval'|'sha256-[\w+/]+='|blob:|data:)$/)
    expect(policy.get('worker-src')).toEqual(["'self'"])
    const permissions = String(headers['permissions-policy'])
    for (const open of ['camera', 'microphone', 'serial']) expect(permissions).toContain(`${open}=(self)`)
    for (const shut of ['geolocation', 'payment', 'usb', 'hid']) expect(permissions).toContain(`${shut}=()`)
    expect(permissions).not.toContain('*')
    expect(headers['referrer-policy']).toBe('no-referrer')
    expect(headers['cross-origin-resource-policy']).toBe('same-origin')
    expect(headers['strict-transport-security']).toBeUndefined()
  })
})
