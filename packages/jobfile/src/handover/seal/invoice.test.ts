/** A document that carries an invoice: attached for programs, printed for people, both following from the record. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { draftInvoice, type Invoice, invoiceXml } from '../../invoice/index.ts'
import { testVerifier } from '../../testing/device.ts'
import { makeHandover } from '../make.ts'
import { latin1 } from '../pdf/bytes.ts'
import { present, sealText, skipNote } from '../testing/files.ts'
import { bareJob, fact, fonts, type SealedJob, sealedJob } from '../testing/jobs.ts'
import { verifyHandover } from '../verify/index.ts'

const price = { currency: 'EUR', lines: [{ text: 'Two flip keys', amountMinor: 26_000 }] }
const invoice: Invoice = draftInvoice(price, {
  number: '2026-017',
  issued: '2026-01-12',
  terms: 'Paid on the spot.',
  seller: { name: 'Harbour Keys', vatId: 'PT999999990', country: 'PT' },
  buyer: { name: 'Tidewater Hire', country: 'PT' },
  category: 'S',
  rateBasisPoints: 2300,
  priceIncludesTax: true,
})
const scene = () => [
  ...bareJob(),
  fact(1, 'price-agreed', price),
  fact(2, 'invoice-issued', invoice as never),
]

let folder = ''
let job: SealedJob
let bytes: Uint8Array
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'invoice-pdf-'))
  job = await sealedJob(scene())
  bytes = await makeHandover({ ...job, language: 'en', fonts, madeAt: '2026-01-12T09:41:00.000Z' })
  writeFileSync(join(folder, 'document.pdf'), bytes)
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const verify = (file: Uint8Array) => verifyHandover(file, testVerifier())
const ran = (program: string, ...args: string[]) =>
  spawnSync(program, args, { cwd: folder, encoding: 'utf8' })

describe('a document with an invoice', () => {
  it('is proven, pages and attachment alike, and prints what it attaches', async () => {
    const check = await verify(bytes)
    expect(check.findings).toEqual([])
    expect(check).toMatchObject({ proven: true, pages: 'state-the-record' })
    expect(check.coverage?.parts.map(({ name }) => name)).toContain('invoice')
  })

  it(`gives the same XML to a reader of PDF that is not ours${skipNote('pdfdetach')}`, {
    skip: !present('pdfdetach'),
  }, () => {
    expect(ran('pdfdetach', '-list', 'document.pdf').stdout).toContain('invoice.xml')
    expect(ran('pdfdetach', '-savefile', 'invoice.xml', 'document.pdf').status).toBe(0)
    expect(readFileSync(join(folder, 'invoice.xml'), 'utf8')).toBe(invoiceXml(invoice))
  })

  it(`stays a sound file for qpdf, with the relationship that ISO 19005-3 asks for${skipNote('qpdf')}`, {
    skip: !present('qpdf'),
  }, () => {
    const checked = ran('qpdf', '--check', 'document.pdf')
    expect(`${checked.stdout}${checked.stderr}`).toContain('No syntax or stream encoding errors')
    const json = JSON.parse(ran('qpdf', '--json', '--json-key=qpdf', 'document.pdf').stdout)
    const objects = Object.values(json.qpdf[1]) as { value?: Record<string, unknown> }[]
    const spec = objects.find(
      ({ value }) => value?.['/UF'] === 'u:invoice.xml' || value?.['/F'] === 'u:invoice.xml',
    )
    expect(spec?.value?.['/AFRelationship']).toBe('/Alternative')
    const catalogue = objects.find(({ value }) => value?.['/Type'] === '/Catalog')
    expect(catalogue?.value?.['/AF']).toHaveLength(3)
    expect(latin1(bytes)).toContain('/Subtype /text#2Fxml')
  })

  it('is found out when one byte of the invoice was changed', async () => {
    const at = latin1(bytes).indexOf('<ram:DuePayableAmount>') + 24
    const copy = bytes.slice()
    copy[at] = (copy[at] ?? 0) ^ 1
    const check = await verify(copy)
    expect(check.proven).toBe(false)
    expect(check.findings.map(({ where }) => where.part)).toContain('invoice')
    expect(check.findings.map(({ code }) => code)).toContain('invoice-does-not-follow')
  })

  it('is found out when its own maker left the invoice of the record out', async () => {
    const check = await verify(await sealText(job, (text) => text))
    expect(check.proven).toBe(false)
    expect(check.findings).toMatchObject([{ code: 'invoice-does-not-follow', where: { part: 'invoice' } }])
  })

  it('has none when the record has none', async () => {
    const plain = await sealedJob(bareJob())
    const pdf = await makeHandover({ ...plain, language: 'en', fonts, madeAt: '2026-01-12T09:41:00.000Z' })
    expect(latin1(pdf)).not.toContain('invoice.xml')
    expect((await verify(pdf)).proven).toBe(true)
  })
})
