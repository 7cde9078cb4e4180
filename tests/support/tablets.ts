/** A server that can be stopped, killed and started again at the same address, and browsers that outlive it. */
import { type ChildProcess, spawn } from 'node:child_process'
import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Device, Fact } from '@shearline/jobfile'
import { type BrowserContext, chromium, type Page } from 'playwright-core'
import { expect, vi } from 'vitest'
import { chromiumPath, patiently } from './served.ts'
import { root } from './shearline.ts'

/** The built bench: that of the project, or another build while one is worked on. */
export const benchFolder = process.env.SHEARLINE_BENCH ?? join(root, 'apps', 'bench', 'dist')

/** Why these tests cannot run here, or null. */
export const cannotRun: string | null =
  chromiumPath === null
    ? 'no Chromium on this machine'
    : existsSync(join(benchFolder, 'index.html'))
      ? null
      : 'the bench is not built (npm run build)'

/**
 * A port that systems give to nobody who asks for any (those begin at 32768 or later): whoever starts a server while ours
 * is down does not get our address.
 */
const drawPort = () => 20_000 + Math.floor(Math.random() * 12_000)

/** The real server as a process of its own, at one address for as long as the object lives. */
export class Office {
  readonly folder: string = mkdtempSync(join(tmpdir(), 'shearline-office-'))
  readonly data: string = join(this.folder, 'data')
  bench: string
  url = ''
  #port = 0
  #child: ChildProcess | null = null

  constructor(bench: string = benchFolder) {
    this.bench = bench
  }

  /** Starts it, for the first time with the invented jobs when asked for. */
  async start(options: { readonly demo?: boolean } = {}): Promise<void> {
    if (options.demo === true) {
      const main = join(root, 'apps', 'server', 'src', 'main.ts')
      await this.#run([main, '--demo', '--port', '0', '--data', this.data])
      await this.kill()
    }
    const script = fileURLToPath(new URL('./serve-bench.ts', import.meta.url))
    for (let tries = 0; ; tries++) {
      const port = this.#port === 0 ? drawPort() : this.#port
      try {
        this.url = await this.#run([script, this.data, this.bench, String(port)])
        this.#port = port
        return
      } catch (error) {
        this.#child = null
        // Only a first start may go elsewhere: afterwards browsers look for the server where it was.
        if (this.#port !== 0 || tries === 20 || !String(error).includes('port-taken')) throw error
      }
    }
  }

  #run(args: readonly string[]): Promise<string> {
    const child = spawn(process.execPath, ['--conditions=@shearline/source', ...args], {
      stdio: ['ignore', 'pipe', 'pipe'],
    })
    this.#child = child
    let said = ''
    return new Promise((resolve, reject) => {
      child.stdout.on('data', (chunk) => {
        said += String(chunk)
        const address = /open at (http:\S+)\s/.exec(said)?.[1]
        if (address !== undefined) resolve(address)
      })
      child.stderr.on('data', (chunk) => {
        said += String(chunk)
      })
      child.on('close', () => reject(new Error(`the server ended: ${said}`)))
    })
  }

  /** True from a start until a kill. */
  get running(): boolean {
    return this.#child !== null
  }

  /** Ends the server at once, as a power cut would; the folder stays. */
  async kill(): Promise<void> {
    const child = this.#child
    this.#child = null
    if (child === null || child.exitCode !== null) return
    const ended = new Promise((resolve) => child.once('exit', resolve))
    child.kill('SIGKILL')
    await ended
  }

  async close(): Promise<void> {
    await this.kill()
    rmSync(this.folder, { recursive: true, force: true, maxRetries: 5 })
  }

  /** What the server answers to a question, read as JSON. */
  async ask<T>(path: string): Promise<T> {
    return (await (await fetch(`${this.url}${path}`)).json()) as T
  }
}

/** Opens a browser on a profile of its own that is kept between starts; `film` is what its camera sees. */
export async function openTablet(profile: string, film?: string): Promise<BrowserContext> {
  const context = await chromium.launchPersistentContext(profile, {
    timeout: 180_000,
    ...(chromiumPath === null ? {} : { executablePath: chromiumPath }),
    viewport: { width: 820, height: 1180 },
    acceptDownloads: true,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--disable-dev-shm-usage',
      ...(film === undefined
        ? []
        : [
            '--use-fake-ui-for-media-stream',
            '--use-fake-device-for-media-stream',
            `--use-file-for-fake-video-capture=${film}`,
          ]),
    ],
  })
  return patiently(context)
}

/** Waits until the whole bench is in the browser's cache, so that the server may go. */
export async function untilKept(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready
    if (navigator.serviceWorker.controller === null) {
      await new Promise((resolve) =>
        navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }),
      )
    }
  })
}

/** Everything a browser keeps, read past the bench. */
export interface Kept {
  readonly facts: readonly Fact[]
  readonly devices: readonly Device[]
  /** Numbers of own facts not acknowledged by the server. */
  readonly outbox: readonly number[]
  readonly blobs: readonly { readonly sha256: string; readonly bytes: number; readonly sent: boolean }[]
  readonly documents: readonly { readonly seal: string; readonly sha256: string; readonly sent: boolean }[]
}

/** Waits until the server has everything the browser keeps. What the page says of it may be a moment old. */
export async function untilSent(page: Page): Promise<void> {
  const unsent = async () => {
    const { outbox, blobs, documents } = await keptIn(page)
    return outbox.length + [...blobs, ...documents].filter(({ sent }) => !sent).length
  }
  await expect.poll(unsent, { timeout: 120_000, interval: 100 }).toBe(0)
}

/** Waits until the browser keeps every fact of a job that the server has, so that the server may go. */
export async function untilHeld(page: Page, office: Office, job: string): Promise<void> {
  const { facts } = await office.ask<{ facts: Fact[] }>(`api/jobs/${job}/facts`)
  const held = async () => (await keptIn(page)).facts.filter((fact) => fact.job === job).length
  // Not by polling an expectation: that is for tests only, and this serves what comes before them too.
  await vi.waitFor(async () => expect(await held()).toBe(facts.length), { timeout: 60_000, interval: 100 })
}

/** Reads the stores of the browser a page runs in. */
export function keptIn(page: Page): Promise<Kept> {
  return page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open('shearline-bench')
      request.onsuccess = () => resolve(request.result)
      request.onerror = () => reject(request.error)
    })
    const all = <T>(store: string) =>
      new Promise<T[]>((resolve, reject) => {
        const request = db.transaction(store).objectStore(store).getAll()
        request.onsuccess = () => resolve(request.result as T[])
        request.onerror = () => reject(request.error)
      })
    const own = (await all<Device>('self')).map(({ device, name, publicKey }) => ({
      device,
      name,
      publicKey,
    }))
    const others = (await all<Device>('devices')).filter(({ device }) => device !== own[0]?.device)
    const kept = {
      facts: await all<Fact>('facts'),
      devices: [...own, ...others],
      outbox: (await all<{ seq: number }>('outbox')).map(({ seq }) => seq),
      blobs: (await all<{ sha256: string; blob: Blob; sent: boolean }>('blobs')).map(
        ({ sha256, blob, sent }) => ({ sha256, bytes: blob.size, sent }),
      ),
      documents: await all<{ seal: string; sha256: string; sent: boolean }>('documents'),
    }
    db.close()
    return kept
  })
}
