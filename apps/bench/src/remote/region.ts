import type { PolicyPack } from '@shearline/jobfile'
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
function regionOfZone(zone: string): RadioRegion | null {
  if (zone.startsWith('Europe/')) return 'europe'
  if (zone.startsWith('Australia/')) return 'australia-new-zealand'
  return zones[zone] ?? null
}

/**
 * The region whose bands a job is held against: that of the rules it works by, and only where they name none (or are
 * not on this device: null) the one its time zone tells.
 */
export function regionOfJob(pack: Pick<PolicyPack, 'radio'> | null, zone: string): RadioRegion | null {
  return pack?.radio.region ?? regionOfZone(zone)
}
