import { writeFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { HandoverText } from '../document/index.ts'
import { PdfFile } from '../pdf/file.ts'
import { printedPages } from '../pdf/printed.ts'
import { present, run, skipNote } from '../testing/files.ts'
import { fonts } from '../testing/jobs.ts'
import { solid, solidText } from '../text-hash.ts'
import { linesOf } from './bidi.ts'
import { drawHandover } from './index.ts'

/** Invented sentences with joined letters, vowel marks, brackets, figures and Latin codes. */
const plain = 'لا يشغل المفتاح القديم السيارة إلا بعد تعليمه لأن الذاكرة الآن خالية'
const sentences = [
  plain,
  'سُلِّم مفتاحان جديدان، ولا يشغّل المفتاح القديم السيارة إلا بعد تعليمه.',
  'رقم السيارة T6SHVN3A0R0042788 (مصدران) وأدنى جهد 12.4 فولت عند الساعة 08:00.',
  'لأن الآلة تقرأ أصلًا الكلام كما كُتب قبلًا: «شكرًا لكم» [هنا] — C0035-1F ثم P0001.',
]

const arabic: HandoverText = {
  language: 'ar',
  direction: 'rtl',
  title: 'تسليم مفاتيح السيارة',
  running: {
    left: 'تسليم مفاتيح السيارة، العمل test-job',
    pageOf: (page, pages) => `الصفحة ${page} من ${pages}`,
  },
  blocks: [
    { kind: 'notice', text: 'بيانات مختلقة: هذا العمل وسيارته وأماكنه وأشخاصه من الخيال.' },
    {
      kind: 'title',
      over: 'تسليم مفاتيح السيارة',
      title: 'شاحنة صغيرة للتأجير',
      under: 'لون أبيض، سنة 2024',
    },
    {
      kind: 'facts',
      rows: [
        { label: 'رقم الهيكل', value: 'T6SHVN3A0R0042788', mono: true },
        { label: 'المكان', value: 'Harbour car park, bay 14' },
        { label: 'الوقت', value: '12 يناير 2026، 08:00 (Europe/Lisbon)' },
      ],
    },
    { kind: 'heading', text: 'المفاتيح' },
    { kind: 'list', items: sentences },
    {
      kind: 'keys',
      cards: [
        {
          letter: 'A',
          title: 'مفتاح قابل للطي',
          colour: 'brass',
          form: 'flip',
          alt: 'رسم مفتاح',
          lines: ['بطاقة نحاسية', 'أصلي'],
          head: { function: 'الوظيفة', before: 'قبل', after: 'بعد' },
          rows: [
            {
              name: 'تشغيل',
              before: { mark: 'works', text: 'يعمل' },
              after: { mark: 'fails', text: 'لا يعمل' },
            },
          ],
          notes: ['حضر الزبون اختبارًا واحدًا.'],
        },
      ],
    },
    {
      kind: 'table',
      columns: [
        { text: 'الرمز', share: 0.2, mono: true },
        { text: 'الوحدة', share: 0.3 },
        { text: 'المبلغ', share: 0.5, align: 'right' },
      ],
      rows: [['C0035-1F', 'وحدة الفرامل', 'EUR 350.00']],
    },
    { kind: 'paragraph', text: sentences.join(' ').repeat(3) },
  ],
}

const foot = `${arabic.running.left}${arabic.running.pageOf(1, 1)}`

describe('a page in a language from right to left', async () => {
  const pdf = await drawHandover(arabic, fonts, 0, [])
  if (process.env.SHEARLINE_PAGES !== undefined)
    writeFileSync(`${process.env.SHEARLINE_PAGES}/arabic.pdf`, pdf)

  it('reads back character by character as it was written', () => {
    const pages = printedPages(PdfFile.open(pdf) as PdfFile)
    expect(solid(pages.map((page) => page?.content ?? '').join(''))).toBe(solidText(arabic))
    expect(pages[0]?.running.at(-1)).toBe(foot)
  })

  it(`passes qpdf and gives poppler its words${skipNote('pdftotext')}`, {
    skip: !present('pdftotext'),
  }, () => {
    expect(run('qpdf', ['--check', 'FILE'], pdf).status).toBe(0)
    const { out } = run('pdftotext', ['-enc', 'UTF-8', 'FILE', 'OUT'], pdf)
    const read = new TextDecoder().decode(out).replace(/[\u202A-\u202E]/g, '')
    expect(read).toContain(plain)
    // Poppler tears a raised mark from its word and places brackets between two directions by its own rules.
    const letters = (text: string) =>
      [...text.normalize('NFD')].filter((letter) => /\p{Script=Arabic}/u.test(letter))
    expect(letters(read).sort().join('')).toBe(
      letters(solidText(arabic)).concat(letters(foot)).sort().join(''),
    )
  })
})

describe('any text', () => {
  const blocks: readonly (readonly [number, number])[] = [
    [0x20, 0x7e],
    [0xa0, 0x17f],
    [0x591, 0x5f4],
    [0x600, 0x6ff],
    [0x750, 0x77f],
    [0xfb1d, 0xfb4f],
    [0xfe70, 0xfefc],
    [0x2000, 0x206f],
    [0x400, 0x44f],
  ]
  const character = fc
    .constantFrom(...blocks)
    .chain(([from, to]) => fc.integer({ min: from, max: to }))
    .map((code) => String.fromCodePoint(code))
  const text = fc.array(character, { minLength: 1, maxLength: 60 }).map((list) => list.join(''))

  it.each(['ltr', 'rtl'] as const)('reads back as it was written, on a page %s', async (direction) => {
    const texts = fc.sample(text, { numRuns: 250, seed: 20260112 })
    const whole: HandoverText = {
      ...arabic,
      direction,
      blocks: texts.flatMap((one) => [
        { kind: 'paragraph' as const, text: one },
        { kind: 'facts' as const, rows: [{ label: one, value: one, mono: true }] },
      ]),
    }
    const pages = printedPages(PdfFile.open(await drawHandover(whole, fonts, 0, [])) as PdfFile)
    const read = [...solid(pages.map((page) => page?.content ?? '').join(''))]
    const wanted = [...solidText(whole)]
    // What the face lacks stands as the replacement character.
    const apart = wanted.findIndex((one, at) => read[at] !== one && read[at] !== '\uFFFD')
    expect([
      apart,
      read.slice(apart, apart < 0 ? 0 : apart + 20).join(''),
      wanted.slice(apart, apart < 0 ? 0 : apart + 20).join(''),
    ]).toEqual([-1, '', ''])
    expect(read).toHaveLength(wanted.length)
  })
})

describe('lines', () => {
  const widthOf = (text: string) => [...text].length
  it('are broken at blanks, and inside a word only when it is wider than a line', () => {
    const lines = linesOf('אבג דה ABCDEFGHIJ', 6, 'rtl', widthOf)
    expect(lines.map((line) => line.runs.map((each) => each.text).join(''))).toEqual([
      'אבג דה',
      'ABCDEF',
      'GHIJ',
    ])
  })
  it('put runs in the order of UAX #9: figures and Latin keep theirs inside a line from right to left', () => {
    const [line] = linesOf('אב 12 AB', 60, 'rtl', widthOf)
    expect(line?.runs.map(({ text, reversed }) => [text, reversed])).toEqual([
      ['אב ', true],
      ['12', false],
      [' ', true],
      ['AB', false],
    ])
    expect(line?.fromLeft).toEqual([3, 2, 1, 0])
  })
})
