/** @module Holds the seal's own place at the end of the file against what the seal makes it. */
import { canonicalJson } from '../../chain/index.ts'
import type { PdfFile } from '../pdf/file.ts'
import type { Seal } from '../seal/manifest.ts'
import { attached } from '../seal/parts.ts'
import { updateBytes, withWhole } from '../seal/update.ts'
import { askAgain, finding, type HandoverFinding } from './findings.ts'

/** Makes the seal's update again and compares it with what stands at the end of the file, byte for byte. */
export function checkUpdate(
  bytes: Uint8Array,
  base: PdfFile,
  from: number,
  seal: Seal,
): readonly HandoverFinding[] {
  if (base.attachments().get(attached.seal)?.file !== seal.manifest.object) {
    const what = 'The seal stands in the place of another object of the file.'
    return [finding('seal-changed', { part: 'seal', byteOffset: from }, what, askAgain)]
  }
  const { whole } = seal.manifest
  if (whole !== undefined && canonicalJson(whole) !== canonicalJson(withWhole(base, seal.manifest).whole)) {
    const what = 'The seal names other hashes of the whole file than its bytes have.'
    return [finding('seal-changed', { part: 'seal', byteOffset: from }, what, askAgain)]
  }
  const expected = updateBytes(base, seal)
  const actual = bytes.subarray(from)
  const length = Math.min(expected.length, actual.length)
  let same = 0
  while (same < length && expected[same] === actual[same]) same++
  const byteOffset = from + same
  if (same < expected.length) {
    const what =
      same === actual.length
        ? 'The file is cut off in its seal.'
        : 'The seal of the file is not as it was written from this byte on.'
    return [finding('seal-changed', { part: 'seal', byteOffset }, what, askAgain)]
  }
  if (actual.length === expected.length) return []
  const what = `${actual.length - expected.length} bytes were added after the seal.`
  return [finding('bytes-after-seal', { part: 'after the seal', byteOffset }, what, askAgain)]
}
