import { describe, expect, it } from 'vitest'
import { breakPoint, breakPoints, dearest, type Plan } from './break-points.ts'

const commitsAtClose: Plan = {
  rule: {
    kind: 'replace-all',
    commits: 'at-close',
    erases: 'at-close',
    onBreak: 'revert',
    opensWith: 'equipment',
    sameKeyTwice: 'refused',
    capacity: 8,
    source: 'read from the car',
  },
  known: ['A', 'B'],
  stored: 5,
  backup: false,
}

function withRule(change: Partial<NonNullable<Plan['rule']>>, plan: Partial<Plan> = {}): Plan {
  const rule = commitsAtClose.rule
  if (rule === null) throw new Error('the base plan has a rule')
  return { ...commitsAtClose, ...plan, rule: { ...rule, ...change } }
}

describe('what holds when a session stops', () => {
  it('ENR-07 a list that is saved at close keeps every old key when the session reverts', () => {
    expect(breakPoint(commitsAtClose, ['A'])).toEqual({
      starts: ['A', 'B'],
      dropped: [],
      stranded: false,
      wayBack: 'reopen',
    })
  })

  it('ENR-05 a list rewritten with each key drops all others at the first taught key', () => {
    expect(breakPoint(withRule({ commits: 'each-key' }), ['C'])).toMatchObject({
      starts: ['C'],
      dropped: ['A', 'B'],
    })
  })

  it('ENR-02 a list emptied at opening leaves no key that starts the car', () => {
    const point = breakPoint(withRule({ erases: 'at-open', opensWith: 'accepted-key' }), [])
    expect(point).toMatchObject({ starts: [], stranded: true, wayBack: 'none' })
  })

  it('ENR-11 a proven backup is the way back when no session can be opened again', () => {
    const plan = withRule({ erases: 'at-open', opensWith: 'accepted-key' }, { backup: true })
    expect(breakPoint(plan, []).wayBack).toBe('restore')
  })

  it('ENR-09 a break that keeps what was taught so far is a rewritten list', () => {
    expect(breakPoint(withRule({ onBreak: 'keep-so-far' }), ['A']).dropped).toEqual(['B'])
  })

  it('ENR-06 adding to a list that is not full drops nothing, a full one may drop any older key', () => {
    const roomy = withRule({ kind: 'append-drop-oldest', commits: 'each-key' })
    expect(breakPoint(roomy, ['C']).dropped).toEqual([])
    expect(
      breakPoint(withRule({ kind: 'append-drop-oldest', commits: 'each-key', capacity: 5 }), ['C']),
    ).toMatchObject({
      starts: ['C'],
      dropped: ['A', 'B'],
    })
  })

  it('ENR-12 an unknown rule counts as its worst: stranded after opening, dearest way back', () => {
    const unknown: Plan = { ...commitsAtClose, rule: null }
    expect(breakPoint(unknown, [])).toEqual({
      starts: [],
      dropped: ['A', 'B'],
      stranded: true,
      wayBack: 'none',
    })
  })

  it('a session has one break point more than keys, and the dearest way back of all of them', () => {
    const points = breakPoints(withRule({ commits: 'each-key', opensWith: 'two-accepted-keys' }), ['A', 'C'])
    expect(points.map((point) => point.starts)).toEqual([['A', 'B'], ['A'], ['A', 'C']])
    expect(dearest(points)).toBe('none')
  })
})
