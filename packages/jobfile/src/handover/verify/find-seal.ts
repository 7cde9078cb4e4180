/** @module Finds the seal in a file, whatever happened to the file. */
import { indexOf, lastIndexOf, utf8 } from '../pdf/bytes.ts'
import { scanJson } from '../pdf/json.ts'
import { readSeal, type Seal } from '../seal/manifest.ts'
import { askAgain, finding, type HandoverFinding } from './findings.ts'

export type FoundSeal =
  | { readonly seal: Seal; readonly from: number; readonly to: number }
  | { readonly seal: null; readonly finding: HandoverFinding }

/** Ways to recognise the seal's text, the surest first; the others find it when its beginning was changed. */
const marks = ['{"manifest":{"', '"format":"shearline-seal"', '"manifest":{"device":"dev-'] as const

/** Finds and reads the last seal of the file; or says what is wrong with it. */
export function findSeal(bytes: Uint8Array): FoundSeal {
  for (const mark of marks) {
    const at = lastIndexOf(bytes, mark)
    if (at < 0) continue
    const from = mark.startsWith('{') ? at : startOfStream(bytes, at)
    if (from !== null) return readAt(bytes, from)
  }
  return {
    seal: null,
    finding: finding(
      'seal-missing',
      { part: 'seal' },
      'The file holds no seal, so nothing proves that it is whole. It may be cut off.',
      askAgain,
    ),
  }
}

/** The byte after the last `stream` line before a place. */
function startOfStream(bytes: Uint8Array, before: number): number | null {
  const word = 'stream\n'
  const at = lastIndexOf(bytes.subarray(0, before), word)
  return at < 0 ? null : at + word.length
}

function readAt(bytes: Uint8Array, from: number): FoundSeal {
  const scan = scanJson(bytes, from)
  if ('errorAt' in scan) return unreadable(scan.errorAt)
  const text = utf8(bytes.subarray(from, scan.end))
  if (text === null) return unreadable(from)
  const seal = readSeal(JSON.parse(text))
  return seal === null ? unreadable(from) : { seal, from, to: scan.end }
}

function unreadable(byteOffset: number): FoundSeal {
  return {
    seal: null,
    finding: finding(
      'seal-unreadable',
      { part: 'seal', byteOffset },
      'The seal of the file was changed: it cannot be read.',
      askAgain,
    ),
  }
}

/** True when the bytes look like a document of ours or any PDF, even with damage to their beginning or end. */
export function looksLikePdf(bytes: Uint8Array): boolean {
  const head = bytes.subarray(0, 1024)
  const tail = bytes.subarray(Math.max(0, bytes.length - 2048))
  return (
    indexOf(head, '%PDF-') >= 0 ||
    indexOf(tail, 'startxref') >= 0 ||
    indexOf(tail, '%%EOF') >= 0 ||
    indexOf(head, ' 0 obj') >= 0
  )
}
