/** @module What one scan shows of a fault, as one of six shapes. */
import type { FaultState } from '@shearline/keywork'

export const nodeKinds = ['failing', 'present', 'pending', 'untested', 'absent', 'unread'] as const
export type NodeKind = (typeof nodeKinds)[number]

/** The shape of a state: what is failing now is heaviest, what was not read is a gap. */
export function nodeOf(state: FaultState | undefined): NodeKind {
  const claims = state?.claims ?? ['unit-not-read']
  if (claims.includes('unit-not-read')) return 'unread'
  if (state?.present !== true) return claims.includes('absent-but-untested') ? 'untested' : 'absent'
  if (claims.includes('failing-now')) return 'failing'
  return claims.includes('pending') && !claims.includes('confirmed') ? 'pending' : 'present'
}
