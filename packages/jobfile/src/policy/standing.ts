import type { Body } from '../facts/index.ts'
import { packQuestion, situationQuestion } from './codes.ts'

type Answered = Body<'policy-answered'>

/** How a question of the job's pack stands. */
export interface PolicyQuestion {
  readonly question: string
  /** The firm's own words; null when the catalogue has them. */
  readonly words: string | null
  readonly wants: 'yes' | 'answer'
  readonly answer: Answered['answer'] | null
  readonly because: string | null
  /** `refused`: answered no without a reason. */
  readonly stands: 'open' | 'met' | 'refused'
}

/** The pack a job works by and everything it asks, in the order it is asked; null when the job chose none. */
export interface PolicyStanding {
  readonly pack: string
  readonly situation: string | null
  readonly questions: readonly PolicyQuestion[]
}

/**
 * Follows the answers from the choice of the pack: each answer brings the questions that hang on it, and only the
 * latest answer to a question counts, so a changed situation drops what the earlier one asked. Pure.
 */
export function policyStanding(answers: readonly Answered[]): PolicyStanding | null {
  const latest = new Map(answers.map((one) => [one.question, one]))
  const chosen = latest.get(packQuestion)
  if (chosen === undefined) return null
  const questions = new Map<string, PolicyQuestion>()
  const follow = (answer: Answered) => {
    for (const { question, wants, words } of answer.asks ?? []) {
      if (questions.has(question) || question === packQuestion) continue
      const given = latest.get(question)
      questions.set(question, {
        question,
        words: words ?? null,
        wants,
        answer: given?.answer ?? null,
        because: given?.because ?? null,
        stands: standing(wants, given),
      })
      if (given !== undefined) follow(given)
    }
  }
  follow(chosen)
  const situation = questions.get(situationQuestion)?.answer
  return {
    pack: chosen.pack,
    situation: typeof situation === 'string' ? situation : null,
    questions: [...questions.values()],
  }
}

function standing(wants: 'yes' | 'answer', given: Answered | undefined): PolicyQuestion['stands'] {
  if (given === undefined) return 'open'
  // A no stands when somebody says why: a decision with a reason (docs/decisions/0004).
  if (wants === 'answer' || given.answer !== false || given.because !== undefined) return 'met'
  return 'refused'
}
