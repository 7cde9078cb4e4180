/**
 * A number one step on, kept within its range. Steps are counted in whole thousandths, so that tenths of a volt
 * add up to what is written (0.1 + 0.2 is 0.3). An empty field starts at the nearest end of its range to zero.
 */
export function stepped(value: number | null, step: number, least: number, most: number | undefined): number {
  const next =
    value === null ? Math.max(least, 0) : (Math.round(value * 1000) + Math.round(step * 1000)) / 1000
  return Math.min(most ?? Number.POSITIVE_INFINITY, Math.max(least, next))
}
