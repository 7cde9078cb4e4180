import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { getRequestListener } from '@hono/node-server'
import { openStore, type Store, StoreError } from '@shearline/store'
import { type AppOptions, createApp } from './app.ts'
import { isLoopback, wrongHost } from './local/index.ts'
import { Problem } from './problem/index.ts'

export interface ServeOptions extends Omit<AppOptions, 'store'> {
  /** The data directory; made on first use. */
  readonly data: string
  /** PostgreSQL of a firm; without it the record is an SQLite file in the data directory. */
  readonly database?: string
  /** True when a dump of that database was made by hand. */
  readonly dumpMade?: boolean
  /** A loopback address; 127.0.0.1 when left out. */
  readonly host?: string
  /** 0 takes any free port. */
  readonly port: number
  /** Name people will read beside what this computer records, given on first use. */
  readonly deviceName?: string
}

export interface Running {
  /** Where the bench is, for people and browsers. */
  readonly url: string
  readonly port: number
  readonly store: Store
  /** Ends open requests and closes the store. */
  close(): Promise<void>
}

/** The server could not start listening. */
export class ServeError extends Error {
  readonly code: 'not-loopback' | 'port-taken' | 'cannot-listen'
  readonly what: string
  readonly doNext: string

  constructor(code: ServeError['code'], what: string, doNext: string, cause?: unknown) {
    super(`${what} ${doNext}`, { cause })
    this.name = 'ServeError'
    this.code = code
    this.what = what
    this.doNext = doNext
  }
}

/** An hour: a long recording over a slow disk must not be cut off. */
const requestTimeoutMilliseconds = 60 * 60 * 1000

/**
 * Opens the data directory and serves it on loopback. Throws ServeError when it cannot listen, StoreError when
 * the data cannot be opened; nothing is left open then.
 */
export async function serve(options: ServeOptions): Promise<Running> {
  const host = options.host ?? '127.0.0.1'
  if (!isLoopback(host)) {
    throw new ServeError(
      'not-loopback',
      `This server keeps to this machine and does not listen on ${host}.`,
      'Leave the host out, or use 127.0.0.1.',
    )
  }
  const { deviceName, database, dumpMade } = options
  const store = await openStore(options.data, {
    ...(deviceName === undefined ? {} : { deviceName }),
    ...(database === undefined ? {} : { database }),
    ...(dumpMade === undefined ? {} : { dumpMade }),
  })
  const app = createApp({ ...options, store })
  // A request whose address cannot even be read (no host, or none that is one) never reaches the app.
  const listener = getRequestListener(app.fetch, { errorHandler: unreadable })
  const server = createServer({ requestTimeout: requestTimeoutMilliseconds }, listener)
  try {
    await listen(server, host, options.port)
  } catch (error) {
    await store.close()
    throw explainListen(error, host, options.port)
  }
  const { port } = server.address() as AddressInfo
  return {
    url: `http://${host.includes(':') ? `[${host}]` : host}:${port}/`,
    port,
    store,
    close: async () => {
      const ended = new Promise((resolve) => server.close(resolve))
      server.closeAllConnections()
      await ended
      await store.close()
    },
  }
}

function unreadable(error: unknown): Response {
  const noHost = error instanceof Error && /host header/i.test(error.message)
  const { body, status } = noHost ? wrongHost('') : unreadableAddress
  return Response.json(body, { status, headers: { 'X-Content-Type-Options': 'nosniff' } })
}

const unreadableAddress = new Problem(400, 'wrong-form', {
  what: 'The address of this request cannot be read.',
  doNext: 'GET /api/openapi.json lists every address.',
})

function listen(server: Server, host: string, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen(port, host, () => {
      server.off('error', reject)
      resolve()
    })
  })
}

function explainListen(error: unknown, host: string, port: number): unknown {
  if (error instanceof StoreError || !(error instanceof Error) || !('code' in error)) return error
  if (error.code === 'EADDRINUSE') {
    return new ServeError(
      'port-taken',
      `Another program listens on port ${port} already.`,
      'Is Shearline running? Open its page, or start with another port.',
      error,
    )
  }
  return new ServeError(
    'cannot-listen',
    `This machine does not allow listening on ${host}, port ${port} (${String(error.code)}).`,
    'Choose a port above 1023.',
    error,
  )
}
