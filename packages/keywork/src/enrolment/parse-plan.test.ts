import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { parsePlan, rehearse } from './index.ts'
import { EXAMPLE, PARAMETERS } from './testing/plans.ts'

const refusal = (json: unknown): readonly [string, string] => {
  const parsed = parsePlan(json)
  if ('plan' in parsed) throw new Error('this plan was read')
  return [parsed.path, parsed.what]
}
const rule = (change: object): object => ({ ...EXAMPLE, rule: { ...EXAMPLE.rule, ...change } })

describe('reading a plan', () => {
  test('the example of the model text is read, identities default to labels, teach may be absent', () => {
    const { teach: _teach, ...without } = EXAMPLE
    const parsed = parsePlan(without)
    expect(parsed).toMatchObject({
      ignored: [],
      plan: { teach: null, keys: [{ identity: 'A' }, { identity: 'N' }, { identity: 'A' }] },
    })
  })

  test('every missing field is named by its path', () => {
    for (const name of ['rule', 'stored', 'keys', 'means'] as const) {
      const { [name]: _left, ...without } = EXAMPLE
      expect(refusal(without)[0]).toBe(name)
    }
    for (const name of PARAMETERS) expect(refusal(rule({ [name]: undefined }))[0]).toBe(`rule.${name}`)
    expect(refusal({ ...EXAMPLE, means: { equipment: true } })[0]).toBe('means.backup')
    expect(refusal({ ...EXAMPLE, keys: [{ id: 'A', state: 'known' }] })[0]).toBe('keys[0].onBench')
  })

  test('a wrong value is named with what it must be', () => {
    expect(refusal(rule({ kind: 'swap' }))).toEqual([
      'rule.kind',
      'must be one of replace-all, append, append-drop-oldest, numbered-slots, unknown; found "swap"',
    ])
    expect(refusal(rule({ capacity: 2.5 }))).toEqual([
      'rule.capacity',
      'must be a whole number of 1 or more, or unknown; found 2.5',
    ])
    expect(refusal(rule({ accepts: ['known', 'new'] }))[0]).toBe('rule.accepts[1]')
    expect(refusal({ ...EXAMPLE, means: { equipment: 'yes', backup: true } })[0]).toBe('means.equipment')
    expect(refusal({ ...EXAMPLE, stored: ['A', 7] })[0]).toBe('stored[1]')
    expect(refusal({ ...EXAMPLE, stored: 'A' })).toEqual(['stored', 'must be a list; found "A"'])
    expect(refusal([])).toEqual(['', 'must be an object; found a list'])
    expect(refusal({ ...EXAMPLE, teach: null })[0]).toBe('teach')
  })

  test('labels must be known where they are used and used once where they are given', () => {
    expect(refusal({ ...EXAMPLE, teach: ['A', 'Z'] })).toEqual([
      'teach[1]',
      '"Z" is the label of no key in keys',
    ])
    expect(refusal({ ...EXAMPLE, keys: [...EXAMPLE.keys, EXAMPLE.keys[0]] })[0]).toBe('keys[3].id')
    const many = Array.from({ length: 31 }, (_, at) => ({ id: `K${at}`, state: 'known', onBench: true }))
    expect(refusal({ ...EXAMPLE, keys: many, teach: [] })[0]).toBe('keys')
  })

  test('fields of another model are ignored and named', () => {
    const parsed = parsePlan({ ...rule({ colour: 'red' }), note: 'cold morning' })
    expect(parsed).toMatchObject({ ignored: ['note', 'rule.colour'] })
  })

  test('so much unknown that it says nothing is refused', () => {
    const open = { ...rule(Object.fromEntries(PARAMETERS.map((name) => [name, 'unknown']))) }
    const keys = Array.from({ length: 8 }, (_, at) => ({
      id: `K${at}`,
      state: 'unknown',
      onBench: 'unknown',
    }))
    expect(refusal({ ...open, keys, teach: ['K0'] })[0]).toBe('rule')
  })

  test('any JSON is either read, and can then be rehearsed, or refused with a reason', () => {
    const mutated = fc
      .tuple(fc.constantFrom('rule', 'stored', 'keys', 'means', 'teach', 'note'), fc.jsonValue())
      .map(([name, value]) => ({ ...EXAMPLE, [name]: value }))
    fc.assert(
      fc.property(fc.oneof(fc.jsonValue(), mutated), (json) => {
        const parsed = parsePlan(json)
        if ('plan' in parsed) expect(rehearse(parsed.plan).order).toBeInstanceOf(Array)
        else expect(parsed.what).not.toBe('')
      }),
    )
  })
})
