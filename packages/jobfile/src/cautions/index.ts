/** @module Which cautions a job calls for and where they matter, from what is on record. */
import type { ChapterName, JobState } from '../fold/state.ts'
import { type Caution, type CautionRule, type Condition, cautionRules } from './rules.ts'

export { type Caution, type CautionRule, type Condition, cautionRules } from './rules.ts'

type Known = Pick<JobState, 'keys' | 'faults' | 'policy'>

/** The cautions a job calls for, each once, in the order of the rules. */
export function cautionsWanted(job: Known): readonly Caution[] {
  return [...new Set(rulesFor(job).map(({ caution }) => caution))]
}

function rulesFor(job: Known): readonly CautionRule[] {
  return cautionRules.filter(
    ({ when }) => when.length === 0 || when.some((condition) => holds(condition, job)),
  )
}

/** A caution that matters in a chapter and was not read yet. */
export interface CautionDue {
  readonly caution: Caution
  readonly source: string
}

/** What should be read before going on in a chapter; empty when everything was. */
export function cautionsDue(
  state: Known & Pick<JobState, 'cautionsRead'>,
  chapter: ChapterName,
): readonly CautionDue[] {
  const due = new Map<Caution, CautionDue>()
  for (const { caution, chapters, source } of rulesFor(state))
    if (chapters.includes(chapter) && !state.cautionsRead.includes(caution) && !due.has(caution))
      due.set(caution, { caution, source })
  return [...due.values()]
}

function holds(condition: Condition, { keys, faults, policy }: Known): boolean {
  if ('keyForm' in condition) return keys.some((key) => condition.keyForm.includes(key.form))
  if ('airbagFault' in condition) return faults.faults.some((line) => line.airbag)
  const answer = policy?.questions.find((one) => one.question === condition.answered)?.answer
  return typeof answer === 'string' && condition.with.includes(answer)
}
