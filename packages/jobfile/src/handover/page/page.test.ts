import { beforeAll, describe, expect, it, vi } from 'vitest'
import { recordText } from '../../record/index.ts'
import { testVerifier } from '../../testing/device.ts'
import { handoverText, printedTexts } from '../document/index.ts'
import { makeHandover } from '../make.ts'
import { latin1 } from '../pdf/bytes.ts'
import { PdfFile } from '../pdf/file.ts'
import { printedPages } from '../pdf/printed.ts'
import { attached } from '../seal/parts.ts'
import { baseOf, present, run, sealOf, skipNote } from '../testing/files.ts'
import { bareJob, fact, fonts, fullJob, type SealedJob, sealedJob, vanJob } from '../testing/jobs.ts'
import { solid } from '../text-hash.ts'
import { verifyHandover } from '../verify/index.ts'

const madeAt = '2026-01-12T09:41:00.000Z'
const make = (job: SealedJob) => makeHandover({ ...job, language: 'en', fonts, madeAt })

let job: SealedJob
let van: Uint8Array
let full: Uint8Array

beforeAll(async () => {
  job = await sealedJob(vanJob())
  van = await make(job)
  full = await make(await sealedJob(fullJob()))
})

describe('the document as PDF/A-3a (ISO 19005-3)', () => {
  it('names part and conformance, language, title and output intent, and is tagged', () => {
    const file = PdfFile.open(baseOf(van))
    const text = latin1(van)
    expect(text).toContain('<pdfaid:part>3</pdfaid:part>')
    expect(text).toContain('<pdfaid:conformance>A</pdfaid:conformance>')
    expect(text).toContain('/S /GTS_PDFA1')
    expect(file?.root?.get('Lang')).toMatchObject({ text: 'en' })
    expect(file?.dictionary(file.root?.get('MarkInfo'))?.get('Marked')).toBe(true)
    expect(file?.dictionary(file.root?.get('StructTreeRoot'))).not.toBeNull()
    expect(file?.array(file.root?.get('AF'))).toHaveLength(2)
    expect(text).not.toMatch(/\/(Encrypt|JavaScript|SMask|CA|ca|LZWDecode) /)
  })

  it('has every mark on every page inside a tag or an artifact (ISO 14289-1, 7.1)', () => {
    for (const bytes of [van, full]) {
      const file = PdfFile.open(baseOf(bytes))
      for (const page of file?.pages ?? []) {
        const contents = file?.dictionary(page)?.get('Contents') as { object: number }
        const stream = file?.object(contents.object)?.stream
        const lines = latin1(bytes, stream?.from, stream?.to).split('\n')
        let depth = 0
        let outside = 0
        for (const line of lines) {
          if (/B[MD]C$/.test(line)) depth++
          else if (line === 'EMC') depth--
          else if (depth === 0 && /(^|\s)(f|f\*|S|s|B|B\*|b|TJ|Tj|Do|sh)$/.test(line)) outside++
        }
        expect({ depth, outside }).toEqual({ depth: 0, outside: 0 })
      }
    }
  })

  it('describes every picture in words', () => {
    const figures = latin1(van).match(/\/S \/Figure\n(?:[^>]|>(?!>))*/g) ?? []
    expect(figures.length).toBe(9)
    for (const figure of figures) expect(figure).toMatch(/\/Alt \(.{20,}/s)
  })

  it(`passes the syntax check of qpdf${skipNote('qpdf')}`, { skip: !present('qpdf') }, () => {
    for (const bytes of [van, full]) {
      const checked = run('qpdf', ['--check', 'FILE'], bytes)
      expect(checked.output).toContain('No syntax or stream encoding errors found')
      expect(checked.status).toBe(0)
    }
  })

  it(`is tagged and titled for poppler${skipNote('pdfinfo')}`, { skip: !present('pdfinfo') }, () => {
    const { output } = run('pdfinfo', ['FILE'], van)
    expect(output).toMatch(/^Tagged: +yes$/m)
    expect(output).toMatch(/^Title: +Vehicle key handover, job test-job$/m)
    expect(output).toMatch(/^Page size: .*A4/m)
    expect(run('pdfinfo', ['-meta', 'FILE'], van).output).toContain('<pdfaid:part>3</pdfaid:part>')
    const structure = run('pdfinfo', ['-struct', 'FILE'], van).output
    for (const tag of ['Document', 'H1', 'H2', 'Figure', 'Table', 'TH', 'TD', 'L', 'LI'])
      expect(structure).toMatch(new RegExp(`^ *${tag}\\b`, 'm'))
  })

  it(`embeds every font with its text map${skipNote('pdffonts')}`, { skip: !present('pdffonts') }, () => {
    const rows = run('pdffonts', ['FILE'], van).output.trim().split('\n').slice(2)
    expect(rows).toHaveLength(3)
    // Columns: name, type, encoding, emb, sub, uni, object.
    for (const row of rows) expect(row).toMatch(/Identity-H +yes yes yes/)
  })

  it(`gives the very bytes of the record and the seal to pdfdetach${skipNote('pdfdetach')}`, {
    skip: !present('pdfdetach'),
  }, () => {
    const take = (name: string) => run('pdfdetach', ['-savefile', name, '-o', 'OUT', 'FILE'], van).out
    expect(new TextDecoder().decode(take(attached.record))).toBe(recordText(job.record))
    expect(JSON.parse(new TextDecoder().decode(take(attached.seal)))).toEqual(sealOf(van))
  })

  it(`prints what the text says, as poppler reads it${skipNote('pdftotext')}`, {
    skip: !present('pdftotext'),
  }, () => {
    const text = handoverText({ record: job.record, language: 'en', device: job.device.device, madeAt })
    const { out } = run('pdftotext', ['-raw', '-enc', 'UTF-8', 'FILE', 'OUT'], van)
    const read = solid(new TextDecoder().decode(out))
    const missing = printedTexts(text).filter((part) => !read.includes(solid(part)))
    // A text that crosses a line end with a hyphen, or lies beside another, is joined differently by poppler.
    expect(missing.filter((part) => part.length < 60)).toEqual([])
    const own = printedPages(PdfFile.open(baseOf(van)) as PdfFile)
    const all = own.map((page) => `${page?.content}${page?.running.join('')}`).join('')
    expect([...solid(all)].sort().join('')).toBe([...read].sort().join(''))
  })
})

describe('the pages', () => {
  it('give twelve keys and two hundred faults room, with table heads repeated and a foot on each', () => {
    const pages = printedPages(PdfFile.open(baseOf(full)) as PdfFile)
    expect(pages.length).toBeGreaterThan(8)
    pages.forEach((page, index) => {
      expect(page?.running.at(-1)).toContain(`Page ${index + 1} of ${pages.length}`)
      expect(page?.content.length).toBeGreaterThan(60)
    })
    const heads = pages.filter((page) => page?.running[0]?.startsWith('Code'))
    expect(heads.length).toBeGreaterThan(3)
  })

  it('never leave a heading alone at the foot of a page', async () => {
    // The same job with one to eight further lines moves every heading over every place of the page.
    for (let lines = 0; lines < 8; lines++) {
      const price = fact(90, 'price-agreed', {
        currency: 'EUR',
        lines: Array.from({ length: 1 + lines * 2 }, (_, line) => ({
          text: `Line ${line}`,
          amountMinor: 100,
        })),
      })
      const moved = await sealedJob([...bareJob(), price])
      const basis = { record: moved.record, language: 'en', device: moved.device.device, madeAt }
      const headings = handoverText(basis).blocks.flatMap((block) =>
        block.kind === 'heading' || block.kind === 'subheading' ? [solid(block.text)] : [],
      )
      const pages = printedPages(PdfFile.open(baseOf(await make(moved))) as PdfFile)
      for (const page of pages) {
        const content = solid(page?.content ?? '')
        expect(headings.filter((heading) => content.endsWith(heading))).toEqual([])
      }
    }
  })

  it('print names in other scripts, stand in for what the fonts lack, and are proven still', async () => {
    const names = [
      'Ana \u017Bak',
      'Зоя Ли',
      'Ελένη',
      'Nguy\u1EC5n',
      '\u4E2D\u6751 \u{1F511}',
      'A\u0301n\u0303a ffi \u00B5\u2126',
    ]
    const strange = await sealedJob([
      ...bareJob(),
      ...names.map((name, index) =>
        fact(5 + index, 'consent-given', { about: 'no-check-before', signer: name }),
      ),
    ])
    const bytes = await make(strange)
    const check = await verifyHandover(bytes, testVerifier())
    expect(check.findings).toEqual([])
    const printed = printedPages(PdfFile.open(baseOf(bytes)) as PdfFile)
      .map((page) => page?.content)
      .join('')
    expect(printed).toContain('Зоя')
    expect(printed).toContain('\uFFFD\uFFFD \uFFFD')
  })

  it('hold texts as long as a fact may be', async () => {
    const long = 'A long story about a key that was lost and found again. '.repeat(35).slice(0, 1999)
    const wordy = await sealedJob([
      fact(0, 'job-opened', {
        title: long,
        place: long,
        zone: 'Europe/Lisbon',
        work: 'add-a-key',
        customer: 'private',
        vehicle: long,
      }),
      fact(1, 'key-labelled', {
        key: 'A',
        origin: 'existing',
        form: 'proximity',
        colour: 'ink',
        onBench: true,
        note: long,
      }),
      fact(2, 'price-agreed', { currency: 'EUR', lines: [{ text: long, amountMinor: 1 }] }),
      fact(3, 'authority-seen', {
        role: 'identity',
        document: long,
        issuer: long,
        lastCharacters: '1',
        original: false,
        matched: false,
        checkedBy: long,
      }),
      // A fact may carry more: names of control units have no limit.
      fact(4, 'scan-attached', {
        phase: 'before',
        units: [
          {
            unit: long.repeat(6),
            time: null,
            availability: null,
            faults: [{ code: 'P0001', raw: '', status: 1 }],
          },
        ],
      }),
    ])
    const bytes = await make(wordy)
    expect((await verifyHandover(bytes, testVerifier())).findings).toEqual([])
    for (const document of [bytes, van, full]) {
      // Every text begins inside the page: PDF points count from the lower left corner.
      for (const [, x, y] of latin1(document).matchAll(/^1 0 0 1 ([\d.-]+) ([\d.-]+) Tm$/gm)) {
        expect(Number(x)).toBeGreaterThan(40)
        expect(Number(x)).toBeLessThan(560)
        expect(Number(y)).toBeGreaterThan(24)
        expect(Number(y)).toBeLessThan(800)
      }
    }
  })

  it('have the same bytes from the browser build of the PDF library as from the one for Node', async () => {
    vi.resetModules()
    vi.doMock('pdfkit', () => import('../../../../../node_modules/pdfkit/js/pdfkit.browser.mjs' as string))
    const browser = await import('../make.ts')
    const bytes = await browser.makeHandover({ ...job, language: 'en', fonts, madeAt })
    vi.doUnmock('pdfkit')
    expect(bytes).toEqual(van)
  })
})

describe('making a document', () => {
  it('is refused with a sentence when the device wrote nothing, the instant is none or a font is none', async () => {
    const other = await sealedJob(bareJob())
    const input = { ...job, language: 'en', fonts, madeAt }
    await expect(makeHandover({ ...input, device: other.device })).rejects.toThrow(/wrote no fact/)
    await expect(makeHandover({ ...input, madeAt: '12 January' })).rejects.toThrow(/not a UTC instant/)
    const broken = { ...fonts, bold: new Uint8Array([1, 2, 3]) }
    await expect(makeHandover({ ...input, fonts: broken })).rejects.toThrow(/bold face are not a font/)
  })
})
