/**
 * @module Four characters at a time: whether they are digits.
 *
 * Each byte of a 32-bit word is tested by adding to it what carries it over bit 7 when it is large enough
 * ("SIMD within a register", H. S. Warren, Hacker's Delight, chapter 6).
 */

const BIT_7: number = 0x80808080 | 0

/** Zero when the four bytes of `word` are decimal digits. */
export function notDecimal(word: number): number {
  return (((word & 0xf0f0f0f0) | 0) ^ 0x30303030) | ((((word + 0x06060606) & 0xf0f0f0f0) | 0) ^ 0x30303030)
}

/** Zero when the four bytes of `word` are hex digits of either case. */
export function notHex(word: number): number {
  const small = word | 0x20202020
  const below0 = ~(small + 0x50505050)
  const above9 = small + 0x46464646
  const belowA = ~(small + 0x1f1f1f1f)
  const aboveF = small + 0x19191919
  // Making letters small also makes 10-19 (hex) look like digits: either bit 5 or bit 6 must have been set before.
  const control = ~((word << 2) | (word << 1))
  return (below0 | (above9 & belowA) | aboveF | small | control) & BIT_7
}
