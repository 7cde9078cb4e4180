import { type ChildProcess, spawn } from 'node:child_process'
import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type Browser, type BrowserContext, chromium } from 'playwright-core'
import { root } from './shearline.ts'

const candidates = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome']

/** A Chromium on this machine, or null: the tests that need one then say so. */
export const chromiumPath: string | null = candidates.find((path) => existsSync(path)) ?? null

/** Lets a browser take as long for each thing as a slow machine does that has much else to do. */
export function patiently<T extends BrowserContext>(context: T): T {
  context.setDefaultTimeout(60_000)
  return context
}

/** Starts headless Chromium without anything that would ask the network. */
export async function launch(...more: readonly string[]): Promise<Browser> {
  const browser = await chromium.launch({
    timeout: 180_000,
    ...(chromiumPath === null ? {} : { executablePath: chromiumPath }),
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--disable-dev-shm-usage',
      ...more,
    ],
  })
  browser.on('context', patiently)
  return browser
}

/** The real server as a process of its own on a fresh data folder with the invented jobs. */
export class Served {
  readonly folder = mkdtempSync(join(tmpdir(), 'shearline-e2e-'))
  readonly data = join(this.folder, 'data')
  url = ''
  #process: ChildProcess | null = null

  async start(): Promise<void> {
    const bin = join(root, 'apps', 'cli', 'bin', 'shearline.js')
    const child = spawn(process.execPath, [bin, 'serve', '--demo', '--port', '0', '--data', this.data])
    this.#process = child
    let said = ''
    this.url = await new Promise((resolve, reject) => {
      child.stdout.on('data', (chunk) => {
        said += String(chunk)
        const address = /open at (http:\S+)\s/.exec(said)?.[1]
        if (address !== undefined) resolve(address)
      })
      child.stderr.on('data', (chunk) => {
        said += String(chunk)
      })
      child.on('exit', () => reject(new Error(`the server ended: ${said}`)))
    })
  }

  async stop(): Promise<void> {
    const child = this.#process
    if (child !== null && child.exitCode === null) {
      const ended = new Promise((resolve) => child.once('exit', resolve))
      child.kill('SIGTERM')
      await ended
    }
    rmSync(this.folder, { recursive: true, force: true, maxRetries: 5 })
  }
}
