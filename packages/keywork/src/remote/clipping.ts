/** @module Values at the end of the converter's range. */

import type { IqBlock } from './iq-reader.ts'
import { SAMPLE_LAYOUTS, type SampleFormat } from './sample-format.ts'

/** A float recording has no known end: its own largest value is taken for one when this share of values is at it. */
const FLOAT_RAIL_SHARE = 0.0005

/** Values at or beyond these are clipped. null: the recording meets no end. */
export function railsOf(blocks: readonly IqBlock[], format: SampleFormat): readonly [number, number] | null {
  const { rails } = SAMPLE_LAYOUTS[format]
  if (rails !== null) return rails
  let most = 0
  let values = 0
  for (const block of blocks) {
    for (let at = 0; at < block.values.length; at += 1)
      most = Math.max(most, Math.abs(block.values[at] as number))
    values += block.values.length
  }
  const rail = 0.9995 * most
  let met = 0
  for (const block of blocks)
    for (let at = 0; at < block.values.length; at += 1)
      if (Math.abs(block.values[at] as number) >= rail) met += 1
  return most > 0 && met > FLOAT_RAIL_SHARE * values ? [-rail, rail] : null
}

/** Counts values at the rails between two samples. */
export function countClipped(
  blocks: readonly IqBlock[],
  rails: readonly [number, number],
  from: number,
  to: number,
): { readonly clipped: number; readonly values: number } {
  const [low, high] = rails
  let clipped = 0
  let values = 0
  for (const block of blocks) {
    const first = Math.max(0, Math.ceil(from) - block.startSample)
    const end = Math.min(block.samples, Math.floor(to) - block.startSample)
    if (end <= first) continue
    const raw = block.values
    for (let at = 2 * first; at < 2 * end; at += 1) {
      const value = raw[at] as number
      if (value <= low || value >= high) clipped += 1
    }
    values += 2 * (end - first)
  }
  return { clipped, values }
}
