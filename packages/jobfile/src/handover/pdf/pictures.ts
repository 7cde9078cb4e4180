/** @module The pictures that a page shows. */
import { sha256OfBytes } from '../../chain/index.ts'
import { nameOf, type PdfFile } from './file.ts'
import { Ref } from './objects.ts'

/**
 * SHA-256 of each picture among a page's resources: of its bytes as they stand in the file when they are a JPEG, as
 * ours are; empty text for anything else, since no document of ours carries it.
 */
export function picturesOf(file: PdfFile, page: Ref): readonly string[] {
  const resources = file.dictionary(file.dictionary(page)?.get('Resources'))
  const objects = file.dictionary(resources?.get('XObject'))
  return [...(objects ?? [])].map(([, value]) => {
    if (!(value instanceof Ref)) return ''
    const stream = file.object(value.object)?.stream
    const isJpeg = nameOf(file.dictionary(value), 'Filter') === 'DCTDecode'
    return stream == null || !isJpeg ? '' : sha256OfBytes(file.bytes.subarray(stream.from, stream.to))
  })
}
