/** @module The built bench as files: the page, its hashed assets, its service worker. */
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { serveStatic } from '@hono/node-server/serve-static'
import type { Hono } from 'hono'
import { Problem, unknownPath } from '../problem/index.ts'

/** A year: names of hashed assets change with their content. */
const immutable = 'public, max-age=31536000, immutable'

/**
 * Serves `folder` for every address outside the API. Names without an ending are places inside the page and get
 * `index.html`. The page and the service worker are asked for anew each time, so that an update arrives.
 */
export function serveBench(app: Hono, folder: string): void {
  const files = serveStatic({
    root: folder,
    onFound: (path, c) => {
      const hashed = path.startsWith(join(folder, 'assets'))
      c.header('Cache-Control', hashed ? immutable : 'no-cache')
    },
  })
  const page = serveStatic({
    root: folder,
    path: 'index.html',
    onFound: (_path, c) => c.header('Cache-Control', 'no-cache'),
  })
  app.get('*', async (c, next) => {
    const name = c.req.path.slice(c.req.path.lastIndexOf('/') + 1)
    if (c.req.path.startsWith('/api') || name.startsWith('.')) throw unknownPath(c)
    if (!existsSync(join(folder, 'index.html'))) throw notBuilt()
    const found = await files(c, async () => {})
    if (found instanceof Response) return found
    if (name.includes('.')) throw unknownPath(c)
    return await page(c, next)
  })
}

function notBuilt(): Problem {
  return new Problem(503, 'bench-not-built', {
    what: 'The page has not been built yet.',
    doNext: 'Run "npm start" in the project folder; it builds the page first.',
  })
}
