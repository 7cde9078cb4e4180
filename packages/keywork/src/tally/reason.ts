/** @module Reasons in writing. */

/** A reason only counts when it says something. */
export function writtenReason(reason: string | undefined): string | null {
  const text = reason?.trim() ?? ''
  return text === '' ? null : text
}
