import { describe, expect, it } from 'vitest'
import { readTag, shortCode, tagText } from './tag-code.ts'

const job = 'j-3f2a9c1e-5b7d'

describe('a tag', () => {
  it('says which key of which job, and reads back', () => {
    const text = tagText({ job, key: 'B' })
    // The signs a QR code packs densely (ISO/IEC 18004, alphanumeric mode).
    expect(text).toMatch(/^[0-9A-Z $%*+\-./:]+$/)
    expect(readTag(text)).toEqual({ job, key: 'B' })
  })

  it('has a short code that differs between the keys of a job', () => {
    const codes = ['A', 'B', 'C', 'D', 'E', 'F', 'A2'].map((key) => shortCode({ job, key }))
    expect(new Set(codes).size).toBe(codes.length)
    for (const code of codes) expect(code).toMatch(/^[2-9A-HJKMNP-TV-Z]{4}$/)
  })

  it('is refused when a part was changed, or when it is another code', () => {
    const text = tagText({ job, key: 'B' })
    expect(readTag(text.replace('/B/', '/C/'))).toBeNull()
    expect(readTag('https://example.org/tag/B')).toBeNull()
    expect(readTag('')).toBeNull()
  })
})
