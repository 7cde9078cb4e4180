/** @module Cuts a file into named parts that cover every byte, so that a changed byte has a name. */
import { canonicalJson, factName, sha256OfBytes } from '../../chain/index.ts'
import type { JobRecord } from '../../record/index.ts'
import { nameOf, type PdfFile } from '../pdf/file.ts'
import { type Dictionary, isDictionary, type PdfValue, Ref } from '../pdf/objects.ts'

/** Names of the files attached to a handover document: record and seal to every one, an invoice where there is one. */
export const attached = {
  record: 'shearline-record.json',
  seal: 'shearline-seal.json',
  invoice: 'invoice.xml',
} as const

/** A run of bytes with a name. Parts follow each other without a gap. */
export interface Part {
  readonly name: string
  readonly length: number
  readonly sha256: string
}

interface Span {
  readonly name: string
  readonly from: number
  readonly to: number
}

/**
 * Cuts a document into parts named for what a reader would call them: a page, a fact of the attached record, a font.
 * `record` is the attached record; its text must stand in the file as RFC 8785 canonical JSON.
 */
export function partsOf(file: PdfFile, record: JobRecord): readonly Part[] {
  const names = nameObjects(file)
  const starts = [...file.offsets].sort((a, b) => a[1] - b[1])
  const spans: Span[] = [{ name: 'file header', from: 0, to: starts[0]?.[1] ?? file.tableAt }]
  const recordFile = file.attachments().get(attached.record)?.file
  starts.forEach(([number, from], index) => {
    const to = starts[index + 1]?.[1] ?? file.tableAt
    const stream = number === recordFile ? file.object(number)?.stream : null
    if (stream === null || stream === undefined)
      spans.push({ name: names.get(number) ?? 'document structure', from, to })
    else spans.push(...recordSpans(record, from, stream.from, to))
  })
  spans.push({ name: 'file index', from: file.tableAt, to: file.bytes.length })
  return merged(spans).map(({ name, from, to }) => ({
    name,
    length: to - from,
    sha256: sha256OfBytes(file.bytes.subarray(from, to)),
  }))
}

/** Where each part stands: byte offset of its first byte and of the byte after it. */
export function placesOf(parts: readonly Part[]): readonly { from: number; to: number }[] {
  let from = 0
  return parts.map((part) => {
    const place = { from, to: from + part.length }
    from = place.to
    return place
  })
}

/** The record's bytes by fact: `{"devices":[...],"facts":[` F `,` F `],"format":...}`. */
function recordSpans(record: JobRecord, from: number, textAt: number, to: number): readonly Span[] {
  const bytesOf = (value: unknown) => new TextEncoder().encode(canonicalJson(value)).length
  const head = `{"devices":`.length + bytesOf(record.devices) + `,"facts":[`.length
  const spans: Span[] = [{ name: 'signed record', from, to: textAt + head }]
  record.facts.forEach((fact, index) => {
    const start = spans.at(-1)?.to ?? textAt
    const comma = index === record.facts.length - 1 ? 0 : 1
    spans.push({ name: factName(index + 1, fact.kind), from: start, to: start + bytesOf(fact) + comma })
  })
  spans.push({ name: 'signed record', from: spans.at(-1)?.to ?? textAt, to })
  return spans
}

function merged(spans: readonly Span[]): readonly Span[] {
  const out: Span[] = []
  for (const span of spans) {
    const last = out.at(-1)
    if (last !== undefined && last.name === span.name) out[out.length - 1] = { ...last, to: span.to }
    else out.push(span)
  }
  return out
}

/** What each object is, found by walking from the catalogue. The first name an object gets is the one it keeps. */
function nameObjects(file: PdfFile): ReadonlyMap<number, string> {
  const names = new Map<number, string>()
  const mark = (value: PdfValue | undefined, name: string): Dictionary | null => {
    if (value instanceof Ref && !names.has(value.object)) names.set(value.object, name)
    return file.dictionary(value)
  }
  const markFont = (font: PdfValue): void => {
    const face = mark(font, 'font')
    mark(face?.get('ToUnicode'), 'font')
    for (const descendant of file.array(face?.get('DescendantFonts'))) {
      const descriptor = mark(mark(descendant, 'font')?.get('FontDescriptor'), 'font')
      for (const key of ['FontFile', 'FontFile2', 'FontFile3', 'CIDSet']) mark(descriptor?.get(key), 'font')
    }
  }
  file.pages.forEach((page, index) => {
    const name = `page ${index + 1}`
    const dictionary = mark(page, name)
    mark(dictionary?.get('Contents'), name)
    for (const annotation of file.array(dictionary?.get('Annots'))) mark(annotation, name)
    const resources = mark(dictionary?.get('Resources'), name)
    for (const [, font] of file.dictionary(resources?.get('Font')) ?? []) markFont(font)
    for (const [, image] of file.dictionary(resources?.get('XObject')) ?? [])
      mark(image, nameOf(file.dictionary(image), 'Subtype') === 'Image' ? 'picture' : name)
    for (const key of ['ExtGState', 'ColorSpace', 'Pattern', 'Shading'])
      for (const [, resource] of file.dictionary(resources?.get(key)) ?? []) mark(resource, name)
  })
  const attachments = file.attachments()
  for (const [name, part] of [
    [attached.record, 'signed record'],
    [attached.seal, 'seal'],
    [attached.invoice, 'invoice'],
  ] as const) {
    const found = attachments.get(name)
    if (found === undefined) continue
    names.set(found.description, part)
    names.set(found.file, part)
  }
  const { root } = file
  for (const intent of file.array(root?.get('OutputIntents')))
    mark(mark(intent, 'colour profile')?.get('DestOutputProfile'), 'colour profile')
  mark(root?.get('Metadata'), 'document details')
  const info = mark(file.trailer.get('Info'), 'document details')
  if (isDictionary(info ?? undefined)) for (const [, entry] of info ?? []) mark(entry, 'document details')
  return names
}
