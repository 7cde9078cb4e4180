import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readScanReport, redactReport } from './index.ts'

describe('a report before it is kept', () => {
  it('loses codes that open things, addresses and numbers, and no letter of its length', () => {
    const lines = [
      ['Security code: 4711', 'Security code: xxxx'],
      ['PIN 1 2 3 4', 'PIN xxxxxxx'],
      ['Key code = AB1234', 'Key code = xxxxxx'],
      ['Sicherheitscode ist 99881', 'Sicherheitscode ist xxxxx'],
      ['mail anna.b@example.org', 'mail xxxxxxxxxxxxxxxxxx'],
      ['Tel: 030 1234567', 'Tel: xxxxxxxxxxx'],
      ['call +44 20 7946 0000', 'call xxxxxxxxxxxxxxxx'],
    ] as const
    for (const [before, after] of lines) {
      expect(redactReport(before)).toBe(after)
      expect(after).toHaveLength(before.length)
    }
  })

  it('keeps trouble codes, the VIN, the mileage, and words about codes', () => {
    const text = [
      'VIN ZA9AAAAA8A0000001, 41 020 km, 12.01.2026 10:30',
      'Engine: P0513-00 stored',
      'Immobiliser',
      '  B1234 key code memory error',
      '  U0140-87 status 2F',
    ].join('\n')
    expect(redactReport(text)).toBe(text)
  })

  it('reads as the same codes at the same places as before', () => {
    const text = 'Engine\n  P0513-00 stored\n  PIN: 1234\n  P0633 stored'
    const places = (of: string) =>
      readScanReport(of).codes.map(({ fault, line, from }) => [fault.code, line, from])
    expect(places(redactReport(text))).toEqual(places(text))
  })

  it('never throws, keeps every length and line, and does no more the second time', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const read = redactReport(text)
        expect(read).toHaveLength(text.length)
        expect(read.split('\n').length).toBe(text.split('\n').length)
        expect(redactReport(read)).toBe(read)
      }),
    )
  })
})
