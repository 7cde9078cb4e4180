/** Reads the reference tables beside the project; tests say clearly when they are absent. */

import { existsSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

const folder = fileURLToPath(new URL('../../../../../shared/reference/', import.meta.url))

/** True when `../shared/reference` is beside the project root. */
export const referencePresent: boolean = existsSync(folder)

/** Added to a test's title when its table is absent, so that the skip says why. */
export const whenAbsent: string = referencePresent
  ? ''
  : ' [skipped: ../shared/reference is not beside the project]'

/** Rows of one table as records by header; line 1 is a comment, line 2 the header. */
export function referenceRows(table: string): readonly Readonly<Record<string, string>>[] {
  const lines = readFileSync(`${folder}${table}`, 'utf8')
    .split('\n')
    .filter((line) => line !== '')
  const header = (lines[1] ?? '').split('\t')
  return lines.slice(2).map((line) => {
    const cells = line.split('\t')
    return Object.fromEntries(header.map((name, index) => [name, cells[index] ?? '']))
  })
}
