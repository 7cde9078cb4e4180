/** @module MDF recordings that lie on a disk: read out of order, in bounded memory, whatever their size. */

import { type RandomAccess, readMdf } from '../mdf/index.ts'
import type { DecodeOptions, DecodeResult } from './decode-capture.ts'
import { Decoder } from './decoder.ts'

/**
 * Decodes an MDF 4 recording from a source with random access (a stream of one larger than `MOST_KEPT_BYTES` may have
 * to be left unread in part). Iterate it: each step gives the bytes read so far, the end gives what it came to.
 * What `source.read` throws passes through.
 */
export function* decodeMdf(
  source: RandomAccess,
  options: DecodeOptions,
): Generator<number, DecodeResult, void> {
  const decoder = new Decoder(options, options)
  for (const bytes of readMdf(source, decoder)) {
    options.progress?.(bytes)
    yield bytes
  }
  decoder.end()
  return {
    recognised: { format: 'mdf', reason: 'it was opened as ASAM MDF 4' },
    summary: decoder.summary,
  }
}
