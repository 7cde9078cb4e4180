/** @module The recordings beside the project, with what independent tools measured on them. */

import { existsSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { IqReader } from '../iq-reader.ts'
import { measureRemote } from '../measure.ts'
import { readRecordingName } from '../recording-name.ts'
import { resolveSetting } from '../recording-setting.ts'
import type { MeasuredRemote } from '../types.ts'

const folder = fileURLToPath(new URL('../../../../../../shared/radio/', import.meta.url))

/** True when `../shared/radio` is beside the project root. */
export const radioPresent: boolean = existsSync(`${folder}MANIFEST.tsv`)

/** Added to a title when the recordings are absent, so that the skip says why. */
export const whenRadioAbsent: string = radioPresent
  ? ''
  : ' [skipped: ../shared/radio is not beside the project]'

/** One recording's row of the manifest. */
export interface RadioRow {
  /** `car-remote-a-1`. */
  readonly name: string
  readonly path: string
  readonly device: string
  readonly modulation: 'OOK' | '2-FSK'
  readonly cells: Readonly<Record<string, string>>
}

/** Rows of the manifest; none when the folder is absent. */
export function radioRows(): readonly RadioRow[] {
  if (!radioPresent) return []
  const lines = readFileSync(`${folder}MANIFEST.tsv`, 'utf8').split('\n').filter(Boolean)
  const header = (lines[0] ?? '').split('\t')
  return lines.slice(1).map((line) => {
    const cells = Object.fromEntries(line.split('\t').map((cell, at) => [header[at] ?? '', cell]))
    const file = (cells.file ?? '').replace(/^files\//, '')
    return {
      name: file.split('_')[0] ?? file,
      path: `${folder}files/${file}`,
      device: cells.family ?? '',
      modulation: cells.truth_modulation === 'FSK' ? '2-FSK' : 'OOK',
      cells,
    }
  })
}

/** Rows for `test.each`, by name; without recordings one entry whose name says why its test is skipped. */
export function titledRows(rows: readonly RadioRow[]): readonly (readonly [string, RadioRow])[] {
  if (radioPresent) return rows.map((row) => [row.name, row] as const)
  const none: RadioRow = { name: '', path: '', device: '', modulation: 'OOK', cells: {} }
  return [[`the recordings${whenRadioAbsent}`, none]]
}

const measured = new Map<string, MeasuredRemote>()

/** Measures a recording, once. */
export function measureRow(row: RadioRow): MeasuredRemote {
  const known = measured.get(row.path)
  if (known !== undefined) return known
  const sigmf = readRecordingName(row.path).sigmf
    ? { sigmf: readFileSync(row.path.replace('.sigmf-data', '.sigmf-meta'), 'utf8') }
    : {}
  const { setting, format, headerBytes } = resolveSetting({ name: row.path, ...sigmf })
  if (setting === null || format === null) throw new Error(`no setting for ${row.name}`)
  const reader = new IqReader(format, { headerBytes })
  reader.push(readFileSync(row.path))
  const result = measureRemote(reader.finish(), setting)
  measured.set(row.path, result)
  return result
}

/** `404(384) 828(264)` as lengths and counts, the most frequent first. */
export function referenceLengths(cell: string | undefined): readonly { us: number; count: number }[] {
  const found = [...(cell ?? '').matchAll(/(\d+)\((\d+)\)/g)]
  return found
    .map((match) => ({ us: Number(match[1]), count: Number(match[2]) }))
    .toSorted((a, b) => b.count - a.count)
}
