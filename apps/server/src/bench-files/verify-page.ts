/** @module The page that proves documents without this server, to be saved and kept. */
import { readFile } from 'node:fs/promises'
import type { Hono } from 'hono'
import { Problem } from '../problem/index.ts'

/** Offers the built verify page as a download. */
export function offerVerifyPage(app: Hono, file: string): void {
  app.get('/verify.html', async (c) => {
    const html = await readFile(file).catch(() => null)
    if (html === null)
      throw new Problem(503, 'bench-not-built', {
        what: 'The verify page has not been built yet.',
        doNext: 'Run "npm start" in the project folder; it builds the page first.',
      })
    // To be opened from where it was saved: its own policy, not that of the bench, says what it may do.
    c.header('Content-Disposition', 'attachment; filename="verify.html"')
    c.header('Content-Type', 'text/html; charset=utf-8')
    c.header('Cache-Control', 'no-cache')
    return c.body(new Uint8Array(html))
  })
}
