/** @module The answers of the guided form: laid out of a rule, and put together into one again. */
import { type PlanRefusal, parseRule, type TeachingRule } from '@shearline/keywork'
import { type Question, questions, type RulePath } from './questions.ts'

/** Not known, one word, several, or a number; null: a number that is still to be given. */
export type Answer = string | readonly string[] | number | null
export type Answers = Readonly<Partial<Record<RulePath, Answer>>>

export const notKnown = 'unknown'

type Fields = Readonly<Record<string, unknown>>
const at = (json: unknown, path: string): unknown =>
  path.split('.').reduce<unknown>((inner, name) => (inner as Fields | undefined)?.[name], json)

/** Every answer of a rule. What a rule does not say is not known; a code it does not name is none. */
export function answersOf(rule: TeachingRule): Answers {
  const answers: Partial<Record<RulePath, Answer>> = {}
  for (const { path } of questions) answers[path] = answerAt(rule, path)
  return answers
}

function answerAt(rule: TeachingRule, path: RulePath): Answer {
  const value = at(rule, path)
  if (path === 'gate') return value === undefined ? 'no' : 'yes'
  if (path === 'onBreakBy') return value === undefined ? 'no' : 'yes'
  if (path === 'declaredCount')
    return value === undefined || value === false ? 'no' : value === true ? 'yes' : notKnown
  if (path === 'spends') return (value as string | undefined) ?? 'when-taken'
  if (path === 'wrongKey') return (value as string | undefined) ?? 'ignored'
  return value === undefined ? notKnown : (value as Answer)
}

/** True when a question is asked at all, as the others are answered. */
export function isAsked(question: Question, answers: Answers): boolean {
  const { when } = question
  return when === undefined || when.is.includes(String(answers[when.path as RulePath]))
}

const causes = ['supply-lost', 'link-lost', 'time-out'] as const
const gate = ['triesBeforeWait', 'waitSeconds', 'ignitionOff', 'supplyLost'] as const
const durations = ['open', 'show', 'close', 'restore', 'wait', 'afterBreak'] as const
const currents = ['open', 'show', 'close', 'wait'] as const

/**
 * The rule that answers make, or the question whose answer is wrong. A yes-or-no question that is not known leaves
 * everything under it not known.
 */
export function ruleFrom(answers: Answers): TeachingRule | PlanRefusal {
  const get = (path: string): Answer | undefined => answers[path as RulePath]
  const under = <N extends string>(family: string, names: readonly N[], known = true) =>
    Object.fromEntries(names.map((name) => [name, known ? get(`${family}.${name}`) : notKnown]))
  const told = (path: RulePath) => (get(path) === 'no' ? undefined : get(path) === 'yes')
  const byCause = told('onBreakBy')
  const code = told('gate')
  const declared = get('declaredCount')
  const json = {
    kind: get('kind'),
    capacity: get('capacity'),
    leastKeys: get('leastKeys'),
    mostKeys: get('mostKeys'),
    opensWith: get('opensWith'),
    erases: get('erases'),
    commits: get('commits'),
    sameKeyTwice: get('sameKeyTwice'),
    onBreak: get('onBreak'),
    accepts: get('accepts'),
    ...(get('kind') === 'numbered-slots' || get('kind') === notKnown ? { slotTaken: get('slotTaken') } : {}),
    ...(declared === 'no' ? {} : { declaredCount: declared === 'yes' ? true : notKnown }),
    ...(get('spends') === 'when-taken' ? {} : { spends: get('spends') }),
    ...(get('wrongKey') === 'ignored' ? {} : { wrongKey: get('wrongKey') }),
    ...(byCause === undefined ? {} : { onBreakBy: under('onBreakBy', causes, byCause) }),
    ...(code === undefined ? {} : { gate: under('gate', gate, code) }),
    idleSeconds: get('idleSeconds'),
    seconds: known(under('seconds', durations)),
    amperes: known(under('amperes', currents)),
  }
  const parsed = parseRule(json)
  if (!('rule' in parsed)) return parsed
  const { leastKeys, mostKeys } = parsed.rule
  if (typeof leastKeys === 'number' && typeof mostKeys === 'number' && leastKeys > mostKeys)
    return { path: 'leastKeys', what: 'more than the most keys' }
  return parsed.rule
}

/** Figures that are known, or are still to be given: a family without any is left out by leaving it empty. */
function known(family: Fields): Fields {
  return Object.fromEntries(
    Object.entries(family).filter(([, value]) => value !== notKnown && value !== undefined),
  )
}
