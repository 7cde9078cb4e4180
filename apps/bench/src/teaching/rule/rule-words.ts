import { number } from '../../words/amounts.ts'
import { listMark } from '../../words/engine.ts'
import { t, type WordKey } from '../../words/index.ts'
import { type Answer, notKnown } from './answers.ts'
import { type Ask, questions, type RulePath } from './questions.ts'

/** How many of what is kept make one of what is asked: minutes are kept in seconds. */
export function unitOf(ask: Ask): number {
  return ask === 'minutes' ? 60 : 1
}

/** One answer to a question that has a few. */
export function optionWords(path: RulePath, answer: string): string {
  if (answer === notKnown) return t('rule.unknown')
  if (answer === 'yes' || answer === 'no') return t(answer)
  if (path === 'kind') return t(`rule-kind.${answer}` as WordKey)
  if (path.startsWith('onBreakBy.')) return t(`rule.onBreak.${answer}` as WordKey)
  if (path === 'gate.ignitionOff' || path === 'gate.supplyLost') return t(`rule.pause.${answer}` as WordKey)
  return t(`rule.${path}.${answer}` as WordKey)
}

/** An answer as it stands on record. */
export function answerWords(path: RulePath, answer: Answer | undefined): string {
  if (answer === undefined || answer === null || answer === notKnown) return t('rule.unknown')
  if (typeof answer === 'string') return optionWords(path, answer)
  if (typeof answer !== 'number') return answer.map((each) => optionWords(path, each)).join(listMark())
  const ask: Ask = questions.find((question) => question.path === path)?.ask ?? 'whole'
  return t(`rule.figure-of.${ask}` as WordKey, {
    figure: number(answer / unitOf(ask), 1),
    count: answer / unitOf(ask),
  })
}

/** What not knowing this means: every answer holds for the worst it can be. */
const worst: Readonly<Partial<Record<RulePath, WordKey>>> = {
  kind: 'rule.worst.kind',
  opensWith: 'rule.worst.opensWith',
  commits: 'rule.worst.commits',
  erases: 'rule.worst.erases',
  onBreak: 'rule.worst.onBreak',
  'onBreakBy.supply-lost': 'rule.worst.onBreak',
  'onBreakBy.link-lost': 'rule.worst.onBreak',
  'onBreakBy.time-out': 'rule.worst.onBreak',
  capacity: 'rule.worst.capacity',
  gate: 'rule.worst.gate',
  sameKeyTwice: 'rule.worst.sameKeyTwice',
  wrongKey: 'rule.worst.wrongKey',
  accepts: 'rule.worst.accepts',
  idleSeconds: 'rule.worst.idleSeconds',
}

export function worstWords(path: RulePath, ask: Ask): string {
  return t(worst[path] ?? (ask === 'one' || ask === 'several' ? 'rule.worst' : 'rule.worst.figure'))
}
