/** @module Which characters a VIN may hold, and how a typed or scanned one is tidied. */

/** Digits and letters without I, O and Q (ISO 3779; 49 CFR 565.15). */
export const VIN_ALPHABET = '0123456789ABCDEFGHJKLMNPRSTUVWXYZ' as string

export const VIN_LENGTH = 17 as number

/** What a forbidden letter most likely was on the plate. */
export const FORBIDDEN_LOOK_ALIKES: Readonly<Record<string, string>> = { I: '1', O: '0', Q: '0' }

/**
 * Upper case, without spaces and hyphens; everything else stays as given.
 * Only a to z are raised: other scripts must not turn into a legal letter.
 */
export function tidyVin(text: string): string {
  return text
    .replace(/[\s\u00AD\u2010-\u2015\u2212\u200B\uFEFF-]/gu, '')
    .replace(/[a-z]/g, (letter) => letter.toUpperCase())
}

/** True when a tidied VIN has 17 characters, all of the alphabet. */
export function isWellFormedVin(vin: string): boolean {
  const characters = [...vin]
  return characters.length === VIN_LENGTH && characters.every((character) => VIN_ALPHABET.includes(character))
}
