import { europeanUnionPack, neutralPack, unitedStatesPack } from '@shearline/jobfile'
import { describe, expect, it } from 'vitest'
import { regionOfJob, regions } from './region.ts'

describe('the region whose radio bands are shown', () => {
  it('is that of the rules the job works by, wherever its clock stands', () => {
    expect(regionOfJob(unitedStatesPack, 'Europe/Berlin')).toBe('north-america')
    expect(regionOfJob(europeanUnionPack, 'America/Chicago')).toBe('europe')
    for (const region of regions) {
      const own = { radio: { ...neutralPack.radio, region } }
      expect(regionOfJob(own, 'Asia/Tokyo')).toBe(region)
    }
  })

  it('is told by the time zone where the rules name none, or are not here', () => {
    for (const pack of [neutralPack, null]) {
      expect(regionOfJob(pack, 'Europe/Warsaw')).toBe('europe')
      expect(regionOfJob(pack, 'Asia/Tokyo')).toBe('japan')
      expect(regionOfJob(pack, 'Australia/Perth')).toBe('australia-new-zealand')
    }
  })

  it('is open where neither tells: a zone of America covers two continents', () => {
    expect(regionOfJob(neutralPack, 'America/Chicago')).toBeNull()
    expect(regionOfJob(null, 'Etc/UTC')).toBeNull()
  })
})
