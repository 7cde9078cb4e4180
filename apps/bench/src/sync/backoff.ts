/** How long to wait before the next try, in milliseconds: doubling from one second, at most a minute. */
export const firstWait = 1_000
export const longestWait = 60_000

/**
 * Full jitter: anywhere between nothing and the doubled wait, so that many devices that lost the same
 * network do not all come back in the same second. `chance` is between 0 and 1.
 */
export function waitBefore(tries: number, chance: number): number {
  const ceiling = Math.min(longestWait, firstWait * 2 ** Math.min(tries, 16))
  return Math.round(ceiling * (0.25 + 0.75 * chance))
}
