/** @module Tells the format of a recording by its first bytes, never by its name. */

import { type CaptureFormat, type CaptureFormatName, HEAD_BYTES } from './contract.ts'

/** The format of a recording and why it is that one; `unknown` with what the bytes are not. */
export type Recognised =
  | { readonly format: CaptureFormatName; readonly reason: string }
  | { readonly format: 'unknown'; readonly reason: string }

/** Finds the format among `formats`; the first that recognises the bytes wins. */
export function recogniseAmong(
  formats: readonly CaptureFormat[],
  head: Uint8Array,
): { readonly format: CaptureFormat; readonly reason: string } | undefined {
  const bytes = head.subarray(0, HEAD_BYTES)
  for (const format of formats) {
    const reason = format.recognise(bytes)
    if (reason !== undefined) return { format, reason }
  }
  return undefined
}

/** Says why no format fits. */
export function explainUnknown(head: Uint8Array): string {
  if (head.length === 0) return 'it is empty'
  if (head.every((byte) => byte === 0)) return 'it begins with nothing but zero bytes'
  return 'its first bytes are neither candump text, pcap, pcapng, MDF 4, CSV nor gzip'
}
