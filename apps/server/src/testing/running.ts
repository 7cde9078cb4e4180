import { randomUUID, webcrypto } from 'node:crypto'
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises'
import { type IncomingHttpHeaders, request } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { text } from 'node:stream/consumers'
import {
  type ChainHead,
  type Device,
  describeDevice,
  emptyHead,
  type Fact,
  type FactDraft,
  writeFact,
} from '@shearline/jobfile'
import { afterEach, beforeEach } from 'vitest'
import { type Running, serve } from '../index.ts'

export interface Place {
  readonly folder: string
  readonly data: string
  readonly bench: string
  readonly running: Running
}

/** Starts a real server on a free port with a fresh data folder before each test, and ends it after. */
export function withServer(): () => Place {
  let place: Place
  beforeEach(async () => {
    const folder = await mkdtemp(join(tmpdir(), 'shearline-server-'))
    const [data, bench] = [join(folder, 'data'), join(folder, 'bench')]
    await mkdir(join(bench, 'assets'), { recursive: true })
    await writeFile(join(bench, 'index.html'), '<!doctype html><title>Bench</title>')
    await writeFile(join(bench, 'sw.js'), '// service worker')
    await writeFile(join(bench, 'assets', 'main-3f9a.js'), 'export {}')
    await writeFile(join(bench, '.tsbuildinfo'), 'not for others')
    await writeFile(join(folder, 'outside.txt'), 'not for others')
    const running = await serve({ data, port: 0, benchFolder: bench, deviceName: 'Van 2' })
    place = { folder, data, bench, running }
  })
  afterEach(async () => {
    await place.running.close()
    await rm(place.folder, { recursive: true, force: true, maxRetries: 5 })
  })
  return () => place
}

export interface Answer {
  readonly status: number
  readonly headers: IncomingHttpHeaders
  readonly text: string
}

/** Sends a request as given, `Host` included, which fetch would not allow. */
export function ask(
  port: number,
  path: string,
  options: { method?: string; headers?: Record<string, string>; body?: string } = {},
): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const { method = 'GET', headers = {}, body } = options
    const setHost = !('host' in headers)
    const sent = request({ host: '127.0.0.1', port, path, method, headers, setHost, agent: false })
    sent.on('response', async (answer) => {
      resolve({ status: answer.statusCode ?? 0, headers: answer.headers, text: await text(answer) })
    })
    sent.on('error', reject)
    sent.end(body)
  })
}

/** Sends JSON and reads JSON. */
export async function askJson(port: number, path: string, method = 'GET', body?: unknown) {
  const options = body === undefined ? {} : { body: JSON.stringify(body) }
  const answer = await ask(port, path, {
    method,
    headers: { 'content-type': 'application/json' },
    ...options,
  })
  return { status: answer.status, body: JSON.parse(answer.text) }
}

/** A tablet with a real key that writes a chain of its own. */
export class Tablet {
  readonly device: Device
  head: ChainHead = emptyHead
  readonly #key: webcrypto.CryptoKey

  private constructor(device: Device, key: webcrypto.CryptoKey) {
    this.device = device
    this.#key = key
  }

  static async make(name = 'Van tablet'): Promise<Tablet> {
    const pair = (await webcrypto.subtle.generateKey({ name: 'Ed25519' }, true, [
      'sign',
      'verify',
    ])) as unknown as webcrypto.CryptoKeyPair
    const raw = new Uint8Array(await webcrypto.subtle.exportKey('raw', pair.publicKey))
    return new Tablet(describeDevice(raw, name), pair.privateKey)
  }

  readonly sign = async (data: Uint8Array<ArrayBuffer>): Promise<Uint8Array> =>
    new Uint8Array(await webcrypto.subtle.sign('Ed25519', this.#key, data))

  async write(draft: Pick<FactDraft, 'job' | 'kind' | 'body'> & { readonly at?: string }): Promise<Fact> {
    const full = { id: randomUUID(), at: '2026-11-25T09:00:00.000Z', by: 'Robin', ...draft }
    const { fact, head } = await writeFact(full, this.device.device, this.head, this.sign)
    this.head = head
    return fact
  }

  async note(job: string, words: string): Promise<Fact> {
    return await this.write({ job, kind: 'note-written', body: { text: words } })
  }

  async open(job: string, at = '2026-11-25T09:00:00.000Z'): Promise<Fact> {
    return await this.write({
      job,
      at,
      kind: 'job-opened',
      body: {
        title: 'Spare key for a hire van',
        place: 'Harbour yard',
        zone: 'Europe/Lisbon',
        work: 'add-a-key',
        customer: 'fleet',
        vehicle: 'Small van',
        language: 'en',
        demo: true,
      },
    })
  }
}
