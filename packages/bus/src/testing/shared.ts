/** @module The shared inputs that lie beside the project (real recordings, reference tables), for tests. */

import { existsSync, readFileSync } from 'node:fs'

const SHARED = new URL('../../../../../shared/', import.meta.url)

/** Whether the shared inputs are here. Without them the tests that need them are skipped, and say so once. */
export const sharedPresent: boolean = existsSync(SHARED)
if (!sharedPresent) console.warn('skipped: ../shared is not here, so nothing is compared with it')

/** Address of a file among the shared inputs. */
export function sharedUrl(path: string): URL {
  return new URL(path, SHARED)
}

/** Bytes of a shared file. */
export function sharedBytes(path: string): Uint8Array {
  return readFileSync(sharedUrl(path))
}

/** Rows of a shared table: line 1 may be a comment, the next names the columns. */
export function sharedTable(path: string): Record<string, string>[] {
  const lines = readFileSync(sharedUrl(path), 'utf8').split('\n')
  const rows = lines.filter((line) => line !== '' && !line.startsWith('# '))
  const names = (rows[0] ?? '').split('\t')
  return rows.slice(1).map((line) => {
    const cells = line.split('\t')
    return Object.fromEntries(names.map((name, index) => [name, cells[index] ?? '']))
  })
}
