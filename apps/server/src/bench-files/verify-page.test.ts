import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Hono } from 'hono'
import { describe, expect, it } from 'vitest'
import { Problem } from '../problem/index.ts'
import { offerVerifyPage } from './verify-page.ts'

describe('the verify page offered by the server', () => {
  it('comes as a file to keep, byte for byte as it was built', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'verify-page-'))
    try {
      const file = join(folder, 'verify.html')
      writeFileSync(file, '<!doctype html>é')
      const app = new Hono()
      offerVerifyPage(app, file)
      const answer = await app.request('/verify.html')
      expect(answer.status).toBe(200)
      expect(answer.headers.get('content-disposition')).toBe('attachment; filename="verify.html"')
      expect(await answer.text()).toBe('<!doctype html>é')
    } finally {
      rmSync(folder, { recursive: true, force: true })
    }
  })

  it('says how to build it when it is not there', async () => {
    const app = new Hono()
    offerVerifyPage(app, join(tmpdir(), 'not-there', 'verify.html'))
    app.onError((error, c) => c.json({ is: error instanceof Problem, what: error.message }, 503))
    expect(await (await app.request('/verify.html')).json()).toMatchObject({ is: true })
  })
})
