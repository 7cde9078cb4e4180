import { readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Store } from '@shearline/store'
import { Hono } from 'hono'
import { createApi } from './api/index.ts'
import { serveBench } from './bench-files/index.ts'
import { offerVerifyPage } from './bench-files/verify-page.ts'
import { Board } from './board/index.ts'
import { securityHeaders } from './local/headers.ts'
import { localOnly } from './local/index.ts'
import { answerThrown, unknownPath } from './problem/index.ts'

export interface AppOptions {
  readonly store: Store
  /** The data directory: what arrives in parts is gathered in it. A temporary folder when left out. */
  readonly data?: string
  /** Folder of the built bench; that of this project when left out. */
  readonly benchFolder?: string
  /** The present instant, milliseconds since 1970 UTC. */
  readonly clock?: () => number
  /** Largest blob that is accepted, bytes. */
  readonly maxBlobBytes?: number
}

const { version } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'))

/** Builds the server of one person: guard, API, bench. It answers requests but does not listen; see `serve`. */
export function createApp(options: AppOptions): Hono {
  const { store } = options
  const app = new Hono()
  app.onError(answerThrown)
  app.notFound((c) => answerThrown(unknownPath(c), c))
  app.use(securityHeaders())
  app.use(localOnly)
  app.route(
    '/',
    createApi({
      store,
      board: new Board(store),
      clock: options.clock ?? Date.now,
      version,
      maxBlobBytes: options.maxBlobBytes ?? 8 * 1024 ** 3,
      partsFolder: join(options.data ?? tmpdir(), 'parts'),
    }),
  )
  offerVerifyPage(app, fileURLToPath(new URL('../../verify-page/dist/verify.html', import.meta.url)))
  serveBench(app, options.benchFolder ?? fileURLToPath(new URL('../../bench/dist', import.meta.url)))
  return app
}
