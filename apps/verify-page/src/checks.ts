/** @module What was checked, line by line, and whether it holds. */
import type { GivenCheck, HandoverCheck } from '@shearline/jobfile'
import { element, type Mark, markShape } from './dom.ts'
import { t, type WordKey } from './words.ts'

function line(title: WordKey, mark: Mark, words: string): HTMLElement {
  return element(
    'li',
    { 'data-check': title, 'data-mark': mark },
    markShape(mark),
    element(
      'div',
      {},
      element('strong', {}, t('check.line', { check: t(title), mark: t(`mark.${mark}`) })),
      element('span', {}, words),
    ),
  )
}

/** One line for each thing that was checked of a file, a document or a bundle. */
export function checks(given: GivenCheck): readonly HTMLElement[] {
  const { check } = given
  const { facts, signatures, hashes } = check
  const errors = check.findings.filter(({ severity }) => severity === 'error')
  const codes = new Set<string>(errors.map(({ code }) => code))
  const outside = [...codes].every((code) => ofFile.has(code))
  const factsMark: Mark = facts === 0 ? 'unknown' : outside ? 'holds' : 'fails'
  const hashesMark: Mark = [...codes].some((code) => ofHashes.has(code)) ? 'fails' : 'holds'
  const counted = [
    line('check.facts', factsMark, t(`check.facts.${factsMark}`, { facts, signatures })),
    line('check.hashes', hashesMark, t(`check.hashes.${hashesMark}`, { hashes })),
  ]
  if (given.what === 'bundle') {
    const zip: Mark = [...codes].some((code) => ofZip.has(code)) ? 'fails' : 'holds'
    return [line('check.bytes', zip, t(`check.zip.${zip}`)), ...counted]
  }
  if (check.findings.length === 0 && given.check.sealedBy === null) return counted
  return [...sealLines(given.check), ...counted, pagesLine(given.check)]
}

function sealLines({ coverage }: HandoverCheck): readonly HTMLElement[] {
  const seal: Mark = coverage === null ? 'fails' : 'holds'
  const bytes: Mark = coverage === null ? 'unknown' : coverage.everyByte ? 'holds' : 'fails'
  const count = coverage?.parts.filter(({ whole }) => !whole).length ?? 0
  const values = { bytes: coverage?.sealAt ?? 0, count, all: coverage?.parts.length ?? 0 }
  return [
    line('check.seal', seal, t(`check.seal.${seal}`)),
    line('check.bytes', bytes, t(`check.bytes.${bytes}`, values)),
  ]
}

const pagesMark = { 'state-the-record': 'holds', differ: 'fails', 'not-compared': 'unknown' } as const

function pagesLine({ pages }: HandoverCheck): HTMLElement {
  const mark = pagesMark[pages]
  return line('check.pages', mark, t(`check.pages.${mark}`))
}

/** What speaks of the file around the record, and of no fact in it. */
const ofFile: ReadonlySet<string> = new Set([
  'seal-missing',
  'seal-unreadable',
  'seal-signature-wrong',
  'seal-changed',
  'seal-of-stranger',
  'bytes-after-seal',
  'part-changed',
  'page-does-not-follow',
  'page-not-compared',
  'invoice-does-not-follow',
  'bundle-bytes-changed',
  'list-missing',
  'list-signature-wrong',
  'file-changed',
  'file-missing',
  'file-added',
  'chain-file-wrong',
])
const ofZip: ReadonlySet<string> = new Set([
  'bundle-unreadable',
  'bundle-bytes-changed',
  'list-missing',
  'list-signature-wrong',
  'file-changed',
  'file-missing',
  'file-added',
])
const ofHashes: ReadonlySet<string> = new Set([
  ...ofZip,
  'part-changed',
  'link-wrong',
  'tree-head-wrong',
  'body-changed',
  'gap',
])
