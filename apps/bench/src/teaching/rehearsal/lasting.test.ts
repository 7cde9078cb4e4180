import { describe, expect, it } from 'vitest'
import { lasting, running } from './lasting.ts'

describe('how long', () => {
  it('says seconds while they are few, then whole minutes, never fewer than it takes', () => {
    expect([lasting(1), lasting(89), lasting(91), lasting(1200)]).toEqual([
      '1 second',
      '89 seconds',
      '2 minutes',
      '20 minutes',
    ])
    expect(lasting(null)).toBe('no figure')
  })

  it('runs in minutes and seconds, and in hours once there are any', () => {
    expect([running(0), running(192), running(3725), running(-4)]).toEqual([
      '00:00',
      '03:12',
      '1:02:05',
      '00:00',
    ])
  })
})
