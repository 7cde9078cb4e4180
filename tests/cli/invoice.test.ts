/** `shearline invoice`: issued from the agreed price, refused by the rules of the standard, carried by the document. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Ran, shearline } from '../support/shearline.ts'

let folder = ''
let env: Record<string, string> = {}
const at = (name: string) => join(folder, name)
const run = (...args: string[]): Ran => shearline(args, { env })
const placed = (name: string, value: unknown) => {
  writeFileSync(at(name), typeof value === 'string' ? value : JSON.stringify(value))
  return at(name)
}
const seller = { name: 'Harbour Keys', vatId: 'PT999999990', city: 'Ponta Clara', country: 'PT' }
const details = {
  number: '2026-017',
  issued: '2026-01-12',
  terms: 'Paid on the spot.',
  buyer: { name: 'Tidewater Hire', country: 'PT' },
  category: 'S',
  rateBasisPoints: 2300,
  priceIncludesTax: true,
}

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'shearline-invoice-'))
  env = { SHEARLINE_DATA: at('data'), SHEARLINE_BY: 'technician' }
  run('job', 'open', 'van-1', '--title', 'Van', '--place', 'Yard', '--vehicle', 'small van')
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

describe('shearline invoice', () => {
  it('has nothing to invoice before a price is agreed, and no invoice before one is issued', () => {
    const early = run('invoice', 'van-1', '--issue', placed('details.json', { ...details, seller }))
    expect(early).toMatchObject({ code: 2, err: expect.stringContaining('No price is agreed') })
    expect(run('invoice', 'van-1')).toMatchObject({ code: 2, err: expect.stringContaining('has no invoice') })
    expect(run('invoice', 'nothing')).toMatchObject({ code: 2, err: expect.stringContaining('no job') })
  })

  it('says which detail is missing or wrong, and records nothing', () => {
    run(
      'job',
      'record',
      'van-1',
      'price-agreed',
      placed('price.json', { currency: 'EUR', lines: [{ text: 'Two flip keys', amountMinor: 26_000 }] }),
    )
    const cases: readonly [unknown, string][] = [
      [{ ...details }, 'seller'],
      [{ ...details, seller, issued: '12.1.2026' }, 'issued'],
      [{ ...details, seller, priceIncludesTax: undefined }, 'priceIncludesTax'],
      [{ ...details, seller, rateBasisPoints: 'much' }, 'rateBasisPoints'],
      [{ ...details, seller: { ...seller, country: 'Portugal' } }, 'seller.country'],
      ['[]', 'not a JSON object'],
    ]
    for (const [wrong, words] of cases) {
      const ran = run('invoice', 'van-1', '--issue', placed('wrong.json', wrong))
      expect([ran.code, ran.err]).toEqual([2, expect.stringContaining(words)])
    }
    expect(run('invoice', 'van-1').code).toBe(2)
  })

  it('is not issued while a rule is broken, names the rule, and ends with 1', () => {
    const late = placed('late.json', { ...details, seller, terms: undefined })
    const ran = run('invoice', 'van-1', '--issue', late, '--json')
    expect(ran.code, ran.err).toBe(1)
    expect(JSON.parse(ran.out)).toMatchObject({
      issued: false,
      findings: [{ rule: 'BR-CO-25', where: 'due' }],
    })
    expect(run('invoice', 'van-1').code).toBe(2)
  })

  it('is issued with the seller of the data folder, written as XML, and carried by the sealed document', () => {
    writeFileSync(at('data/seller.json'), JSON.stringify(seller))
    const ran = run('invoice', 'van-1', '--issue', placed('good.json', details), '--json')
    expect(ran.code, ran.err).toBe(0)
    expect(JSON.parse(ran.out)).toMatchObject({
      number: '2026-017',
      issued: true,
      basisMinor: 21_138,
      taxMinor: 4_862,
      dueMinor: 26_000,
      findings: [],
    })
    const xml = run('invoice', 'van-1', '--xml', '-')
    expect(xml.out).toContain('<ram:DuePayableAmount>260.00</ram:DuePayableAmount>')
    expect(run('invoice', 'van-1', '--xml', at('invoice.xml')).code).toBe(0)
    expect(readFileSync(at('invoice.xml'), 'utf8')).toBe(xml.out)
    expect(run('job', 'seal', 'van-1', '--out', at('van-1.pdf'), '--even-if-not-ready').code).toBe(0)
    expect(readFileSync(at('van-1.pdf')).includes(xml.out)).toBe(true)
    const proof = run('verify', at('van-1.pdf'), '--json')
    expect(JSON.parse(proof.out)).toMatchObject({ proven: true, everyByte: true, pages: 'state-the-record' })
  })
})
