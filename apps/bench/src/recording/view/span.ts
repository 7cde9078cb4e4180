/** @module The stretch of a recording that is looked at, in seconds from its start. */

/** A stretch of time; `to` is later than `from`. */
export interface Span {
  readonly from: number
  readonly to: number
}

/** Nothing on a vehicle bus needs to be looked at closer than this, in seconds. */
const shortest = 0.002

/** The whole of a recording with a little room at both ends, so that nothing stands on the edge. */
export function wholeSpan(from: number, to: number): Span {
  const room = Math.max((to - from) * 0.01, shortest)
  return { from: from - room, to: to + room }
}

/** Zooms by a factor (below 1 is closer) around a time that stays where it is; never beyond the whole. */
export function zoomed(span: Span, whole: Span, factor: number, at = (span.from + span.to) / 2): Span {
  const length = Math.min(whole.to - whole.from, Math.max(shortest, (span.to - span.from) * factor))
  const share = (at - span.from) / (span.to - span.from)
  return within({ from: at - share * length, to: at + (1 - share) * length }, whole)
}

/** Moves by seconds, as far as the whole reaches. */
export function moved(span: Span, whole: Span, seconds: number): Span {
  return within({ from: span.from + seconds, to: span.to + seconds }, whole)
}

/** A stretch around something, with room to see what stands beside it. */
export function around(from: number, to: number, whole: Span): Span {
  const room = Math.max((to - from) * 0.25, (whole.to - whole.from) * 0.02, shortest)
  return within({ from: from - room, to: to + room }, whole)
}

/** True when all of the recording is looked at. */
export function isWhole(span: Span, whole: Span): boolean {
  return span.from <= whole.from && span.to >= whole.to
}

function within({ from, to }: Span, whole: Span): Span {
  const length = to - from
  if (length >= whole.to - whole.from) return whole
  if (from < whole.from) return { from: whole.from, to: whole.from + length }
  if (to > whole.to) return { from: whole.to - length, to: whole.to }
  return { from, to }
}
