/** @module Every byte as two hex digits, written once: messages hold hundreds of thousands. */

/** Lower-case hex of a byte by its value. */
export const LOWER_HEX: readonly string[] = Array.from({ length: 256 }, (_, byte) =>
  byte.toString(16).padStart(2, '0'),
)

/** Upper-case hex of a byte by its value. */
export const UPPER_HEX: readonly string[] = LOWER_HEX.map((digits) => digits.toUpperCase())
