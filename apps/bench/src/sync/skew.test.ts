import { describe, expect, it } from 'vitest'
import { clockAhead, minutesOf } from './skew.ts'

// The Date header is an IMF-fixdate in whole seconds (RFC 9110, 5.6.7 and 6.6.1; the example instant stands there).
const header = 'Sun, 06 Nov 1994 08:49:37 GMT'
const instant = Date.UTC(1994, 10, 6, 8, 49, 37)

describe('clocks', () => {
  it('agree when the answer names the second in which it was asked for', () => {
    expect(minutesOf(clockAhead(header, instant + 100, instant + 900) ?? Number.NaN)).toBe(0)
  })

  it('are told apart by the middle of question and answer, so a slow line looks like no difference', () => {
    expect(clockAhead(header, instant - 40_000, instant + 41_000)).toBe(0)
  })

  it('are said to be ahead or behind in whole minutes from two minutes on', () => {
    const ahead = clockAhead(header, instant + 7 * 60_000, instant + 7 * 60_000 + 200) ?? 0
    expect(minutesOf(ahead)).toBe(7)
    expect(minutesOf(-ahead)).toBe(-7)
    expect(minutesOf(119_000)).toBe(0)
    expect(minutesOf(120_000)).toBe(2)
  })

  it('are not compared when the header is no date or the answer took longer than what is worth saying', () => {
    expect(clockAhead(null, 0, 0)).toBeNull()
    expect(clockAhead('soon', 0, 0)).toBeNull()
    expect(clockAhead(header, instant, instant + 300_000)).toBeNull()
  })
})
