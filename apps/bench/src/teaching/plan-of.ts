import { type JobState, rewritesList } from '@shearline/jobfile'
import { identityOf, type PlanGuards, type PlanKey, startedIn, type TeachingPlan } from '@shearline/keywork'
import { ruleOf, unknownRule } from './rule/rule-of.ts'
import { isNoteOf } from './step-code.ts'

/**
 * The rehearsal's input as the record has it. Keys seen not to start the car before are not in its list; entries
 * it stores beyond the keys here stand as `absent 1`, `absent 2` ..., newest, which is the worse case for the
 * keys that are here.
 */
export function planOf(state: JobState, teach: readonly string[]): TeachingPlan {
  const { rule } = state.teaching
  const accepted = state.keys.filter(
    (key) => key.origin === 'existing' && key.onBench && startedIn(state.grid, key.id, 'before') !== false,
  )
  // What an earlier session added is in the list by now.
  const added = state.teaching.taught.filter((key) => !state.teaching.shown.includes(key))
  const identity = identitiesOf(state)
  const here = [...new Set([...accepted.map((key) => identity(key.id)), ...added.map(identity)])]
  const absent = Math.max(0, (state.tally.storedBefore ?? here.length) - here.length)
  return {
    rule:
      rule === null
        ? unknownRule(Math.max(8, state.tally.storedBefore ?? 0, state.keys.length))
        : ruleOf(rule),
    stored: [...here, ...Array.from({ length: absent }, (_, index) => `absent ${index + 1}`)],
    keys: state.keys.map((key): PlanKey => {
      const own = identity(key.id)
      return {
        id: key.id,
        identity: own,
        state: here.includes(own) ? 'known' : (rule?.newKeys ?? 'blank'),
        onBench: key.onBench,
      }
    }),
    means: {
      equipment: true,
      backup: state.teaching.backup !== null,
      ...(rule?.gate === undefined
        ? {}
        : { code: rule.codeAtHand ?? 'unknown', wrongTries: wrongTries(state) }),
    },
    teach,
    guards: guardsOf(state),
  }
}

/** Whether the customer is asked about absent keys: a session that leaves them as they are needs nobody's word. */
export function asksAboutAbsentKeys({ teaching, absentKeys, tally }: JobState): boolean {
  return rewritesList(teaching.rule) && (absentKeys.length > 0 || (tally.unaccounted ?? 0) > 0)
}

/** Which key each is to the car: a clone is its original, and keys the car shows alike are one. */
function identitiesOf({ keys }: JobState): (key: string) => string {
  const known = keys.map(({ id, cloneOf, shownAs }) => ({
    id,
    cloneOf,
    ...(shownAs === null ? {} : { shownAs }),
  }))
  return (key) => identityOf(key, known)
}

/** Wrong codes noted since a session was last open: each right one opens it. */
export function wrongTries(state: JobState): number {
  return state.teaching.stepsSince.filter(
    (step) => step.outcome === 'failed' && isNoteOf(step, { code: 'cause.wrong-code' }),
  ).length
}

function guardsOf({ teaching, authority, supply, absentKeys, tally }: JobState): PlanGuards {
  const { backup } = teaching
  const floor = supply.setting?.floorVolts
  const last = supply.readings.at(-1)?.volts
  return {
    ...(backup === null ? {} : { backupProven: backup.firstRead === backup.secondRead }),
    consent: authority.consents.some((consent) => consent.about === 'absent-keys-stop'),
    ...(floor === undefined || last === undefined ? {} : { supply: last >= floor }),
    ...(tally.saidToExist === null && tally.storedBefore === null
      ? {}
      : { allKeysHere: absentKeys.length === 0 && (tally.unaccounted ?? 0) === 0 }),
  }
}
