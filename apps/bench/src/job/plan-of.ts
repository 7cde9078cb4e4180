import type { JobState } from '@shearline/jobfile'
import { startedIn, type TeachingPlan, type TeachingRule } from '@shearline/keywork'

/**
 * The rehearsal's input as the record has it. Keys seen not to start the car before are not in its list; entries
 * it stores beyond the keys here stand as `absent 1`, `absent 2` ..., newest, which is the worse case for the
 * keys that are here.
 */
export function planOf(state: JobState, teach: readonly string[]): TeachingPlan {
  const accepted = state.keys.filter(
    (key) => key.origin === 'existing' && key.onBench && startedIn(state.grid, key.id, 'before') !== false,
  )
  const here = [...new Set(accepted.map((key) => key.cloneOf ?? key.id))]
  const absent = Math.max(0, (state.tally.storedBefore ?? here.length) - here.length)
  return {
    rule: ruleOf(state),
    stored: [...here, ...Array.from({ length: absent }, (_, index) => `absent ${index + 1}`)],
    keys: state.keys.map((key) => {
      const identity = key.cloneOf ?? key.id
      return {
        id: key.id,
        identity,
        state: here.includes(identity) ? 'known' : 'blank',
        onBench: key.onBench,
      }
    }),
    means: { equipment: true, backup: state.teaching.backup !== null },
    teach,
  }
}

/**
 * The rule on record. An unknown kind is taken as replace-all; the fewest and most keys of a session are not
 * asked for and taken as one and the whole list.
 */
function ruleOf(state: JobState): TeachingRule {
  const { rule } = state.teaching
  const asked = {
    leastKeys: 1,
    accepts: ['known', 'blank', 'prepared'],
  } as const
  if (rule === null) {
    const places = Math.max(8, state.tally.storedBefore ?? 0, state.keys.length)
    return {
      ...asked,
      kind: 'replace-all',
      capacity: places,
      mostKeys: places,
      opensWith: 'unknown',
      erases: 'unknown',
      commits: 'unknown',
      sameKeyTwice: 'unknown',
      onBreak: 'unknown',
    }
  }
  const { kind, capacity, opensWith, erases, commits, sameKeyTwice, onBreak } = rule
  return {
    ...asked,
    kind: kind === 'unknown' ? 'replace-all' : kind,
    capacity,
    mostKeys: capacity,
    opensWith,
    erases,
    commits,
    sameKeyTwice,
    onBreak,
  }
}
