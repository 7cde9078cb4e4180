/** @module Which photos a page can carry: JPEG (ISO/IEC 10918-1) in grey or three colours, not too large. */

/** A photo larger than this is not carried; the record names it all the same. Own choice, for a file that can be sent. */
const mostBytes = 600_000

/** Start-of-frame markers of the codings that PDF readers take: baseline, extended, progressive (ISO 32000-1, 7.4.8). */
const frames = new Set([0xc0, 0xc1, 0xc2])

/** Width and height of a JPEG in pixels; null when it cannot be carried. Never throws. */
export function jpegSize(bytes: Uint8Array): { readonly width: number; readonly height: number } | null {
  if (bytes.length > mostBytes || bytes[0] !== 0xff || bytes[1] !== 0xd8) return null
  const word = (at: number) => ((bytes[at] ?? 0) << 8) | (bytes[at + 1] ?? 0)
  for (let at = 2; at + 9 < bytes.length; ) {
    const marker = bytes[at + 1] ?? 0
    if (bytes[at] !== 0xff) return null
    if (marker === 0xff) at++
    else if (frames.has(marker)) {
      const [bits, height, width, colours] = [bytes[at + 4], word(at + 5), word(at + 7), bytes[at + 9]]
      // Four colours would want an output intent of their own in PDF/A.
      const fits = bits === 8 && (colours === 1 || colours === 3) && width > 0 && height > 0
      return fits ? { width, height } : null
    } else at += 2 + word(at + 2)
  }
  return null
}
