import { describe, expect, it } from 'vitest'
import { writeSignature } from './signature-file.ts'
import { drawnLength, leastDrawn, strokePath } from './strokes.ts'

describe('strokes', () => {
  it('become one smooth path that begins and ends where the finger did', () => {
    const path = strokePath([
      { x: 10, y: 20 },
      { x: 30.04, y: 40 },
      { x: 50, y: 20.55 },
      { x: 70, y: 60 },
    ])
    expect(path).toBe('M10 20Q30 40 40 30.3Q50 20.6 60 40.3L70 60')
  })

  it('are a dot when there is one point, and nothing without points', () => {
    expect(strokePath([{ x: 5, y: 6 }])).toBe('M5 6h0.1')
    expect(strokePath([])).toBe('')
  })

  it('count as drawn by their length, not by how many there are', () => {
    const taps = Array.from({ length: 40 }, (_, index) => [{ x: index, y: 1 }])
    expect(drawnLength(taps)).toBe(0)
    expect(
      drawnLength([
        [
          { x: 0, y: 0 },
          { x: 30, y: 40 },
        ],
      ]),
    ).toBe(leastDrawn)
  })
})

describe('a signature as a file', () => {
  it('holds the words in full and runs none of them', () => {
    const file = writeSignature({
      signer: 'R. <Tamm>',
      shown: 'Line one\n"& <script>alert(1)</script>',
      mark: { how: 'typed', name: 'R. & T.' },
    })
    expect(file).toContain('Line one\n&quot;&amp; &lt;script&gt;alert(1)&lt;/script&gt;')
    expect(file).not.toContain('<script')
    expect(file).toContain('<title>R. &lt;Tamm&gt;</title>')
  })
})
