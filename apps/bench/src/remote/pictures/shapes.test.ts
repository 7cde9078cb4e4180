import { describe, expect, it } from 'vitest'
import { across, outlineArea, spectrumLines, waterfallShades, wide, windowsOf } from './shapes.ts'

const near = { sampleRateHz: 250_000, shiftHz: 0, carrierOffsetHz: -40_000, widthHz: 20_000 }

describe('the pictures of two recordings', () => {
  it('share a range that shows both carriers and nothing that was not recorded', () => {
    const [window, other] = windowsOf([near, { ...near, shiftHz: 80_000, carrierOffsetHz: 120_000 }])
    // The second recording ends at 80 + 125 kHz.
    expect(window).toEqual({ lowHz: -100_000, highHz: 205_000 })
    expect(other).toEqual(window)
    if (window === undefined) return
    for (const carrier of [-40_000, 200_000]) {
      expect(across(carrier, window)).toBeGreaterThan(0)
      expect(across(carrier, window)).toBeLessThan(wide)
    }
  })

  it('have a range of their own when they were recorded on different bands', () => {
    // 433.92 and 868.42 MHz.
    const windows = windowsOf([near, { ...near, shiftHz: 434_500_000 }])
    expect(windows).toEqual([
      { lowHz: -100_000, highHz: 20_000 },
      { lowHz: 434_400_000, highHz: 434_520_000 },
    ])
  })

  it('put the same frequency of two recordings at the same place, whatever their centres', () => {
    const window = { lowHz: -50_000, highHz: 50_000 }
    const line = (frequencyHz: number, shiftHz: number) =>
      spectrumLines({ frequencyHz: [frequencyHz], burstDb: [0], quietDb: [-30] }, shiftHz, window).burst
    expect(line(25_000, 0)).toBe('M750 6')
    expect(line(-15_000, 40_000)).toBe(line(25_000, 0))
  })

  it('let both bursts begin at the same place', () => {
    const lead = (leadSeconds: number) =>
      outlineArea({ secondsPerPoint: 0.1, leadSeconds, levelsDb: [-40, -40, 0, 0] }, 0.2, 1)
    // The burst begins 0.2 s into both.
    expect(lead(0.2)).toContain('L200 6L300 6')
    expect(outlineArea({ secondsPerPoint: 0.1, leadSeconds: 0.1, levelsDb: [-40, 0, 0] }, 0.2, 1)).toContain(
      'L200 6L300 6',
    )
  })

  it('shade a waterfall by its peaks, each cell once', () => {
    const levels = new Uint8Array(2 * 4)
    levels[1 * 4 + 2] = 255
    levels[0 * 4 + 1] = 120
    const shades = waterfallShades(
      { columns: 2, rows: 4, secondsPerColumn: 1, lowHz: -2, highHz: 2, lowestDb: -80, levels },
      0,
      { lowHz: -2, highHz: 2 },
    )
    expect(shades.filter(({ d }) => d !== '')).toHaveLength(2)
    // The strongest, in the last shade: the second half of the time, the third quarter from below.
    expect(shades.at(-1)?.d.startsWith('M500 48.4H1000')).toBe(true)
    expect(shades[2]?.d.startsWith('M0 73.4H500')).toBe(true)
  })
})
