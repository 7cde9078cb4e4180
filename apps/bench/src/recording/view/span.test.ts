import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { around, isWhole, moved, type Span, wholeSpan, zoomed } from './span.ts'

const whole = wholeSpan(-1, 3600)
const step = fc.oneof(
  fc.record({
    what: fc.constant('zoom' as const),
    by: fc.double({ min: 0.05, max: 20, noNaN: true }),
    at: fc.double({ min: 0, max: 1, noNaN: true }),
  }),
  fc.record({
    what: fc.constant('move' as const),
    by: fc.double({ min: -5000, max: 5000, noNaN: true }),
    at: fc.constant(0),
  }),
)

describe('the span that is looked at', () => {
  it('never leaves the recording and never turns around, whatever is pressed', () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 30 }), (steps) => {
        let span: Span = whole
        for (const { what, by, at } of steps) {
          span =
            what === 'move'
              ? moved(span, whole, by)
              : zoomed(span, whole, by, span.from + at * (span.to - span.from))
          expect(span.to).toBeGreaterThan(span.from)
          expect(span.from).toBeGreaterThanOrEqual(whole.from - 1e-6)
          expect(span.to).toBeLessThanOrEqual(whole.to + 1e-6)
        }
      }),
    )
  })

  it('keeps the time under the fingers where it is', () => {
    const span = zoomed({ from: 100, to: 200 }, whole, 0.5, 125)
    expect(span).toEqual({ from: 112.5, to: 162.5 })
    expect((125 - span.from) / (span.to - span.from)).toBe(0.25)
  })

  it('holds all of the recording again after zooming out, and all of a mark it is led to', () => {
    expect(isWhole(zoomed({ from: 100, to: 200 }, whole, 1000), whole)).toBe(true)
    const session = around(50, 90, whole)
    expect(session.from).toBeLessThan(50)
    expect(session.to).toBeGreaterThan(90)
  })
})
