/**
 * @module A signature as a file: an SVG that any browser shows, holding the drawing, who signed, and every word that was
 * shown when it was signed. The fact names its SHA-256 and, apart from it, that of the words.
 */
import { pad } from './strokes.ts'

/** How somebody signed. */
export type Mark =
  | { readonly how: 'drawn'; readonly path: string }
  | { readonly how: 'typed'; readonly name: string }

/** What a signature's file holds. */
export interface SignatureFile {
  readonly signer: string
  /** The words as they were shown. */
  readonly shown: string
  readonly mark: Mark
}

/** Only moves, lines and curves with numbers: what is read back is drawn, never run. */
const pathForm = /^[MLQh0-9 .-]*$/

const escaped = (text: string) =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')

/** Writes the file. */
export function writeSignature({ signer, shown, mark }: SignatureFile): string {
  const drawing =
    mark.how === 'drawn'
      ? `<path fill="none" stroke="#111" stroke-width="3.5" stroke-linecap="round" stroke-linejoin="round" d="${mark.path}"/>`
      : `<text x="${pad.width / 2}" y="120" text-anchor="middle" font-size="44" fill="#111">${escaped(mark.name)}</text>`
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${pad.width} ${pad.height}">`,
    `<title>${escaped(signer)}</title>`,
    `<desc xml:space="preserve">${escaped(shown)}</desc>`,
    drawing,
    '</svg>\n',
  ].join('\n')
}

/** Reads a file back; null when it is not one of ours. Needs a page (DOMParser). */
export function readSignature(text: string): SignatureFile | null {
  const page = new DOMParser().parseFromString(text, 'image/svg+xml')
  const shown = page.querySelector('svg > desc')?.textContent
  const signer = page.querySelector('svg > title')?.textContent
  if (shown == null || signer == null) return null
  const path = page.querySelector('svg > path')?.getAttribute('d')
  if (path != null) return pathForm.test(path) ? { signer, shown, mark: { how: 'drawn', path } } : null
  const name = page.querySelector('svg > text')?.textContent
  return name == null ? null : { signer, shown, mark: { how: 'typed', name } }
}

/** UTF-8 bytes of words, for hashing and keeping. */
export function bytesOf(words: string): Uint8Array<ArrayBuffer> {
  return new Uint8Array(new TextEncoder().encode(words))
}
