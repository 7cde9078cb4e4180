/** @module Checks that the pages state what the record states. */
import type { JobRecord } from '../../record/index.ts'
import { type HandoverText, handoverText, latestEdition } from '../document/index.ts'
import type { PdfFile } from '../pdf/file.ts'
import { picturesOf } from '../pdf/pictures.ts'
import { type PrintedPage, printedPages } from '../pdf/printed.ts'
import { editionOf, type Manifest, maker } from '../seal/manifest.ts'
import { solid, solidText, textHash } from '../text-hash.ts'
import { codesMatch } from './codes.ts'
import { askAgain, finding, type HandoverFinding } from './findings.ts'

const shownCharacters = 32

/**
 * Derives the text again from the record, in the edition of the document, and compares it with what the pages print,
 * character by character; pictures must be photos that the record names, square codes hold what the pages print. An edition that this version does not know
 * accuses nobody; but the document is not proven either, or a false edition would excuse any page.
 */
export function checkPages(file: PdfFile, record: JobRecord, manifest: Manifest): readonly HandoverFinding[] {
  const { language, device, madeAt } = manifest
  const edition = editionOf(manifest.maker)
  const text = handoverText({ record, language, device, madeAt, edition: edition ?? latestEdition })
  const pages = printedPages(file)
  const findings = [
    ...contentFindings(pages, text, manifest),
    ...runningFindings(pages, text),
    ...pictureFindings(file, record),
    ...codeFindings(file, text),
  ]
  if (findings.length === 0 || edition !== null) return findings
  const what = `The document was made by "${manifest.maker}", this is "${maker}": its pages could not be compared with the record, because words or rules may differ.`
  return [finding('page-not-compared', { part: 'pages' }, what, 'Verify it with a later version.')]
}

function doesNotFollow(part: string, what: string): HandoverFinding {
  return finding('page-does-not-follow', { part }, what, askAgain)
}

function contentFindings(
  pages: readonly (PrintedPage | null)[],
  text: HandoverText,
  manifest: Manifest,
): readonly HandoverFinding[] {
  const differs = difference(pages, solidText(text))
  if (differs !== null && differs.page === null)
    return [doesNotFollow('pages', 'A page cannot be read, so it is not known what it states.')]
  if (differs !== null) {
    const { page, printed, expected } = differs
    return [
      doesNotFollow(`page ${page}`, `The page prints "${printed}" where the record says "${expected}".`),
    ]
  }
  if (textHash(text) === manifest.text) return []
  return [doesNotFollow('seal', 'The seal names another text than the pages print.')]
}

function runningFindings(
  pages: readonly (PrintedPage | null)[],
  text: HandoverText,
): readonly HandoverFinding[] {
  return pages.flatMap((page, index) => {
    const allowed = runningTexts(text, index + 1, pages.length)
    const strange = page?.running.find((printed) => !allowed.has(solid(printed)))
    if (strange === undefined) return []
    const what = `The page prints "${strange}" at its edge, which the record does not say.`
    return [doesNotFollow(`page ${index + 1}`, what)]
  })
}

/** What may stand outside the content of a page: its foot, and table heads carried over from the page before. */
function runningTexts(text: HandoverText, page: number, pages: number): ReadonlySet<string> {
  const heads = text.blocks.flatMap((block) =>
    block.kind === 'table' ? [solid(block.columns.map((column) => column.text).join(''))] : [],
  )
  return new Set([solid(`${text.running.left}${text.running.pageOf(page, pages)}`), ...heads])
}

/** Every picture on the pages is, byte for byte, a photo that the record names. */
function pictureFindings(file: PdfFile, record: JobRecord): readonly HandoverFinding[] {
  const named = new Set(
    record.facts.filter((fact) => fact.kind === 'photo-attached').map((fact) => fact.body.blob),
  )
  return file.pages.flatMap((page, index) => {
    const strange = picturesOf(file, page).some((sha256) => !named.has(sha256))
    if (!strange) return []
    return [doesNotFollow(`page ${index + 1}`, 'The page shows a picture that the record does not name.')]
  })
}

/** Every square code on the pages is the one that the record and the sealing key give. */
function codeFindings(file: PdfFile, text: HandoverText): readonly HandoverFinding[] {
  const expected = text.blocks.flatMap((block) => (block.kind === 'code' ? [block.data] : []))
  if (codesMatch(file, expected)) return []
  const what = 'The square code does not hold the SHA-256 of the record and the fingerprint of the key.'
  return [doesNotFollow('pages', what)]
}

interface Difference {
  readonly page: number | null
  readonly printed: string
  readonly expected: string
}

/** The first place at which the pages and the expected text part; null when they do not. */
function difference(pages: readonly (PrintedPage | null)[], expected: string): Difference | null {
  const wanted = [...expected]
  let at = 0
  for (const [index, page] of pages.entries()) {
    if (page === null) return { page: null, printed: '', expected: '' }
    const printed = [...page.content.replace(/\s/gu, '')]
    for (let place = 0; place < printed.length; place++, at++) {
      if (same(printed[place], wanted[at])) continue
      return shown(index + 1, printed, place, wanted, at)
    }
  }
  if (at === wanted.length) return null
  return shown(pages.length, [], 0, wanted, at)
}

function shown(
  page: number,
  printed: readonly string[],
  place: number,
  wanted: readonly string[],
  at: number,
): Difference {
  // A few characters before the difference make the place easy to find on the page.
  const lead = Math.min(8, place, at)
  return {
    page,
    printed: printed.slice(place - lead, place - lead + shownCharacters).join(''),
    expected: wanted.slice(at - lead, at - lead + shownCharacters).join(''),
  }
}

const replacement = '\uFFFD'
/** Up to here (Latin and its accents) every font of ours has every letter, so none may be missing. */
const lastLatin = 0x24f

/** Equal, or a stand-in for a character that the font lacks. */
function same(printed: string | undefined, wanted: string | undefined): boolean {
  if (printed === wanted) return true
  return printed === replacement && wanted !== undefined && (wanted.codePointAt(0) ?? 0) > lastLatin
}
