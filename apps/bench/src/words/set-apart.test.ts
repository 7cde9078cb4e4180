import { describe, expect, it } from 'vitest'
import { ownWay, setApart } from './set-apart.ts'

/** Shows the signs that cannot be seen, and spaces that hold as plain ones. */
const seen = (text: string): string =>
  setApart(text).replaceAll('\u00a0', ' ').replaceAll('\u2066', '<').replaceAll('\u2069', '>')

describe('numbers with their units where people read from the right', () => {
  it('stand in order, whatever the unit', () => {
    expect(seen('التيار 30 A، 12.4\u00a0V، 433.920\u00a0MHz')).toBe('التيار <30 A>، <12.4 V>، <433.920 MHz>')
    // The word "and" is written onto the number.
    expect(seen('12.4 V و13.1 V')).toBe('<12.4 V> و<13.1 V>')
    expect(seen('من -10 °C')).toBe('من <-10 °C>')
    expect(seen('نحو 25 % من')).toBe('نحو <25 %> من')
    expect(seen('20 µV/m (26 dBµV/m)')).toBe('<20 µV/m> (<26 dBµV/m>)')
    expect(seen('99 – 120 µs')).toBe('<99 – 120 µs>')
  })

  it('stand in order with their sign, and a unit that begins with one', () => {
    expect(seen('-10 إلى 30 °C')).toBe('<-10> إلى <30 °C>')
    expect(seen('الحرارة (°C)')).toBe('الحرارة (<°C>)')
  })

  it('are the ends and beginnings of codes, with the sign that says so on its side', () => {
    expect(seen('VIN …042788')).toBe('VIN <…042788>')
    expect(seen('الوثيقة …55A')).toBe('الوثيقة <…55A>')
    expect(seen('قراءتان متساويتان، e3b0c442…')).toBe('قراءتان متساويتان، <e3b0c442…>')
    expect(seen('وما إلى ذلك…')).toBe('وما إلى ذلك…')
  })

  it('are days that no line breaks', () => {
    expect(seen('أي منطقة، 2026-11-01')).toBe('أي منطقة، <2026\u201111\u201101>')
  })

  it('do not part from their unit at the end of a line', () => {
    expect(setApart('نحو 30 °C')).toBe('نحو \u206630\u00a0°C\u2069')
  })

  it('are set apart once only', () => {
    expect(setApart(setApart('عند 12.45 V'))).toBe(setApart('عند 12.45 V'))
  })

  it('leave other numbers and words alone', () => {
    for (const text of ['3 مفاتيح', 'ISO 14229', '5 Volt', 'A-7', 'P0513-00', '17 VIN', '7E8'])
      expect(setApart(text)).toBe(text)
  })
})

describe('a name among words that are read from the right', () => {
  it('keeps its own order, and codes that choose between words stay as they are', () => {
    expect(ownWay('The spare stays.')).toBe('\u2068The spare stays.\u2069')
    for (const value of ['moved', 'handed_over', 'no-papers', '12', 'مفتاح', '1, 2'])
      expect(ownWay(value)).toBe(value)
  })
})
