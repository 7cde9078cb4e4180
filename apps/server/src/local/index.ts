/**
 * @module Local mode: the server of one person on their own machine.
 *
 * It listens on loopback only. A page of another site could still reach it through the browser, so every
 * request must name this machine as its host (else a foreign name was pointed here: DNS rebinding) and, when a
 * page sent it, come from our own page.
 */
import type { Context, MiddlewareHandler } from 'hono'
import { Problem } from '../problem/index.ts'

const loopback = new Set(['127.0.0.1', 'localhost', '[::1]'])

/** True for a name or address under which only this machine can be reached. */
export function isLoopback(host: string): boolean {
  return loopback.has(host) || loopback.has(`[${host}]`)
}

/** Refuses requests that name another host, and requests of other sites' pages to the API. */
export const localOnly: MiddlewareHandler = async (c, next) => {
  const host = c.req.header('host') ?? ''
  if (!isLoopback(host.replace(/:\d+$/, ''))) {
    throw wrongHost(host)
  }
  if (isForeign(c, host)) {
    throw new Problem(403, 'foreign-origin', {
      what: 'A page of another site sent this.',
      where: `Origin: ${c.req.header('origin') ?? 'another site'}`,
      doNext: 'Use the page this server serves.',
    })
  }
  await next()
}

/** For a request that names another machine, or none. */
export function wrongHost(host: string): Problem {
  return new Problem(403, 'wrong-host', {
    what: 'This server answers only to this machine itself.',
    where: `Host: ${host}`,
    doNext: 'Open it at the address it printed when it started.',
  })
}

/**
 * `Origin` stands on everything a page sends that is not a plain read (Fetch, 3.2). `Sec-Fetch-Site` tells of
 * reads too; following a link from elsewhere to our page is fine, reading the API from elsewhere is not.
 */
function isForeign(c: Context, host: string): boolean {
  const origin = c.req.header('origin')
  if (origin !== undefined) return origin !== `http://${host}`
  const site = c.req.header('sec-fetch-site') ?? 'none'
  return c.req.path.startsWith('/api/') && site !== 'same-origin' && site !== 'none'
}
