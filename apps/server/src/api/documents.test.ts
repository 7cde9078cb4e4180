import { createHash, randomUUID } from 'node:crypto'
import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { composeSeal, type Fact, makeHandover, makeRecord } from '@shearline/jobfile'
import { beforeEach, describe, expect, test } from 'vitest'
import { askJson, Tablet, withServer } from '../testing/running.ts'

const place = withServer()
const { resolve } = createRequire(import.meta.url)
const face = (name: string) => readFile(resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`))
let tablet: Tablet
let port: number

beforeEach(async () => {
  port = place().running.port
  tablet = await Tablet.make()
  await askJson(port, '/api/devices', 'POST', tablet.device)
})

/** A job as a tablet seals it without a connection: its facts, the seal last, and the document. */
async function sealedOnTablet(job: string) {
  const facts: Fact[] = [await tablet.open(job), await tablet.note(job, 'sealed at the roadside')]
  const composed = composeSeal({ job, facts, chainBroken: false })
  if (composed === null) throw new Error('there are facts')
  const at = new Date(Date.parse(composed.after) + 1000).toISOString()
  const seal = await tablet.write({ job, at, kind: 'document-sealed', body: { ...composed.body } })
  facts.push(seal)
  const pdf = await makeHandover({
    record: makeRecord(job, facts, [tablet.device]),
    language: 'en',
    fonts: { regular: await face('DejaVuSans'), bold: await face('DejaVuSans-Bold') },
    device: tablet.device,
    sign: tablet.sign,
    madeAt: at,
  })
  return { facts, seal, pdf: new Uint8Array(pdf) }
}

async function keepBlob(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const sha256 = createHash('sha256').update(bytes).digest('hex')
  const put = await fetch(`http://127.0.0.1:${port}/api/blobs/${sha256}`, { method: 'PUT', body: bytes })
  expect(put.status).toBe(200)
  return sha256
}

const put = async (job: string, seal: string, blob: string) => {
  const { status, body } = await askJson(port, `/api/jobs/${job}/document`, 'PUT', { seal, blob })
  return [status, body.error?.code ?? 'taken']
}

describe('a document sealed on a device', () => {
  test('is the document of its seal once facts and bytes are here; sent twice it changes nothing', async () => {
    const { facts, seal, pdf } = await sealedOnTablet('job-a')
    const blob = createHash('sha256').update(pdf).digest('hex')
    expect(await put('job-a', seal.id, blob)).toEqual([404, 'unknown-job'])
    await askJson(port, '/api/facts', 'POST', { facts })
    expect(await put('job-a', seal.id, blob)).toEqual([404, 'unknown-blob'])
    await keepBlob(pdf)
    for (let time = 0; time < 2; time++) expect(await put('job-a', seal.id, blob)).toEqual([200, 'taken'])
    const got = await fetch(`http://127.0.0.1:${port}/api/jobs/job-a/document`)
    expect(Buffer.compare(Buffer.from(await got.arrayBuffer()), pdf)).toBe(0)
  })

  test('is refused when a byte was changed, when it belongs to another job, and when its seal is not here', async () => {
    const { facts, seal, pdf } = await sealedOnTablet('job-a')
    await askJson(port, '/api/facts', 'POST', { facts })
    const other = await sealedOnTablet('job-b')
    await askJson(port, '/api/facts', 'POST', { facts: other.facts })
    const changed = pdf.slice()
    changed[changed.indexOf(0x72, 5000)] = 0x73
    expect(await put('job-a', seal.id, await keepBlob(changed))).toEqual([409, 'document-differs'])
    expect(await put('job-a', seal.id, await keepBlob(other.pdf))).toEqual([409, 'document-differs'])
    expect(await put('job-a', randomUUID(), await keepBlob(pdf))).toEqual([409, 'document-differs'])
    expect(await put('job-a', other.seal.id, await keepBlob(pdf))).toEqual([409, 'document-differs'])
  })
})

describe('marks', () => {
  test('change exactly when facts of a job arrive', async () => {
    const marks = async () => {
      const { body } = await askJson(port, '/api/marks')
      return new Map(
        (body as { marks: { job: string; mark: string }[] }).marks.map(({ job, mark }) => [job, mark]),
      )
    }
    const first = await tablet.open('job-a')
    await askJson(port, '/api/facts', 'POST', { facts: [first, await tablet.open('job-b')] })
    const before = await marks()
    expect([...before.keys()].sort()).toEqual(['device-register', 'job-a', 'job-b'])
    await askJson(port, '/api/facts', 'POST', { facts: [first] })
    expect(await marks()).toEqual(before)
    await askJson(port, '/api/facts', 'POST', { facts: [await tablet.note('job-b', 'more')] })
    const after = await marks()
    expect(after.get('job-a')).toBe(before.get('job-a'))
    expect(after.get('job-b')).not.toBe(before.get('job-b'))
  })
})
