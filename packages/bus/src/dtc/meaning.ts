/**
 * @module What the text of a code says: the area, who controls it, and words where we have our own.
 *
 * Who controls which codes: SAE J2012 as `dtc_structure.tsv` of the shared reference states it (J2012:2007 section
 * titles 5.4.1 to 5.5.2; P and U3 from memory).
 */

import { dtcBytes } from './code.ts'
import { failureTypeWords } from './failure-type.ts'
import { DTC_WORDS, type DtcTopic } from './words.ts'

/** The part of the vehicle a code's letter names. */
export type DtcArea = 'powertrain' | 'chassis' | 'body' | 'network'

/** Who says what a code means; codes B3 and C3 are reserved by the standard, later editions assign some. */
export type DtcControl = 'standard' | 'maker' | 'reserved'

/** What is known about a code from its text alone. */
export interface DtcMeaning {
  readonly area: DtcArea
  readonly controlledBy: DtcControl
  readonly topic?: DtcTopic
  /** Our own short words, English; only for codes of the standard. */
  readonly text?: string
  /** The failure type byte, when the code carries one. */
  readonly failureType?: { readonly value: number; readonly text: string }
}

const AREAS: readonly DtcArea[] = ['powertrain', 'chassis', 'body', 'network']

function controlOf(area: number, digit: number, rest: number): DtcControl {
  if (digit === 0) return 'standard'
  if (area === 0) return digit === 2 || (digit === 3 && rest >= 0x400) ? 'standard' : 'maker'
  if (digit < 3) return 'maker'
  return area === 3 ? 'standard' : 'reserved'
}

/**
 * What the text of a code says: `P0513`, `U0140-87`. `undefined` when it is no code. The failure type is read as that
 * of SAE J2012 (DTC formats 00 and 04); codes of other formats use the third byte otherwise.
 */
export function dtcMeaning(code: string): DtcMeaning | undefined {
  const bytes = dtcBytes(code)
  const [high, low, failureType] = bytes ?? []
  if (high === undefined || low === undefined) return undefined
  const area = high >> 6
  const words = DTC_WORDS.get(code.toUpperCase().slice(0, 5))
  return {
    area: AREAS[area] as DtcArea,
    controlledBy: controlOf(area, (high >> 4) & 3, ((high & 15) << 8) | low),
    ...words,
    ...(failureType === undefined
      ? {}
      : { failureType: { value: failureType, text: failureTypeWords(failureType) } }),
  }
}
