import { describe, expect, it } from 'vitest'
import { clock, day, dayKey } from './instants.ts'

describe('instants as people read them', () => {
  it('shows the time of the job, wherever the reader is (offsets as in the IANA time zone database)', () => {
    expect(clock('2026-11-25T09:12:00.000Z', 'Europe/Lisbon')).toBe('09:12')
    expect(clock('2026-07-25T09:12:00.000Z', 'Europe/Lisbon')).toBe('10:12')
    expect(clock('2026-11-25T09:12:00.000Z', 'Pacific/Auckland')).toBe('22:12')
  })

  it('puts an instant on the day it was at the job', () => {
    expect(dayKey('2026-11-25T23:30:00.000Z', 'Europe/Lisbon')).toBe('2026-11-25')
    expect(dayKey('2026-11-25T23:30:00.000Z', 'Europe/Warsaw')).toBe('2026-11-26')
  })

  it('says the year of a day that is not in the present one, as the day of a deletion years away', () => {
    const now = new Date('2026-12-31T23:30:00.000Z')
    expect(day('2032-11-26T12:00:00.000Z', 'Europe/Lisbon', now)).toContain('2032')
    expect(day('2026-11-25T12:00:00.000Z', 'Europe/Lisbon', now)).not.toContain('2026')
    // In Warsaw the new year has begun.
    expect(day('2026-11-25T12:00:00.000Z', 'Europe/Warsaw', now)).toContain('2026')
  })

  it('shows an instant of a zone it does not know in UTC rather than not at all', () => {
    expect(clock('2026-11-25T09:12:00.000Z', 'Nowhere/At_All')).toBe('09:12')
  })
})
