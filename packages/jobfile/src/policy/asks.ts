import type { Body, BodyInput } from '../facts/index.ts'
import { packQuestion, type Situation, situationQuestion } from './codes.ts'
import { type NamedCode, type PackSituation, type PolicyPack, packLabel } from './pack.ts'

type Answered = BodyInput<'policy-answered'>
type Ask = NonNullable<Answered['asks']>[number]

/** A question that wants a yes, or a no with a reason. */
const check = ({ code, words }: NamedCode): Ask => ({
  question: code,
  wants: 'yes',
  ...(words === undefined ? {} : { words }),
})

/**
 * The fact that puts a pack on record for a job. It carries the questions that follow, so that whoever reads the job
 * later knows what was asked without having the pack.
 */
export function packChosen(pack: PolicyPack, customer: Body<'job-opened'>['customer']): Answered {
  const contract = pack.contract
    .filter((row) => row.customers.includes(customer))
    .flatMap((row) => row.checks)
  return {
    pack: packLabel(pack),
    question: packQuestion,
    answer: packLabel(pack),
    asks: [
      { question: situationQuestion, wants: 'answer' },
      ...contract.map(check),
      ...pack.site.map((question): Ask => ({ question, wants: 'answer' })),
    ],
  }
}

/** The fact that says who stands there; it carries what the pack wants to see for that situation. */
export function situationChosen(pack: PolicyPack, situation: Situation): Answered {
  return {
    pack: packLabel(pack),
    question: situationQuestion,
    answer: situation,
    asks: (situationOf(pack, situation)?.checks ?? []).map(check),
  }
}

/** What a pack says of a situation, or null when it does not know it. */
export function situationOf(pack: PolicyPack, situation: string): PackSituation | null {
  return pack.authority.find((one) => one.situation === situation) ?? null
}
