/** Tags of the document in every language: what PDF/A-3a and PDF/UA ask for and a program can check. */
import { beforeAll, describe, expect, it } from 'vitest'
import { handoverText } from '../document/index.ts'
import { makeHandover } from '../make.ts'
import { latin1 } from '../pdf/bytes.ts'
import { nameOf, PdfFile } from '../pdf/file.ts'
import { type Dictionary, isDictionary, type PdfValue, Ref, Text } from '../pdf/objects.ts'
import { baseOf } from '../testing/files.ts'
import { fonts, type SealedJob, sealedJob, vanJob } from '../testing/jobs.ts'

const madeAt = '2026-01-12T09:41:00.000Z'
const languages = ['en', 'de', 'fr', 'es', 'pl', 'ar'] as const

/** One tag of the structure tree, with the places of the marked content that hangs from it. */
interface Tag {
  readonly type: string
  readonly entry: Dictionary
  readonly depth: number
  readonly content: readonly { readonly page: number; readonly mark: number }[]
}

let job: SealedJob
const files = new Map<string, PdfFile>()
beforeAll(async () => {
  job = await sealedJob(vanJob())
  for (const language of languages) {
    const file = PdfFile.open(baseOf(await makeHandover({ ...job, language, fonts, madeAt })))
    if (file === null) throw new Error('the file cannot be read')
    files.set(language, file)
  }
}, 120_000)

/** The tags in the order in which a reader meets them (ISO 32000-1, 14.7). */
function tagsOf(file: PdfFile): readonly Tag[] {
  const pages = new Map(file.pages.map((page, index) => [page.object, index]))
  const found: Tag[] = []
  const walk = (value: PdfValue | undefined, depth: number): void => {
    const entry = file.dictionary(value)
    if (entry === null) return
    const kids = entry.get('K')
    const list = Array.isArray(file.resolve(kids)) ? file.array(kids) : kids === undefined ? [] : [kids]
    const content = list.flatMap((kid) => {
      const own = file.resolve(kid)
      const mark = typeof own === 'number' ? own : isDictionary(own) ? own.get('MCID') : undefined
      const on = isDictionary(own) ? (own.get('Pg') ?? entry.get('Pg')) : entry.get('Pg')
      return typeof mark === 'number' && on instanceof Ref ? [{ page: pages.get(on.object) ?? -1, mark }] : []
    })
    found.push({ type: nameOf(entry, 'S') ?? '', entry, depth, content })
    for (const kid of list) if (nameOf(file.dictionary(kid), 'S') !== null) walk(kid, depth + 1)
  }
  const root = file.dictionary(file.root?.get('StructTreeRoot'))
  for (const kid of file.array(root?.get('K'))) walk(kid, 0)
  return found
}

/** A text string of PDF: UTF-16 with a mark at its head, or one byte for each character. */
function textOf(value: PdfValue | undefined): string {
  if (!(value instanceof Text)) return ''
  const bytes = Uint8Array.from(value.text, (character) => character.charCodeAt(0))
  return bytes[0] === 0xfe && bytes[1] === 0xff
    ? new TextDecoder('utf-16be').decode(bytes.subarray(2))
    : value.text
}

/** Attributes of a tag, in one dictionary or several. */
const attributesOf = (file: PdfFile, { entry }: Tag): readonly (Dictionary | null)[] => {
  const attributes = entry.get('A')
  const list = Array.isArray(file.resolve(attributes)) ? file.array(attributes) : [attributes]
  return list.map((one) => file.dictionary(one))
}

describe.each(languages)('the tags of a document in %s', (language) => {
  const open = (): PdfFile => files.get(language) as PdfFile

  it('name the language, and the direction in which its pages are read', () => {
    const { root } = open()
    expect(textOf(root?.get('Lang'))).toBe(language)
    const preferences = open().dictionary(root?.get('ViewerPreferences'))
    expect(preferences?.get('DisplayDocTitle')).toBe(true)
    expect(nameOf(preferences, 'Direction')).toBe(language === 'ar' ? 'R2L' : null)
  })

  it('come in the order of the pages: every mark once, none before an earlier one', () => {
    const places = tagsOf(open()).flatMap(({ content }) => content)
    const numbers = places.map(({ page, mark }) => page * 100_000 + mark)
    expect(places.length).toBeGreaterThan(200)
    expect(numbers).toEqual([...new Set(numbers)].toSorted((one, other) => one - other))
    // And every mark of every page hangs from a tag.
    const drawn = open().pages.map((page) => {
      const contents = open().dictionary(page)?.get('Contents') as Ref
      const stream = open().object(contents.object)?.stream
      return latin1(open().bytes, stream?.from, stream?.to).match(/\/MCID \d+/g)?.length ?? 0
    })
    expect(places.length).toBe(drawn.reduce((sum, one) => sum + one, 0))
  })

  it('nest headings without a gap, rows in tables, cells in rows, and give every header cell its scope', () => {
    const tags = tagsOf(open())
    const levels = tags.flatMap(({ type }) => (/^H\d$/.test(type) ? [Number(type.slice(1))] : []))
    expect(levels[0]).toBe(1)
    levels.forEach((level, index) => {
      expect(level).toBeLessThanOrEqual((levels[index - 1] ?? 0) + 1)
    })
    tags.forEach(({ type, depth }, index) => {
      const parent = tags.slice(0, index).findLast((other) => other.depth === depth - 1)?.type
      if (type === 'TR') expect(parent).toBe('Table')
      if (type === 'TH' || type === 'TD') expect(parent).toBe('TR')
      if (type === 'LI') expect(parent).toBe('L')
    })
    for (const tag of tags.filter(({ type }) => type === 'TH'))
      expect(attributesOf(open(), tag).some((one) => nameOf(one, 'Scope') !== null)).toBe(true)
  })

  it('describe every figure in the words of the language and say where it stands', () => {
    const figures = tagsOf(open()).filter(({ type }) => type === 'Figure')
    const { blocks } = handoverText({ record: job.record, language, device: job.device.device, madeAt })
    const alts = blocks.flatMap((block) => {
      if (block.kind === 'keys') return block.cards.map((card) => card.alt)
      if (block.kind === 'table') return block.strands?.rows.map((row) => row.alt) ?? []
      return block.kind === 'cylinder' || block.kind === 'curve' || block.kind === 'code' ? [block.alt] : []
    })
    expect(figures.map(({ entry }) => textOf(entry.get('Alt')))).toEqual(alts)
    for (const figure of figures)
      expect(attributesOf(open(), figure).some((one) => open().array(one?.get('BBox')).length === 4)).toBe(
        true,
      )
  })

  it('stand beside one output intent with its profile, files with their relationship, and XMP that says the same', () => {
    const file = open()
    const [intent, ...others] = file.array(file.root?.get('OutputIntents'))
    expect(others).toEqual([])
    expect(nameOf(file.dictionary(intent), 'S')).toBe('GTS_PDFA1')
    const profile = file.dictionary(intent)?.get('DestOutputProfile') as Ref
    expect(file.object(profile.object)?.stream).not.toBeNull()
    const relations = file
      .array(file.root?.get('AF'))
      .map((one) => nameOf(file.dictionary(one), 'AFRelationship'))
    expect(relations).toEqual(['Source', 'Data'])
    const metadata = file.root?.get('Metadata') as Ref
    const stream = file.object(metadata.object)?.stream
    const xmp = new TextDecoder().decode(file.bytes.subarray(stream?.from, stream?.to))
    expect(xmp).toContain('<pdfaid:part>3</pdfaid:part>')
    expect(xmp).toContain('<pdfaid:conformance>A</pdfaid:conformance>')
    expect(xmp).toContain(textOf(file.dictionary(file.trailer.get('Info'))?.get('Title')))
    expect(file.array(file.trailer.get('ID'))).toHaveLength(2)
  })
})
