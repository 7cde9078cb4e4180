import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { MeterLines, parseMeterLine, SCPI_ASK_VOLTS } from './meter-line.ts'

const volts = (value: number) => ({ quantity: 'volts', value })
const amperes = (value: number) => ({ quantity: 'amperes', value })

describe('POW-33 a meter line', () => {
  // Number forms NR1, NR2 and NR3 of IEEE 488.2 section 8.7.2 to 8.7.4, which SCPI-1999 takes for its answers.
  it.each([
    ['+1.25430000E+01', 12.543],
    ['12', 12],
    ['-0.002', -0.002],
    ['1.3E1', 13],
  ])('is volts when it is the bare number %s, because volts were asked for', (line, value) => {
    expect(parseMeterLine(line)).toEqual(volts(value))
  })

  it.each([
    ['12.54 V', volts(12.54)],
    ['12,54 VDC', volts(12.54)],
    ['DC 12.54V', volts(12.54)],
    ['  CH1:  +12.54 Volts DC\u0000', volts(12.54)],
    ['12540 mV', volts(12.54)],
    ['12540MV', volts(12.54)],
    ['2026-11-25 09:12:04;12.54;V', { refused: 'several-numbers' }],
    ['-0.031 A', amperes(-0.031)],
    ['31 mA', amperes(0.031)],
    ['250 µA', amperes(0.00025)],
    ['12.54 V  3.1 A', { refused: 'several-numbers' }],
    ['.9 V', volts(0.9)],
  ])('reads %s', (line, expected) => {
    expect(parseMeterLine(line)).toEqual(expected)
  })

  // 9.9E37 and 9.91E37: SCPI-1999 volume 1, 7.2.1.4 and 7.2.1.5. "OL" on the display: common practice, no source.
  it.each(['+9.90000000E+37', '9.91E37', 'OL', 'O.L V', '0.L', 'OVLD'])('says overload for %s', (line) => {
    expect(parseMeterLine(line)).toEqual({ refused: 'overload' })
  })

  it.each([
    ['230.1 VAC', 'alternating'],
    ['AC 12.0 V', 'alternating'],
    ['12.0 V~', 'alternating'],
    ['470 ohm', 'other-unit'],
    ['433.92 MHz', 'other-unit'],
    ['21.5 °C', 'other-unit'],
    ['READY', 'no-number'],
    ['', 'empty'],
    ['V', 'no-number'],
  ])('refuses %s by name', (line, refused) => {
    expect(parseMeterLine(line)).toEqual({ refused })
  })

  it('gives back every voltage that is written in the scientific form of SCPI', () => {
    fc.assert(
      fc.property(fc.double({ min: -60, max: 60, noNaN: true }), (value) => {
        const read = parseMeterLine(value.toExponential(8))
        expect('value' in read && read.value).toBeCloseTo(value, 6)
      }),
    )
  })

  it('never throws and never gives a number that is none', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (line) => {
        const read = parseMeterLine(line)
        if ('value' in read) expect(Number.isFinite(read.value)).toBe(true)
        else expect(read.refused).not.toBe('')
      }),
      { numRuns: 500 },
    )
  })
})

describe('POW-33 lines of a serial port', () => {
  it('are the same however the pieces fall', () => {
    const sent = '12.50 V\r\n12.49 V\n\r\n12.48 V\r12.47'
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 7 }), { minLength: 40, maxLength: 40 }), (sizes) => {
        const lines = new MeterLines()
        const heard: string[] = []
        let at = 0
        for (const size of sizes) {
          heard.push(...lines.push(sent.slice(at, at + size)))
          at += size
        }
        if (at >= sent.length) expect(heard).toEqual(['12.50 V', '12.49 V', '12.48 V'])
      }),
    )
  })

  it('keep no more than one line of what never ends', () => {
    const lines = new MeterLines()
    for (let count = 0; count < 1000; count += 1) lines.push('x'.repeat(1000))
    expect(lines.push('\n')[0]?.length).toBeLessThanOrEqual(200)
  })

  it('ask with the words of SCPI and a line end', () => {
    expect(SCPI_ASK_VOLTS).toBe('MEAS:VOLT:DC?\n')
  })
})
