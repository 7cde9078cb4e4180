import fc from 'fast-check'
import { beforeAll, describe, expect, it } from 'vitest'
import { recordText } from '../../record/index.ts'
import { TestDevice, testVerifier } from '../../testing/device.ts'
import type { Block, HandoverText } from '../document/index.ts'
import { makeHandover } from '../make.ts'
import { partsListed } from '../seal/manifest.ts'
import { placesOf } from '../seal/parts.ts'
import { baseOf, sealAt, sealBytes, sealOf, sealText } from '../testing/files.ts'
import { bareJob, fact, fonts, fullJob, type SealedJob, sealedJob, vanJob } from '../testing/jobs.ts'
import { type HandoverCheck, verifyFile, verifyHandover } from './index.ts'

const madeAt = '2026-01-12T09:41:00.000Z'
const verify = (bytes: Uint8Array) => verifyHandover(bytes, testVerifier())
const make = (job: SealedJob) => makeHandover({ ...job, language: 'en', fonts, madeAt })
const names = (check: HandoverCheck) => check.findings.map((finding) => finding.where.part)

/** The bytes with one byte changed. */
function flipped(bytes: Uint8Array, at: number, mask = 1): Uint8Array {
  const copy = bytes.slice()
  copy[at] = (copy[at] ?? 0) ^ mask
  return copy
}

/** A small job with a fact of several kinds, so that one verification is quick. */
const smallJob = () => [
  ...bareJob(),
  fact(1, 'keys-said', { count: 2, absent: ['the one at home'] }),
  fact(2, 'vin-read', { source: 'glass', vin: 'T6SHVN3A0R0042788' }),
  fact(3, 'key-labelled', {
    key: 'A',
    origin: 'existing',
    form: 'flip',
    colour: 'brass',
    onBench: true,
  }),
  fact(4, 'price-agreed', { currency: 'EUR', lines: [{ text: 'Attendance', amountMinor: 9000 }] }),
]

let job: SealedJob
let bytes: Uint8Array
let parts: ReturnType<typeof partsListed>
let places: ReturnType<typeof placesOf>

beforeAll(async () => {
  job = await sealedJob(smallJob())
  bytes = await make(job)
  parts = partsListed(sealOf(bytes).manifest)
  places = placesOf(parts)
})

/** What verification has to name for a byte: the part that the manifest lists it under, or the seal. */
function nameOfByte(at: number): string {
  const index = places.findIndex(({ from, to }) => from <= at && at < to)
  return parts[index]?.name ?? 'seal'
}

describe('an untouched document', () => {
  it.each([
    ['of which nothing is known', bareJob],
    ['of a van, everything in line', vanJob],
    ['with twelve keys and two hundred faults', fullJob],
  ])('is proven: a job %s', async (_, scene) => {
    const sealed = await sealedJob(scene())
    const check = await verify(await make(sealed))
    expect(check.findings).toEqual([])
    expect(check).toMatchObject({
      proven: true,
      facts: sealed.record.facts.length,
      signatures: sealed.record.facts.length + 1,
      sealed: true,
    })
    expect(check.sealedBy?.device).toBe(sealed.device.device)
    expect(check.record).toEqual(sealed.record)
  })

  it('has parts that cover every byte before the seal, and names a page, a fact, a font and the structure', () => {
    expect(places[0]?.from).toBe(0)
    expect(places.at(-1)?.to).toBe(baseOf(bytes).length)
    const found = new Set(parts.map((part) => part.name))
    for (const name of [
      'file header',
      'page 1',
      'page 2',
      'font',
      'document structure',
      'document details',
      'colour profile',
      'signed record',
      'fact 1 (job-opened)',
      'fact 6 (document-sealed)',
      'seal',
      'file index',
    ])
      expect(found).toContain(name)
  })

  it('gives the same bytes again from the same input', async () => {
    expect(await make(job)).toEqual(bytes)
  })
})

describe('a changed byte', () => {
  it('is named by its part at the first, middle and last byte of every part', async () => {
    for (const [index, { from, to }] of places.entries()) {
      for (const at of new Set([from, (from + to) >> 1, to - 1])) {
        const check = await verify(flipped(bytes, at))
        expect(check.proven, `byte ${at}`).toBe(false)
        expect(names(check), `byte ${at}`).toContain(parts[index]?.name)
      }
    }
  }, 120_000)

  it('is named by its part at four hundred places over the whole file, whatever bit changed', async () => {
    // A fixed stride through the whole file, and a mask that walks through all bits.
    for (let step = 0; step < 400; step++) {
      const at = Math.floor(((step + 0.37) * bytes.length) / 400)
      const check = await verify(flipped(bytes, at, 1 << (step % 8)))
      expect(check.proven, `byte ${at}`).toBe(false)
      expect(names(check), `byte ${at}`).toContain(nameOfByte(at))
    }
  }, 180_000)

  it('is found at every byte of the seal and its update', async () => {
    const from = places.at(-1)?.to ?? 0
    const text = sealAt(bytes)
    const length = bytes.length
    const all = Array.from({ length: length - from }, (_, index) => from + index)
    // The frame before the text byte by byte, the one after it at every third, the text at every 29th.
    const chosen = all.filter((at) => at < text + 24 || (at > length - 420 && at % 3 === 0) || at % 29 === 0)
    for (const at of chosen) {
      const check = await verify(flipped(bytes, at, 4))
      expect(check.proven, `byte ${at}`).toBe(false)
      expect(names(check), `byte ${at}`).toContain('seal')
    }
  }, 180_000)

  it('in the record names the fact, even where the record is no longer JSON, then with the byte', async () => {
    const place = places[parts.findIndex((part) => part.name === 'fact 3 (vin-read)')]
    const from = place?.from ?? 0
    const text = new TextDecoder().decode(bytes.subarray(from, place?.to))
    const inVin = await verify(flipped(bytes, from + text.indexOf('T6SHVN')))
    expect(
      inVin.findings.filter(({ code }) => code === 'signature-wrong').map(({ where }) => where.part),
    ).toEqual(['fact 3 (vin-read)'])
    const quote = from + text.indexOf('"body"')
    const broken = await verify(flipped(bytes, quote))
    const unreadable = broken.findings.find(({ code }) => code === 'record-unreadable')
    expect(unreadable?.where.part).toBe('fact 3 (vin-read)')
    expect(unreadable?.where.byteOffset).toBe(quote)
  })

  it('in one page accuses that page and no fact', async () => {
    const place = places[parts.findIndex((part) => part.name === 'page 2')]
    const check = await verify(flipped(bytes, (place?.from ?? 0) + 400))
    expect(names(check)).toContain('page 2')
    expect(names(check).filter((name) => name?.startsWith('fact') || name === 'page 1')).toEqual([])
    expect(check.signatures).toBe(job.record.facts.length + 1)
  })
})

describe('a file that was cut, lengthened or joined', () => {
  it('is not proven when cut anywhere', async () => {
    for (let step = 0; step < 40; step++) {
      const length = Math.floor((step * (bytes.length - 1)) / 39)
      const check = await verifyFile(bytes.slice(0, length), testVerifier())
      expect(check.proven, `${length} bytes`).toBe(false)
      expect(check.findings.length, `${length} bytes`).toBeGreaterThan(0)
    }
    const short = await verify(bytes.slice(0, -1))
    expect(short.findings.map(({ code }) => code)).toEqual(['seal-changed'])
  })

  it('says how many bytes were added after the seal', async () => {
    const longer = new Uint8Array([...bytes, 10, 37, 37])
    const check = await verify(longer)
    expect(check.findings).toMatchObject([
      { code: 'bytes-after-seal', where: { part: 'after the seal', byteOffset: bytes.length } },
    ])
    expect(check.findings[0]?.what).toContain('3 bytes')
  })

  it('is not proven with another update after the seal that puts a page in the place of another', async () => {
    const update = `\n7 0 obj\n<<>>\nendobj\nxref\n7 1\n${String(bytes.length + 1).padStart(10, '0')} 00000 n \ntrailer\n<< /Size 99 >>\nstartxref\n0\n%%EOF\n`
    const check = await verify(new Uint8Array([...bytes, ...new TextEncoder().encode(update)]))
    expect(names(check)).toEqual(['after the seal'])
  })

  it('still proves the facts of a document whose seal is gone', async () => {
    const check = await verify(baseOf(bytes))
    expect(check.proven).toBe(false)
    expect(check.findings.map(({ code }) => code)).toEqual(['seal-missing'])
    expect(check.signatures).toBe(job.record.facts.length)
  })
})

/** Changes every text of a document that contains `from`. */
function reworded(text: HandoverText, from: string, to: string): HandoverText {
  const change = (block: Block) => JSON.parse(JSON.stringify(block).replaceAll(from, to)) as Block
  return { ...text, blocks: text.blocks.map(change) }
}

describe('a document made to deceive', () => {
  it('is found out when a page was rewritten and its hash renewed without the key', async () => {
    const { manifest, signature } = sealOf(bytes)
    const stranger = await TestDevice.create('stranger')
    const forged = await sealBytes(baseOf(bytes), manifest, stranger.sign, {
      madeAt: '2026-01-13T09:41:00.000Z',
    })
    expect(sealOf(forged).signature).not.toBe(signature)
    const check = await verify(forged)
    expect(check.findings.map(({ code }) => code)).toContain('seal-signature-wrong')
    expect(names(check)).toContain('seal')
  })

  it('is found out when a stranger sealed it with a key of his own', async () => {
    const stranger = await TestDevice.create('stranger')
    const { device, publicKey } = stranger.device
    const forged = await sealBytes(baseOf(bytes), sealOf(bytes).manifest, stranger.sign, {
      device,
      publicKey,
    })
    const check = await verify(forged)
    expect(check.proven).toBe(false)
    expect(check.findings.map(({ code }) => code)).toContain('seal-of-stranger')
  })

  it('is found out, with the page and the words, when its owner printed another price', async () => {
    const forged = await sealText(job, (text) => reworded(text, 'EUR 90.00', 'EUR 19.00'))
    const check = await verify(forged)
    expect(check.proven).toBe(false)
    const found = check.findings.find(({ code }) => code === 'page-does-not-follow')
    expect(found?.where.part).toMatch(/^page \d$/)
    expect(found?.what).toContain('EUR19.00')
    expect(found?.what).toContain('EUR90.00')
  })

  it('is found out when its owner left a sentence out, or added one', async () => {
    const without = await sealText(job, (text) => ({ ...text, blocks: text.blocks.slice(0, -1) }))
    const beside: Block = { kind: 'paragraph', text: 'No fault was found.' }
    const added = await sealText(job, (text) => ({ ...text, blocks: [...text.blocks, beside] }))
    for (const forged of [without, added]) {
      const check = await verify(forged)
      expect(check.findings.map(({ code }) => code)).toContain('page-does-not-follow')
    }
  })

  it('is found out when something was printed at the edge of a page, outside its content', async () => {
    const forged = await sealText(job, (text) => ({
      ...text,
      running: { ...text.running, left: 'Approved by the authorities' },
    }))
    const check = await verify(forged)
    expect(check.findings.find(({ code }) => code === 'page-does-not-follow')?.what).toContain('Approved')
  })

  it('is found out when the seal takes the place of a page', async () => {
    const page = 8
    const forged = await sealBytes(baseOf(bytes), sealOf(bytes).manifest, job.sign, { object: page })
    const check = await verify(forged)
    expect(check.findings.map(({ code }) => code)).toContain('seal-changed')
  })

  it('is found out when it carries the record of another state of the job', async () => {
    const other = await sealText(job, (text) => text, { sealFact: null })
    expect((await verify(other)).findings.map(({ code }) => code)).toContain('seal-of-other-record')
  })

  it('is found out when a fact was taken out of its record before sealing again', async () => {
    const facts = job.record.facts.filter(({ kind }) => kind !== 'price-agreed')
    const check = await verify(await sealText({ ...job, record: { ...job.record, facts } }, (text) => text))
    expect(check.proven).toBe(false)
    expect(check.findings.map(({ code }) => code)).toContain('facts-missing')
  })

  it('of another version is proven while its text still follows, and otherwise not compared, not accused', async () => {
    const older = { maker: 'shearline 0.0.9' }
    expect((await verify(await sealText(job, (text) => text, older))).proven).toBe(true)
    const other = await verify(await sealText(job, (text) => reworded(text, 'Place', 'Location'), older))
    expect(other.proven).toBe(false)
    expect(other.findings.map(({ code }) => code)).toEqual(['page-not-compared'])
  })
})

describe('any file', () => {
  it('is recognised by content: a document, a record, neither', async () => {
    const document = await verifyFile(bytes, testVerifier())
    expect(document.proven).toBe(true)
    const record = await verifyFile(new TextEncoder().encode(recordText(job.record)), testVerifier())
    expect(record).toMatchObject({ proven: true, facts: job.record.facts.length, sealedBy: null })
    const neither = await verifyFile(new TextEncoder().encode('Dear customer,'), testVerifier())
    expect(neither.findings.map(({ code }) => code)).toEqual(['not-a-document'])
  })

  it('gives the byte at which a bare record stops being JSON', async () => {
    const text = recordText(job.record)
    const cut = await verifyFile(new TextEncoder().encode(text.slice(0, 700)), testVerifier())
    expect(cut.findings).toMatchObject([{ code: 'record-unreadable', where: { byteOffset: 700 } }])
    const more = await verifyFile(new TextEncoder().encode(`${text} x`), testVerifier())
    expect(more.findings).toMatchObject([
      { where: { byteOffset: new TextEncoder().encode(text).length + 1 } },
    ])
  })

  it('is answered and never thrown at, whatever its bytes are', async () => {
    const arbitrary = fc.oneof(
      fc.uint8Array({ maxLength: 3000 }),
      fc.json({ maxDepth: 6 }).map((text) => new TextEncoder().encode(text)),
      fc
        .tuple(fc.nat(bytes.length - 1), fc.nat(3000), fc.uint8Array({ maxLength: 200 }))
        .map(
          ([at, drop, put]) =>
            new Uint8Array([...bytes.subarray(0, at), ...put, ...bytes.subarray(at + drop)]),
        ),
    )
    await fc.assert(
      fc.asyncProperty(arbitrary, async (any) => {
        const check = await verifyFile(any, testVerifier())
        const untouched = any.length === bytes.length && any.every((byte, at) => byte === bytes[at])
        expect(check.proven).toBe(untouched)
      }),
      { numRuns: 120 },
    )
  }, 120_000)

  it('does not fail on nesting without end, in JSON or in PDF', async () => {
    const deep = `${'['.repeat(200_000)}${']'.repeat(200_000)}`
    const json = await verifyFile(new TextEncoder().encode(`{"a":${deep}}`), testVerifier())
    expect(json.proven).toBe(false)
    const pdf = `%PDF-1.7\nxref\n0 1\ntrailer\n${'<</A'.repeat(100_000)}\nstartxref\n9\n%%EOF`
    expect((await verifyFile(new TextEncoder().encode(pdf), testVerifier())).proven).toBe(false)
    const nested = recordText(job.record).replace('"body":{', `"body":{"a":${deep},`)
    const bare = await verifyFile(new TextEncoder().encode(nested), testVerifier())
    expect(bare.proven).toBe(false)
  })
})
