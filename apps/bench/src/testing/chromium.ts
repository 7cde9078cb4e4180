// biome-ignore-all lint/correctness/noNodejsModules: tests drive a real browser from Node
/** @module For tests: the bench built from its present source, served without an API, in a real Chromium. */
import { type ChildProcess, spawn } from 'node:child_process'
import { existsSync } from 'node:fs'
import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { extname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { type Browser, chromium, type Page } from 'playwright-core'
import { build } from 'vite'

const program = '/usr/bin/chromium'
const bench = fileURLToPath(new URL('../..', import.meta.url))

/** Why no browser test can run here, or null when it can. */
export const noBrowser = existsSync(program) ? null : `${program} is not installed`

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
}

/** The bench as files, with every address of the API out of service. */
export async function serveAlone(): Promise<{ readonly url: string; close(): Promise<void> }> {
  const folder = await mkdtemp(join(tmpdir(), 'shearline-bench-'))
  await build({ root: bench, logLevel: 'error', build: { outDir: folder, emptyOutDir: true } })
  const server = createServer(async (request, response) => {
    const path = new URL(request.url ?? '/', 'http://bench').pathname
    if (path.startsWith('/api')) return response.writeHead(503).end()
    const file = join(folder, path === '/' ? 'index.html' : path)
    try {
      const bytes = await readFile(file)
      response.writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream' })
      return response.end(bytes)
    } catch {
      return response.writeHead(404).end()
    }
  })
  const port = await listen(server)
  return {
    url: `http://127.0.0.1:${port}/`,
    close: async () => {
      server.closeAllConnections()
      await new Promise((resolve) => server.close(resolve))
      await rm(folder, { recursive: true, force: true, maxRetries: 5 })
    },
  }
}

function listen(server: Server): Promise<number> {
  return new Promise((resolve) => {
    server.listen(0, '127.0.0.1', () => resolve((server.address() as AddressInfo).port))
  })
}

/** A running Chromium whose process can be killed like a dropped tablet. */
export interface Tablet {
  readonly page: Page
  /** SIGKILL: nothing is flushed, nothing is closed. */
  kill(): Promise<void>
}

/** Starts Chromium on a profile folder and opens an address. */
export async function switchOn(profile: string, url: string): Promise<Tablet> {
  const portFile = join(profile, 'DevToolsActivePort')
  await rm(portFile, { force: true })
  const child = spawn(
    program,
    [
      '--headless=new',
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--disable-dev-shm-usage',
      '--remote-debugging-port=0',
      '--window-size=390,844',
      `--user-data-dir=${profile}`,
      'about:blank',
    ],
    // A group of its own: its helpers, which hold the stores, die in the same instant.
    { stdio: 'ignore', detached: true },
  )
  const browser = await connect(portFile)
  const context = browser.contexts()[0]
  const page = context?.pages()[0] ?? (await context?.newPage())
  if (page === undefined) throw new Error('Chromium opened no page.')
  // A slow machine that has much else to do takes long for each thing.
  page.setDefaultTimeout(60_000)
  await page.goto(url)
  return { page, kill: () => kill(child, browser) }
}

async function connect(portFile: string): Promise<Browser> {
  for (let tries = 0; tries < 1200; tries++) {
    const port = await readFile(portFile, 'utf8').then(
      (text) => text.split('\n')[0],
      () => undefined,
    )
    if (port !== undefined && port !== '')
      return chromium.connectOverCDP(`http://127.0.0.1:${port}`, { timeout: 180_000 })
    await new Promise((resolve) => setTimeout(resolve, 100))
  }
  throw new Error('Chromium did not start within 120 s.')
}

async function kill(child: ChildProcess, browser: Browser): Promise<void> {
  const gone = new Promise((resolve) => child.once('exit', resolve))
  if (child.pid !== undefined) process.kill(-child.pid, 'SIGKILL')
  await gone
  await browser.close().catch(() => undefined)
}
