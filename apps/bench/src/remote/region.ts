import type { RadioRegion } from '@shearline/keywork'

/** Every region there are rows for, in the order they are offered. */
export const regions = [
  'europe',
  'north-america',
  'japan',
  'south-korea',
  'china',
  'australia-new-zealand',
] as const satisfies readonly RadioRegion[]

const zones: Readonly<Record<string, RadioRegion>> = {
  'Asia/Tokyo': 'japan',
  'Asia/Seoul': 'south-korea',
  'Asia/Shanghai': 'china',
  'Pacific/Auckland': 'australia-new-zealand',
}

/**
 * The region of a job by its time zone (names of the IANA time zone database), null where a zone's name does not tell:
 * `America/` covers two continents.
 */
export function regionOfZone(zone: string): RadioRegion | null {
  if (zone.startsWith('Europe/')) return 'europe'
  if (zone.startsWith('Australia/')) return 'australia-new-zealand'
  return zones[zone] ?? null
}
