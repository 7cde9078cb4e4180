/** @module Which VIN a code or a picture's letters hold, if any. Proposals only: a person looks before one is taken. */
import { isWellFormedVin, readVin, tidyVin } from '@shearline/keywork'

const vinLength = 17

/**
 * The VIN in what a bar code says, or null. Some Code 39 labels put the data identifier `I` before it (ANSI MH10.8.2,
 * from memory); a two-dimensional code may hold more than the VIN. What has 17 signs but is not well formed is given
 * too, so that it can be seen and mended.
 */
export function vinInCode(text: string): string | null {
  const tidy = tidyVin(text)
  if (tidy.length === vinLength && /^[A-Z0-9]+$/.test(tidy)) return tidy
  if (tidy.length === vinLength + 1 && tidy.startsWith('I') && isWellFormedVin(tidy.slice(1)))
    return tidy.slice(1)
  const runs = text.toUpperCase().match(/(?<![A-Z0-9])[A-Z0-9]{17}(?![A-Z0-9])/g) ?? []
  return runs.find(isWellFormedVin) ?? null
}

/** A VIN taken from a picture, and what in it was read. */
export interface PicturedVin {
  readonly vin: string
  readonly picture: 'letters' | 'code'
}

/** One sign as the letter reader saw it. */
export interface SeenSign {
  readonly sign: string
  /** 0 to 100, as the reader states it. */
  readonly confidence: number
}

/** 17 signs in a row that may be the VIN. */
export interface PlateVin {
  readonly vin: string
  readonly signs: readonly SeenSign[]
}

/** Signs below this confidence are pointed out one by one. Our own choice, no source. */
export const doubtfulBelow = 85

/**
 * What may be the VIN among the lines of a picture, likeliest first: form and check digit right, then form right, each
 * by the reader's confidence. Gaps, stars and dashes between the signs are passed over.
 */
export function vinsOnPlate(lines: readonly (readonly SeenSign[])[]): readonly PlateVin[] {
  const found = new Map<string, PlateVin & { readonly rank: number }>()
  for (const line of lines) {
    const signs = line
      .map(({ sign, confidence }) => ({ sign: sign.toUpperCase(), confidence }))
      .filter(({ sign }) => /^[A-Z0-9]$/.test(sign))
    for (let start = 0; start + vinLength <= signs.length; start++) {
      const piece = signs.slice(start, start + vinLength)
      const vin = piece.map(({ sign }) => sign).join('')
      const reading = readVin(vin)
      if (!reading.wellFormed) continue
      const sure = piece.reduce((sum, { confidence }) => sum + confidence, 0) / vinLength
      // A line that is the VIN and nothing else is likelier than a piece cut out of a longer one.
      const alone = signs.length === vinLength ? 50 : 0
      const rank = (reading.checkDigit?.ok === true ? 200 : 0) + alone + sure
      if ((found.get(vin)?.rank ?? -1) < rank) found.set(vin, { vin, signs: piece, rank })
    }
  }
  return [...found.values()].sort((a, b) => b.rank - a.rank).slice(0, 3)
}
