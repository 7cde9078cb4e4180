/** Every class of bytes a handover document is made of, changed: found, and named by where it stands. */
import fc from 'fast-check'
import { beforeAll, describe, expect, it } from 'vitest'
import { testVerifier } from '../../testing/device.ts'
import { makeHandover } from '../make.ts'
import { latin1 } from '../pdf/bytes.ts'
import { PdfFile } from '../pdf/file.ts'
import { partsListed } from '../seal/manifest.ts'
import { placesOf } from '../seal/parts.ts'
import { baseOf, sealAt, sealOf } from '../testing/files.ts'
import { fonts, type SealedJob, sealedJob, vanJob } from '../testing/jobs.ts'
import { type HandoverCheck, verifyHandover } from './index.ts'

let job: SealedJob
let bytes: Uint8Array
let text = ''
let spans: readonly { readonly name: string; readonly from: number; readonly to: number }[] = []

beforeAll(async () => {
  job = await sealedJob(vanJob())
  bytes = await makeHandover({ ...job, language: 'en', fonts, madeAt: '2026-01-12T09:41:00.000Z' })
  text = latin1(bytes)
  const parts = partsListed(sealOf(bytes).manifest)
  spans = placesOf(parts).map((place, index) => ({ ...place, name: parts[index]?.name ?? '' }))
})

const verify = (changed: Uint8Array) => verifyHandover(changed, testVerifier())
const names = (check: HandoverCheck) => check.findings.map(({ where }) => where.part)
const partAt = (at: number) => spans.find(({ from, to }) => from <= at && at < to)?.name ?? 'seal'

function flipped(at: number, mask = 1): Uint8Array {
  const copy = bytes.slice()
  copy[at] = (copy[at] ?? 0) ^ mask
  return copy
}

/** Where a text stands in the file; fails when it does not, so that no class is tried on nothing. */
function at(needle: string, after = 0): number {
  const found = text.indexOf(needle, after)
  if (found < 0) throw new Error(`"${needle}" is not in the file`)
  return found
}
const base = () => baseOf(bytes).length
const pageStream = () => {
  const file = PdfFile.open(baseOf(bytes))
  const contents = file?.dictionary(file.pages[1])?.get('Contents') as { object: number } | undefined
  const stream = file?.object(contents?.object ?? 0)?.stream
  if (stream === null || stream === undefined) throw new Error('page 2 has no content')
  return stream
}

const classes: readonly [string, () => number, named: string | RegExp][] = [
  ['the header', () => 5, 'file header'],
  ['the binary mark below the header', () => 11, 'file header'],
  ['the word that begins an object', () => at(' 0 obj', 200) + 3, /./],
  ['a key of the catalogue', () => at('/StructTreeRoot') + 2, /./],
  ['the language', () => at('/Lang') + 7, /./],
  ['a tag of the structure', () => at('/S /TR') + 4, 'document structure'],
  ['a page dictionary', () => at('/MediaBox') + 3, /^page \d+$/],
  ['the length of a page stream', () => text.lastIndexOf('/Length', pageStream().from) + 8, 'page 2'],
  ['a page stream', () => pageStream().from + 400, 'page 2'],
  ['the end of a page stream', () => at('endstream', pageStream().to) + 2, 'page 2'],
  ['a font file', () => at('/FontFile2') + 3, 'font'],
  ['a map from glyphs to text', () => at('beginbfrange') + 16, 'font'],
  ['the colour profile', () => at('acsp') + 1, 'colour profile'],
  ['the document details (XMP)', () => at('<x:xmpmeta') + 4, 'document details'],
  ['the name of an attachment', () => at('shearline-record.json') + 3, /./],
  ['the kind of tie of an attachment', () => at('/AFRelationship /Source') + 18, /./],
  ['the embedded record', () => at('{"devices":[') + 4, 'signed record'],
  ['a fact in the embedded record', () => at('"kind":"key-labelled"') + 9, /^fact \d+ \(key-labelled\)$/],
  ['the signature of a fact', () => at('"sig":"') + 12, /^fact \d+ /],
  ['an entry of the table', () => at('\nxref\n') + 40, 'file index'],
  ['the trailer', () => at('\ntrailer\n') + 14, 'file index'],
  ['the identifier', () => at('/ID [', at('\ntrailer\n')) + 8, 'file index'],
  ['the place of the table', () => at('startxref') + 11, 'file index'],
  ['the end mark before the seal', () => at('%%EOF') + 2, 'file index'],
  ['the object of the seal', () => base() + 1, 'seal'],
  ['the manifest of the seal', () => sealAt(bytes) + 200, 'seal'],
  ['the signature of the seal', () => at(',"signature":"', sealAt(bytes)) + 30, 'seal'],
  ['the table of the update', () => at('\nxref\n', base()) + 12, 'seal'],
  ['the root the update names', () => at('/Root', base()) + 6, 'seal'],
  ['the table before, named by the update', () => at('/Prev', base()) + 6, 'seal'],
  ['the last end mark', () => bytes.length - 3, 'seal'],
]

describe('one changed byte', () => {
  it.each(classes)('in %s is found and named', async (_, place, named) => {
    const offset = place()
    const check = await verify(flipped(offset))
    expect(check.proven).toBe(false)
    expect(names(check)).toContain(partAt(offset))
    expect(partAt(offset)).toMatch(typeof named === 'string' ? new RegExp(`^${named}$`) : named)
    expect(check.coverage?.everyByte ?? false).toBe(false)
    // A byte in the sealed part is bounded by the bytes of its part.
    const bounded = check.findings.find(({ code }) => code === 'part-changed')
    if (offset < base()) {
      expect(bounded?.where.byteOffset).toBeLessThanOrEqual(offset)
      expect(check.coverage?.parts.filter(({ whole }) => !whole).map(({ name }) => name)).toEqual([
        partAt(offset),
      ])
    }
  })

  it('anywhere, in any bit, is found and named by its part (property)', async () => {
    await fc.assert(
      fc.asyncProperty(fc.nat(bytes.length - 1), fc.integer({ min: 1, max: 255 }), async (offset, mask) => {
        const check = await verify(flipped(offset, mask))
        expect(check.proven).toBe(false)
        expect(names(check)).toContain(partAt(offset))
      }),
      { numRuns: 150 },
    )
  }, 180_000)

  it('put in, taken out or exchanged anywhere is found (property)', async () => {
    const edit = fc.record({
      offset: fc.nat(bytes.length - 1),
      drop: fc.nat(40),
      put: fc.uint8Array({ maxLength: 40 }),
    })
    await fc.assert(
      fc.asyncProperty(edit, async ({ offset, drop, put }) => {
        const changed = new Uint8Array([
          ...bytes.subarray(0, offset),
          ...put,
          ...bytes.subarray(offset + drop),
        ])
        const same = changed.length === bytes.length && changed.every((byte, index) => byte === bytes[index])
        const check = await verify(changed)
        expect(check.proven).toBe(same)
        expect(check.findings.length > 0).toBe(!same)
      }),
      { numRuns: 80 },
    )
  }, 180_000)
})

describe('a page that was replaced while the record stays whole', () => {
  const recordHolds = (check: HandoverCheck) =>
    // Every fact and the seal itself are still right: only the page is not.
    expect(check.signatures).toBe(job.record.facts.length + 1)

  it('with the content of another page is named, and so is what it prints instead', async () => {
    const file = PdfFile.open(baseOf(bytes))
    const streams = (file?.pages ?? []).map((page) => {
      const contents = file?.dictionary(page)?.get('Contents') as { object: number } | undefined
      return file?.object(contents?.object ?? 0)?.stream ?? { from: 0, to: 0 }
    })
    const [first, second] = streams
    if (first === undefined || second === undefined) throw new Error('the document has one page')
    const length = Math.min(first.to - first.from, second.to - second.from)
    const changed = bytes.slice()
    changed.set(bytes.subarray(second.from, second.from + length), first.from)
    const check = await verify(changed)
    expect(check.proven).toBe(false)
    expect(names(check)).toContain('page 1')
    expect(check.pages).toBe('differ')
    expect(check.findings.map(({ code }) => code)).toContain('page-does-not-follow')
    recordHolds(check)
  })

  it('with blanks in the place of its content is named', async () => {
    const { from, to } = pageStream()
    const check = await verify(bytes.slice().fill(0x20, from, to))
    expect(check.proven).toBe(false)
    expect(names(check)).toContain('page 2')
    expect(check.pages).toBe('differ')
    recordHolds(check)
  })

  it('through an update appended after the seal, as PDF allows, is named with the first byte of the update', async () => {
    const file = PdfFile.open(baseOf(bytes))
    const page = file?.pages[0]
    const object = (file?.dictionary(page)?.get('Contents') as { object: number } | undefined)?.object ?? 0
    const stream = 'BT /F1 12 Tf 50 700 Td <0001> Tj ET'
    const place = bytes.length
    const table = `${object} 0 obj\n<< /Length ${stream.length} >>\nstream\n${stream}\nendstream\nendobj\n`
    const last = text.lastIndexOf('startxref\n')
    const before = Number(/\d+/.exec(text.slice(last))?.[0])
    const update = `${table}xref\n${object} 1\n${String(place).padStart(10, '0')} 00000 n \ntrailer\n<< /Size ${file?.trailer.get('Size')} /Root 1 0 R /Prev ${before} >>\nstartxref\n${place + table.length}\n%%EOF\n`
    const check = await verify(new Uint8Array([...bytes, ...new TextEncoder().encode(update)]))
    expect(check.proven).toBe(false)
    expect(check.findings).toMatchObject([
      { code: 'bytes-after-seal', where: { part: 'after the seal', byteOffset: place } },
    ])
    expect(check.coverage).toMatchObject({ everyByte: false, sealWhole: false })
    expect(check.pages).toBe('not-compared')
    recordHolds(check)
  })
})

describe('what the seal says of an untouched file', () => {
  it('is that every byte is covered, that no place is free but its own, and that the pages state the record', async () => {
    const { coverage, pages } = await verify(bytes)
    expect(pages).toBe('state-the-record')
    expect(coverage).toMatchObject({ bytes: bytes.length, sealAt: base(), sealWhole: true, everyByte: true })
    let next = 0
    for (const { from, to, whole } of coverage?.parts ?? []) {
      expect([from, whole]).toEqual([next, true])
      next = to
    }
    expect(next).toBe(coverage?.sealAt)
  })
})
