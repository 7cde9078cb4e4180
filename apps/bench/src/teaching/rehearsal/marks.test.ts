import { RULE_ARCHETYPES, rehearseSession, type TeachingPlan } from '@shearline/keywork'
import { describe, expect, it } from 'vitest'
import { interruptionOf, stepsAtRisk } from './marks.ts'

const plan = (code: string): TeachingPlan => {
  const rule = RULE_ARCHETYPES.find((each) => each.code === code)?.rule
  if (rule === undefined) throw new Error(`No behaviour ${code}.`)
  return {
    rule,
    stored: ['A', 'B'],
    keys: [
      { id: 'A', identity: 'A', state: 'known', onBench: true },
      { id: 'B', identity: 'B', state: 'known', onBench: true },
      { id: 'N', identity: 'N', state: 'blank', onBench: true },
    ],
    means: { equipment: true, backup: false },
    teach: ['A', 'B', 'N'],
  }
}
const marks = (code: string) =>
  stepsAtRisk(rehearseSession(plan(code)), ['A', 'B']).map(({ after, mark, lost }) => [
    after,
    mark,
    lost.join(),
  ])

// ENR-02, ENR-05, ENR-09 of the rehearsal; facts 1.2.6 and 1.2.7 of the practice notes.
describe('the mark under a step', () => {
  it('is safe everywhere while nothing is saved before the close', () => {
    expect(marks('replace-all-at-close').every(([, mark]) => mark === 'safe')).toBe(true)
  })

  it('names the keys that a list rewritten key by key has dropped so far', () => {
    expect(marks('replace-all-each-key')).toEqual([
      ['open', 'safe', ''],
      ['A', 'loses', 'B'],
      ['B', 'safe', ''],
      ['N', 'safe', ''],
    ])
  })

  it('is stranded right after opening where opening empties the list', () => {
    expect(marks('replace-all-erased-at-open')[0]).toEqual(['open', 'stranded', 'A,B'])
  })
})

describe('the interruption that a break-off was', () => {
  it('is the one named, and the dearest where none was named', () => {
    const rehearsal = rehearseSession({
      ...plan('replace-all-at-close'),
      rule: { ...plan('replace-all-at-close').rule, onBreakBy: { 'supply-lost': 'list-lost' } },
    })
    expect(interruptionOf(rehearsal, { why: 'link' }, 'A')).toMatchObject({
      cause: 'link-lost',
      stranded: false,
    })
    expect(interruptionOf(rehearsal, { why: 'unknown' }, 'A')).toMatchObject({
      cause: 'supply-lost',
      stranded: true,
    })
    expect(interruptionOf(rehearsal, { why: 'operator', cause: 'closed-early' }, 'A')?.cause).toBe(
      'closed-early',
    )
  })
})
