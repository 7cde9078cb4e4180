import { RULE_ARCHETYPES, rehearse } from '@shearline/keywork'
import { describe, expect, it } from 'vitest'
import { answersOf, notKnown, ruleFrom } from './answers.ts'
import { questions, type RulePath } from './questions.ts'

const plan = {
  stored: ['A', 'X'],
  keys: [
    { id: 'A', identity: 'A', state: 'known', onBench: true },
    { id: 'N', identity: 'N', state: 'blank', onBench: true },
  ],
  means: { equipment: true, backup: false, code: true },
  teach: ['A', 'N'],
} as const

describe('the guided form of a rule', () => {
  it.each(RULE_ARCHETYPES)('asks $code so that its answers give the same rehearsal again', ({ rule }) => {
    const again = ruleFrom(answersOf(rule))
    if ('path' in again) throw new Error(`${again.path}: ${again.what}`)
    expect(rehearse({ ...plan, rule: again })).toEqual(rehearse({ ...plan, rule }))
  })

  it('takes "not known" for an answer to every question', () => {
    for (const { path } of questions) {
      const rule = RULE_ARCHETYPES[0]?.rule
      if (rule === undefined) throw new Error('There is no rule to start from.')
      expect(ruleFrom({ ...answersOf(rule), [path]: notKnown }), path).not.toHaveProperty('path')
    }
  })

  it.each([
    ['capacity', null],
    ['capacity', 0],
    ['gate.waitSeconds', null],
    ['seconds.show', null],
    ['leastKeys', 9],
  ] as const)('names the question whose answer is wrong: %s is %s', (path: RulePath, answer) => {
    const rule = RULE_ARCHETYPES.find((each) => each.code === 'code-gated-hour')?.rule
    if (rule === undefined) throw new Error('The rule to start from is gone.')
    expect(ruleFrom({ ...answersOf(rule), [path]: answer })).toHaveProperty('path', path)
  })
})
