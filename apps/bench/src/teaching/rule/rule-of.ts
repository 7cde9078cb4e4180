import type { Body } from '@shearline/jobfile'
import type { TeachingRule } from '@shearline/keywork'

export type RuleBody = Body<'rule-chosen'>

/** What a record says beside the rule: where it is known from, and what holds for this job alone. */
const beside = ['source', 'name', 'archetype', 'newKeys', 'codeAtHand'] as const
type Beside = Pick<RuleBody, (typeof beside)[number]>

/** What earlier records did not ask. */
const usual = { leastKeys: 1, accepts: ['known', 'blank', 'prepared'] } as const

/** The rule of a record, as the rehearsal takes it. */
export function ruleOf(body: RuleBody): TeachingRule {
  const rule: Partial<RuleBody> = { ...body }
  for (const name of beside) delete rule[name]
  return { ...usual, mostKeys: body.capacity, ...(rule as Omit<RuleBody, keyof Beside>) }
}

/**
 * Nothing on record: taken as replace-all, all else not known. `places`: entries the list is taken to hold, so that
 * what is stored and what is here find room.
 */
export function unknownRule(places: number): TeachingRule {
  return {
    ...usual,
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
