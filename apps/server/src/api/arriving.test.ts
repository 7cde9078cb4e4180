import { createHash, randomBytes } from 'node:crypto'
import { appendFile, mkdir, readdir, stat } from 'node:fs/promises'
import { connect } from 'node:net'
import { join } from 'node:path'
import { beforeEach, describe, expect, test } from 'vitest'
import { serve } from '../index.ts'
import { withServer } from '../testing/running.ts'

const place = withServer()
const bytes = randomBytes(300_000)
const sha256 = createHash('sha256').update(bytes).digest('hex')
let base: string

beforeEach(() => {
  base = `http://127.0.0.1:${place().running.port}/api/blobs/${sha256}`
})

async function send(offset: number, body: Uint8Array<ArrayBuffer>, complete = false) {
  const answer = await fetch(`${base}/parts`, {
    method: 'PATCH',
    body,
    headers: {
      'content-type': 'text/plain',
      'upload-offset': String(offset),
      'upload-complete': complete ? '?1' : '?0',
    },
  })
  return { status: answer.status, body: await answer.json() }
}

const received = async () => (await (await fetch(`${base}/parts`)).json()).received

// Offsets, their 409 and the header names follow draft-ietf-httpbis-resumable-upload.
describe('a blob that arrives in parts', () => {
  test('is kept under its hash once the last part is there, and its parts are gone', async () => {
    expect(await received()).toBe(0)
    expect(await send(0, bytes.subarray(0, 100_000))).toEqual({
      status: 200,
      body: { sha256, received: 100_000, complete: false },
    })
    const head = await fetch(`${base}/parts`, { method: 'HEAD' })
    expect(head.headers.get('upload-offset')).toBe('100000')
    expect((await fetch(base, { method: 'HEAD' })).status).toBe(404)
    expect((await send(100_000, bytes.subarray(100_000), true)).body).toEqual({
      sha256,
      received: bytes.length,
      complete: true,
    })
    const got = await fetch(base)
    expect(got.headers.get('content-type')).toBe('text/plain')
    expect(Buffer.compare(Buffer.from(await got.arrayBuffer()), bytes)).toBe(0)
    expect(await readdir(join(place().data, 'parts'))).toEqual([])
    // Sent again after a lost answer: already here.
    expect((await send(100_000, bytes.subarray(100_000), true)).body.complete).toBe(true)
  })

  test('goes on after a restart where it stopped', async () => {
    await send(0, bytes.subarray(0, 120_000))
    const { data, bench, running } = place()
    await running.close()
    const again = await serve({ data, port: 0, benchFolder: bench })
    base = `http://127.0.0.1:${again.port}/api/blobs/${sha256}`
    expect(await received()).toBe(120_000)
    expect((await send(120_000, bytes.subarray(120_000), true)).body.complete).toBe(true)
    await again.close()
  })

  test('keeps what came of a part whose line broke', async () => {
    const { port } = place().running
    const socket = connect(port, '127.0.0.1')
    socket.write(
      `PATCH /api/blobs/${sha256}/parts HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nUpload-Offset: 0\r\nContent-Length: ${bytes.length}\r\n\r\n`,
    )
    socket.write(bytes.subarray(0, 50_000))
    await expect.poll(received).toBe(50_000)
    socket.destroy()
    await expect.poll(async () => (await send(50_000, bytes.subarray(50_000), true)).status).toBe(200)
  })

  test('at another offset is refused with the place to go on, and nothing is written', async () => {
    await send(0, bytes.subarray(0, 1000))
    for (const offset of [0, 999, 1001]) {
      const { status, body } = await send(offset, bytes.subarray(0, 10))
      expect([status, body.error.code, body.error.received]).toEqual([409, 'wrong-offset', 1000])
    }
    expect(await received()).toBe(1000)
  })

  test('that two devices send at once is never mixed', async () => {
    const both = await Promise.all([send(0, bytes.subarray(0, 9000)), send(0, bytes.subarray(0, 9000))])
    expect(both.map(({ status }) => status).sort()).toEqual([200, 409])
    expect((await send(9000, bytes.subarray(9000), true)).body.complete).toBe(true)
  })

  test('that hashes to something else is refused and forgotten, so it can be sent anew', async () => {
    await mkdir(join(place().data, 'parts'), { recursive: true })
    await appendFile(join(place().data, 'parts', sha256), 'damaged by a failing disk')
    const { status, body } = await send(25, bytes.subarray(25), true)
    expect([status, body.error.code]).toEqual([422, 'hash-differs'])
    expect(await received()).toBe(0)
    expect((await send(0, bytes, true)).body.complete).toBe(true)
  })

  test('lies where only the owner of the server can read it', async (context) => {
    if (process.platform === 'win32') context.skip('Windows has no such modes')
    await send(0, bytes.subarray(0, 10))
    const folder = join(place().data, 'parts')
    expect((await stat(folder)).mode & 0o077).toBe(0)
    expect((await stat(join(folder, sha256))).mode & 0o077).toBe(0)
  })
})
