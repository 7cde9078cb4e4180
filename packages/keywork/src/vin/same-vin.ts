/** @module Do all sources name the same car? */

import { tidyVin } from './alphabet.ts'
import type { SourcedVin, VinAgreement } from './types.ts'

/**
 * Compares VINs read from several sources after tidying them. Sources with empty text are left out.
 * Agreement says nothing about form: read the agreed VIN with `readVin` too.
 */
export function sameVin(sources: readonly SourcedVin[]): VinAgreement {
  const bySource = sources
    .map((sourced) => ({ source: sourced.source, vin: tidyVin(sourced.text) }))
    .filter((sourced) => sourced.vin !== '')
  const groups = new Map<string, string[]>()
  for (const { source, vin } of bySource) groups.set(vin, [...(groups.get(vin) ?? []), source])
  // Array.sort is stable: equally supported readings stay in the order given.
  const readings = [...groups]
    .map(([vin, names]) => ({ vin, sources: names }))
    .sort((a, b) => b.sources.length - a.sources.length)
  const positions = differingPositions(readings.map((reading) => reading.vin))
  const [only] = readings
  if (bySource.length < 2) {
    return {
      verdict: 'too-few',
      vin: only?.vin ?? null,
      positions: [],
      readings,
      what: only === undefined ? 'No source has been read.' : 'Only one source: read a second one.',
    }
  }
  if (readings.length === 1 && only !== undefined) {
    return {
      verdict: 'agree',
      vin: only.vin,
      positions: [],
      readings,
      what: `${bySource.length} sources agree.`,
    }
  }
  return {
    verdict: 'conflict',
    vin: null,
    positions,
    readings,
    what: `${bySource.length} sources give ${readings.length} different VINs; they part at ${placeWords(positions)}.`,
  }
}

function differingPositions(vins: readonly string[]): readonly number[] {
  const split = vins.map((vin) => [...vin])
  const longest = Math.max(0, ...split.map((characters) => characters.length))
  const positions: number[] = []
  for (let index = 0; index < longest; index += 1) {
    if (new Set(split.map((characters) => characters[index] ?? '')).size > 1) positions.push(index + 1)
  }
  return positions
}

function placeWords(positions: readonly number[]): string {
  return `position${positions.length === 1 ? '' : 's'} ${positions.join(', ')}`
}
