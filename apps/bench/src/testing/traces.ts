// biome-ignore-all lint/correctness/noNodejsModules: for tests, which look at the disk
/** @module For tests: looks for a secret in everything that was written. */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

/** The ways in which a secret could stand in a file: raw, hex, base64 at each of its three shifts, and pieces of it. */
export function tracesOf(secret: Uint8Array): readonly Buffer[] {
  const pieces: Buffer[] = []
  // Stores cut and compress what they keep: random bytes cannot be compressed, but they can be cut.
  for (let at = 0; at + 24 <= secret.length; at += 100) pieces.push(Buffer.from(secret.slice(at, at + 24)))
  return pieces.flatMap((piece) => {
    const hex = piece.toString('hex')
    const base64 = [0, 1, 2].map((shift) => piece.subarray(shift, shift + 21).toString('base64'))
    const texts = [
      hex,
      hex.toUpperCase(),
      ...base64,
      ...base64.map((text) => text.replaceAll('+', '-').replaceAll('/', '_')),
    ]
    return [piece, ...texts.map((text) => Buffer.from(text))]
  })
}

/** Files under a folder in which any of the traces stands, and how many files were looked at. */
export function lookFor(
  traces: readonly Buffer[],
  folder: string,
): { readonly found: string[]; readonly files: number } {
  const found: string[] = []
  let files = 0
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile()) continue
    const file = join(entry.parentPath, entry.name)
    const bytes = readFileSync(file)
    files++
    if (traces.some((trace) => bytes.includes(trace))) found.push(file)
  }
  return { found, files }
}
