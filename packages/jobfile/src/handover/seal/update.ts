/** @module The bytes that add the seal to a file: an incremental update (ISO 32000-1, 7.5.6). */
import { canonicalJson, sha256OfBytes, toBase64Url } from '../../chain/index.ts'
import type { PdfFile } from '../pdf/file.ts'
import { type PdfValue, Ref, Text } from '../pdf/objects.ts'
import { type Manifest, manifestBytes, type Seal } from './manifest.ts'

/** A manifest with the hashes that a stranger checks by hand: of everything before the update, and of its frame. */
export function withWhole(base: PdfFile, manifest: Manifest): Manifest {
  const whole = (rest: string) => ({ bytes: base.bytes.length, rest, sha256: sha256OfBytes(base.bytes) })
  // Hash and signature stand in with their length: the frame holds lengths and places, and nothing of either.
  const draft = { ...manifest, whole: whole('0'.repeat(64)) }
  const update = updateBytes(base, { manifest: draft, signature: toBase64Url(new Uint8Array(64)) })
  const frame = new TextDecoder()
    .decode(update)
    .split('\n')
    .filter((line) => !line.startsWith('{"manifest":{') && !line.startsWith('/ID ['))
    .join('\n')
  return { ...manifest, whole: whole(sha256OfBytes(frame)) }
}

/** The seal as it stands in the file. */
export function sealText(seal: Seal): string {
  return canonicalJson(seal)
}

/**
 * The whole update for a seal: nothing in it is free, so verification makes it again and compares every byte.
 * It replaces the one object that was kept for the seal, and adds its cross-reference section and trailer.
 */
export function updateBytes(base: PdfFile, seal: Seal): Uint8Array {
  const { manifest } = seal
  const text = new TextEncoder().encode(sealText(seal))
  const changed = manifest.madeAt.replace(/[^0-9]/g, '').slice(0, 14)
  const head = [
    `${manifest.object} 0 obj`,
    '<<',
    '/Type /EmbeddedFile',
    '/Subtype /application#2Fjson',
    `/Params << /ModDate (D:${changed}Z) /Size ${text.length} >>`,
    `/Length ${text.length}`,
    '>>',
    'stream',
    '',
  ].join('\n')
  const ids = base.trailer.get('ID')
  const first = Array.isArray(ids) && ids[0] instanceof Text ? hexOf(ids[0].text) : ''
  // The second identifier changes with every change of the file (ISO 32000-1, 14.4).
  const second = sha256OfBytes(manifestBytes(manifest)).slice(0, 32)
  const objectAt = base.bytes.length
  const tail = (tableAt: number) =>
    [
      '',
      'endstream',
      'endobj',
      'xref',
      `${manifest.object} 1`,
      `${String(objectAt).padStart(10, '0')} 00000 n `,
      'trailer',
      '<<',
      `/Size ${numberText(base.trailer.get('Size'))}`,
      `/Root ${refText(base.trailer.get('Root'))}`,
      `/Info ${refText(base.trailer.get('Info'))}`,
      `/ID [<${first}> <${second}>]`,
      `/Prev ${base.tableAt}`,
      '>>',
      'startxref',
      String(tableAt),
      '%%EOF',
      '',
    ].join('\n')
  const encode = (part: string) => new TextEncoder().encode(part)
  const tableAt = objectAt + encode(head).length + text.length + '\nendstream\nendobj\n'.length
  const end = encode(tail(tableAt))
  const start = encode(head)
  const bytes = new Uint8Array(start.length + text.length + end.length)
  bytes.set(start)
  bytes.set(text, start.length)
  bytes.set(end, start.length + text.length)
  return bytes
}

function hexOf(text: string): string {
  return [...text].map((character) => character.charCodeAt(0).toString(16).padStart(2, '0')).join('')
}

const numberText = (value: PdfValue | undefined) => (typeof value === 'number' ? String(value) : '0')
const refText = (value: PdfValue | undefined) => (value instanceof Ref ? `${value.object} 0 R` : 'null')
