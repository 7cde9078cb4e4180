import type { FaultState } from '@shearline/keywork'
import { say } from '../words/engine.ts'
import css from './faults.module.css'

/** What one scan shows of a fault: full when confirmed, half when pending, empty when not reported, dashed when not read. */
export function LifeShape({ state }: { readonly state: FaultState | undefined }) {
  const claims = state?.claims ?? ['unit-not-read']
  const unread = claims.includes('unit-not-read')
  const half = state?.present === true && claims.includes('pending') && !claims.includes('confirmed')
  return (
    <svg className={css.shape} viewBox="0 0 64 20" aria-hidden="true">
      <path className={unread || state?.present !== true ? css.strandOff : css.strand} d="M0 10H64" />
      {unread ? (
        <circle className={css.unread} cx="32" cy="10" r="7" />
      ) : state?.present === true ? (
        <>
          <circle className={half ? css.hollow : css.solid} cx="32" cy="10" r="7.5" />
          {half && <path className={css.solid} d="M32 2.5a7.5 7.5 0 0 0 0 15z" />}
        </>
      ) : (
        <circle
          className={claims.includes('absent-but-untested') ? css.untested : css.hollow}
          cx="32"
          cy="10"
          r="6"
        />
      )}
    </svg>
  )
}

/** The strongest thing that may be said of a fault in one scan. */
export function lifeWord(state: FaultState | undefined): string {
  const order = [
    'unit-not-read',
    'failing-now',
    'permanent',
    'confirmed',
    'pending',
    'absent-but-untested',
    'absent',
    'not-tested-since-clear',
    'not-tested-this-cycle',
  ] as const
  if (state === undefined) return say('claim.unit-not-read')
  const claim = order.find((one) => state.claims.includes(one))
  return say(claim === undefined ? 'claim.none' : `claim.${claim}`)
}
