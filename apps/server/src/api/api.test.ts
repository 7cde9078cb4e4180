import { createHash, randomBytes, webcrypto } from 'node:crypto'
import {
  factHash,
  foldJob,
  newIdentity,
  recipientsSetting,
  recipientsText,
  Verifier,
  verifyHandover,
  verifyRecord,
} from '@shearline/jobfile'
import { beforeEach, describe, expect, test } from 'vitest'
import { ask, askJson, Tablet, withServer } from '../testing/running.ts'

const place = withServer()
let port: number
let tablet: Tablet

beforeEach(async () => {
  port = place().running.port
  tablet = await Tablet.make()
})

const enrol = () => askJson(port, '/api/devices', 'POST', tablet.device)
const send = (...facts: unknown[]) => askJson(port, '/api/facts', 'POST', { facts })

describe('devices', () => {
  test('health says that it runs, which version, and who it is', async () => {
    const { status, body } = await askJson(port, '/api/health')
    expect(status).toBe(200)
    expect(body).toEqual({ ok: true, version: '0.1.0', device: place().running.store.device })
    expect(body.device.name).toBe('Van 2')
  })

  test('a device is enrolled once and listed with its key', async () => {
    expect(await enrol()).toEqual({ status: 200, body: { device: tablet.device } })
    expect((await enrol()).status).toBe(200)
    const { body } = await askJson(port, '/api/devices')
    expect(body.devices).toEqual([place().running.store.device, tablet.device])
  })

  test('a key that is not the one of its identifier is refused', async () => {
    const other = await Tablet.make('other')
    const { status, body } = await askJson(port, '/api/devices', 'POST', {
      ...tablet.device,
      publicKey: other.device.publicKey,
    })
    expect([status, body.error.code]).toEqual([422, 'device-key-mismatch'])
  })
})

describe('recipients', () => {
  test('are those the office seals to; a damaged list is said to be so', async () => {
    const { store } = place().running
    expect(await askJson(port, '/api/recipients')).toEqual({ status: 200, body: { recipients: [] } })
    const { recipient } = await newIdentity()
    await store.putSetting(recipientsSetting, recipientsText([{ recipient, name: 'office' }]))
    const { body } = await askJson(port, '/api/recipients')
    expect(body).toEqual({ recipients: [{ recipient, name: 'office' }] })
    await store.putSetting(recipientsSetting, '[{"recipient":"age1nobody","name":"office"}]')
    const damaged = await askJson(port, '/api/recipients')
    expect([damaged.status, damaged.body.error.code]).toEqual([500, 'damaged'])
  })
})

describe('facts', () => {
  test('are accepted once, and are already there when sent again', async () => {
    await enrol()
    const facts = [await tablet.open('job-a'), await tablet.note('job-a', 'Parked in bay 4')]
    expect(await send(...facts)).toEqual({ status: 200, body: { accepted: 2, already: 0 } })
    expect(await send(...facts)).toEqual({ status: 200, body: { accepted: 0, already: 2 } })
    const { body } = await askJson(port, '/api/jobs/job-a/facts')
    expect(body).toEqual({ facts, devices: [tablet.device] })
  })

  test('of a gap, a fork, a stranger and a changed text are refused with the fitting status', async () => {
    const first = await tablet.open('job-a')
    const second = await tablet.note('job-a', 'two')
    const codeOf = async (answer: Promise<{ status: number; body: { error: { code: string } } }>) => {
      const { status, body } = await answer
      return [status, body.error.code]
    }
    expect(await codeOf(send(first))).toEqual([422, 'unknown-device'])
    await enrol()
    expect(await codeOf(send(second))).toEqual([409, 'gap'])
    expect(await codeOf(send({ ...first, body: { ...first.body, place: 'elsewhere' } }))).toEqual([
      422,
      'signature-wrong',
    ])
    await send(first, second)
    tablet.head = { seq: 1, hash: factHash(first) }
    expect(await codeOf(send(await tablet.note('job-a', 'another two')))).toEqual([409, 'fork'])
  })
})

describe('jobs', () => {
  test('are listed as the board shows them, latest instant first, and follow what arrives', async () => {
    await enrol()
    await send(await tablet.open('job-early', '2026-11-24T09:00:00.000Z'), await tablet.open('job-late'))
    const first = await askJson(port, '/api/jobs')
    expect(first.body.jobs.map(({ job }: { job: string }) => job)).toEqual(['job-late', 'job-early'])
    expect(first.body.jobs[0]).toMatchObject({ title: 'Spare key for a hire van', demo: true, inLine: false })
    expect(first.body.jobs[0].tumblers).toHaveLength(7)
    await send(
      await tablet.write({
        job: 'job-early',
        at: '2026-11-26T09:00:00.000Z',
        kind: 'price-agreed',
        body: { currency: 'EUR', lines: [{ text: 'Key', amountMinor: 18_000 }] },
      }),
    )
    const second = await askJson(port, '/api/jobs')
    expect(second.body.jobs.map(({ job }: { job: string }) => job)).toEqual(['job-early', 'job-late'])
    const pins = (job: { tumblers: { name: string; done: number }[] }) =>
      job.tumblers.find(({ name }) => name === 'record')?.done
    expect(pins(second.body.jobs[0])).toBe((pins(first.body.jobs[1]) ?? 0) + 1)
  })

  test('a job that is not opened yet stays off the board, but can be looked at', async () => {
    await enrol()
    await send(await tablet.note('job-a', 'before opening'))
    expect((await askJson(port, '/api/jobs')).body).toEqual({ jobs: [] })
    expect((await askJson(port, '/api/jobs/job-a')).body.state).toMatchObject({ opened: null, factCount: 1 })
  })

  test('a job is the fold of its facts', async () => {
    await enrol()
    const facts = [await tablet.open('job-a'), await tablet.note('job-a', 'x')]
    await send(...facts)
    const { body } = await askJson(port, '/api/jobs/job-a')
    expect(body.state).toEqual(JSON.parse(JSON.stringify(foldJob('job-a', facts))))
  })
})

describe('blobs', () => {
  const bytes = randomBytes(3_000_000)
  const sha256 = createHash('sha256').update(bytes).digest('hex')
  const url = () => `http://127.0.0.1:${port}/api/blobs/${sha256}`

  test('are kept by their content, and HEAD tells whether they are there', async () => {
    expect((await fetch(url(), { method: 'HEAD' })).status).toBe(404)
    for (let time = 0; time < 2; time++) {
      const put = await fetch(url(), {
        method: 'PUT',
        body: bytes,
        headers: { 'content-type': 'image/jpeg' },
      })
      expect([put.status, await put.json()]).toEqual([200, { sha256, bytes: bytes.length }])
    }
    const head = await fetch(url(), { method: 'HEAD' })
    expect([head.status, head.headers.get('content-length')]).toEqual([200, String(bytes.length)])
    const got = await fetch(url())
    expect(got.headers.get('content-type')).toBe('image/jpeg')
    expect(Buffer.compare(Buffer.from(await got.arrayBuffer()), bytes)).toBe(0)
  })

  test('of a page are given out as a file, never run', async () => {
    await fetch(url(), { method: 'PUT', body: bytes, headers: { 'content-type': 'text/html' } })
    const { headers } = await fetch(url())
    expect(headers.get('content-disposition')).toBe('attachment')
    expect(headers.get('x-content-type-options')).toBe('nosniff')
    expect(headers.get('content-security-policy')).toContain('sandbox')
    expect(headers.get('cache-control')).toBe('no-store')
  })

  test('that hash to something else are refused and not kept', async () => {
    const put = await fetch(url(), { method: 'PUT', body: bytes.subarray(1) })
    expect([put.status, await put.json()]).toMatchObject([422, { error: { code: 'hash-differs' } }])
    expect((await fetch(url())).status).toBe(404)
  })
})

describe('sealing', () => {
  async function document() {
    const response = await fetch(`http://127.0.0.1:${port}/api/jobs/job-a/document`)
    return { headers: response.headers, bytes: new Uint8Array(await response.arrayBuffer()) }
  }

  beforeEach(async () => {
    await enrol()
    await send(await tablet.open('job-a'), await tablet.note('job-a', 'x'))
  })

  test('a job that is not in line is refused with what is open, and nothing is written', async () => {
    const { status, body } = await askJson(port, '/api/jobs/job-a/seal', 'POST', { by: 'Robin' })
    expect([status, body.error.code]).toEqual([409, 'not-in-line'])
    const codes = body.error.needs.map(({ code }: { code: string }) => code)
    expect(codes).toContain('vin-missing')
    expect(codes).not.toContain('not-sealed')
    expect((await askJson(port, '/api/jobs/job-a')).body.state.factCount).toBe(2)
    expect((await askJson(port, '/api/jobs/job-a/document')).body.error.code).toBe('no-document')
  })

  test('a job sealed as it is has a proven record and a document that carries it', async () => {
    const wish = { by: 'Robin', language: 'pt', evenIfNotReady: true }
    const { status, body } = await askJson(port, '/api/jobs/job-a/seal', 'POST', wish)
    expect(status).toBe(200)
    expect(body.ready).toBe(false)

    const record = await ask(port, '/api/jobs/job-a/record')
    const check = await verifyRecord(JSON.parse(record.text), new Verifier(webcrypto.subtle))
    expect(check).toMatchObject({ proven: true, facts: 3, signatures: 3, sealed: true, findings: [] })
    const seal = check.record?.facts.at(-1)
    expect(seal?.device).toBe(place().running.store.device.device)
    expect(seal?.body).toMatchObject({ count: 2, language: 'pt', ready: false })
    expect(seal?.body.open).toContain('vin-missing')

    const { headers, bytes } = await document()
    expect(headers.get('content-type')).toBe('application/pdf')
    expect(headers.get('content-disposition')).toBe('inline; filename="job-a.pdf"')
    expect(createHash('sha256').update(bytes).digest('hex')).toBe(body.document.sha256)
    expect(bytes.length).toBe(body.document.bytes)
    const proof = await verifyHandover(bytes, new Verifier(webcrypto.subtle))
    expect(proof).toMatchObject({ proven: true, facts: 3, sealed: true, findings: [] })
    expect(proof.record).toEqual(JSON.parse(record.text))
  })

  test('a seal comes last even when a tablet has a clock that runs ahead', async () => {
    const ahead = new Date(Date.now() + 3 * 60 * 60 * 1000).toISOString()
    await send(await tablet.write({ job: 'job-a', at: ahead, kind: 'note-written', body: { text: 'ahead' } }))
    await askJson(port, '/api/jobs/job-a/seal', 'POST', { by: 'Robin', evenIfNotReady: true })
    const record = JSON.parse((await ask(port, '/api/jobs/job-a/record')).text)
    expect((await verifyRecord(record, new Verifier(webcrypto.subtle))).findings).toEqual([])
  })

  test('a job sealed twice at once has two whole seals, and the document of the later one', async () => {
    const wish = { by: 'Robin', evenIfNotReady: true }
    const seals = await Promise.all([1, 2].map(() => askJson(port, '/api/jobs/job-a/seal', 'POST', wish)))
    expect(seals.map(({ status }) => status)).toEqual([200, 200])
    const record = JSON.parse((await ask(port, '/api/jobs/job-a/record')).text)
    expect((await verifyRecord(record, new Verifier(webcrypto.subtle))).findings).toEqual([])
    expect(record.facts.map(({ body }: { body: { count?: number } }) => body.count)).toEqual([
      undefined,
      undefined,
      2,
      3,
    ])
    const proof = await verifyHandover((await document()).bytes, new Verifier(webcrypto.subtle))
    expect(proof).toMatchObject({ proven: true, record })
  })
})

describe('the OpenAPI document', () => {
  test('is 3.1 and lists every address with its answers', async () => {
    const { body } = await askJson(port, '/api/openapi.json')
    expect(body.openapi).toBe('3.1.0')
    expect(Object.keys(body.paths).sort()).toEqual([
      '/api/blobs/{sha256}',
      '/api/blobs/{sha256}/parts',
      '/api/devices',
      '/api/events',
      '/api/facts',
      '/api/health',
      '/api/jobs',
      '/api/jobs/{job}',
      '/api/jobs/{job}/document',
      '/api/jobs/{job}/facts',
      '/api/jobs/{job}/record',
      '/api/jobs/{job}/seal',
      '/api/marks',
      '/api/recipients',
    ])
    expect(Object.keys(body.components.schemas).sort()).toEqual([
      'Device',
      'Fact',
      'JobRecord',
      'JobState',
      'JobSummary',
      'Need',
      'NextStep',
      'NotInLine',
      'Problem',
    ])
    expect(body.components.schemas.Fact.required.sort()).toEqual(
      ['at', 'body', 'by', 'device', 'id', 'job', 'kind', 'prev', 'seq', 'sig', 'v'].sort(),
    )
  })
})
