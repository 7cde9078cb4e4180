/** @module The coin cell in a fob: when to replace it. */

/** `test-loaded`: the rest reading alone proves nothing. `read-again`: the two readings cannot both be right. */
export type FobCellVerdict = 'good' | 'replace-soon' | 'replace' | 'test-loaded' | 'read-again'

/** What a cell's readings say. */
export interface FobCellAnswer {
  readonly verdict: FobCellVerdict
  /** Fall from rest to loaded, volts. */
  readonly sagVolts: number | null
  readonly why: string
}

/** Trade practice 2: "a good cell sags about 0.1 V, a bad one collapses". Half as much again for the meter. */
const GOOD_SAG_VOLTS = 0.15
/** Three times a good sag. Own choice. */
const COLLAPSE_SAG_VOLTS = 0.3
/** Forum figures for 3 V lithium coin cells: trouble from 2.7 V, beyond doubt at 2.5 V (weak sources). */
const LOW_VOLTS = 2.7
const EMPTY_VOLTS = 2.5
/** A lithium coin cell never shows more; it is another cell, or two. */
const MOST_VOLTS = 3.6

/**
 * Judges a 3 V lithium coin cell (manganese dioxide) from its volts at rest and under load: while the fob transmits, or
 * with about 100 ohm for two seconds. `null` is not measured. A cell that reads 3 V at rest may still be bad, so a rest
 * reading can condemn a cell and never clears it. `cells` in series divide the readings.
 */
export function fobCell(restVolts: number | null, loadedVolts: number | null, cells = 1): FobCellAnswer {
  const each = (volts: number | null): number | null =>
    volts === null || !Number.isFinite(volts) || !(cells >= 1) ? null : volts / cells
  const rest = each(restVolts)
  const loaded = each(loadedVolts)
  const sagVolts = rest === null || loaded === null ? null : Math.round((rest - loaded) * 1000) / 1000
  const answer = (verdict: FobCellVerdict, why: string): FobCellAnswer => ({ verdict, sagVolts, why })
  if ((rest !== null && (rest < 0 || rest > MOST_VOLTS)) || (loaded !== null && loaded < 0)) {
    return answer(
      'read-again',
      'no 3 V cell reads that: check the range, the polarity and the number of cells',
    )
  }
  if (sagVolts !== null && sagVolts < -0.02) {
    return answer('read-again', 'a cell does not rise under load')
  }
  if (loaded !== null && loaded < EMPTY_VOLTS) return answer('replace', `below ${EMPTY_VOLTS} V under load`)
  if (rest !== null && rest < LOW_VOLTS) return answer('replace', `below ${LOW_VOLTS} V without any load`)
  if (sagVolts !== null && sagVolts > COLLAPSE_SAG_VOLTS) return answer('replace', 'it collapses under load')
  if (loaded === null)
    return answer('test-loaded', 'a bad cell can read 3 V at rest: read it while the fob transmits')
  if (loaded < LOW_VOLTS) return answer('replace-soon', `below ${LOW_VOLTS} V under load`)
  if (sagVolts === null) return answer('good', `holds ${loaded} V under load`)
  if (sagVolts > GOOD_SAG_VOLTS) return answer('replace-soon', 'it sags more than a good cell')
  return answer('good', 'it sags no more than a good cell')
}
