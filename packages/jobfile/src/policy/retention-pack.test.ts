import { describe, expect, it } from 'vitest'
import { bodySchemas, readBody, retentionClass } from '../facts/index.ts'
import { commonPractice, neutralRetention, readRetentionPack, retentionSetOf } from './index.ts'

describe('a retention pack', () => {
  it('is neutral by default: every class once, no region, and no period that claims a source', () => {
    expect(readRetentionPack(JSON.parse(JSON.stringify(neutralRetention)))).toEqual({
      ok: true,
      pack: neutralRetention,
    })
    expect(neutralRetention.rules.map((one) => one.class)).toEqual(retentionClass.options)
    expect(new Set(neutralRetention.rules.map((one) => one.source))).toEqual(new Set([commonPractice]))
    expect(neutralRetention.region).toBe('any')
  })

  it('of a firm is read with every place named that is wrong', () => {
    const rules = neutralRetention.rules.map((one) => ({ ...one }))
    const broken = {
      ...neutralRetention,
      dated: 'last week',
      rules: rules.map((one, index) => (index === 2 ? { ...one, days: -1 } : one)),
    }
    const read = readRetentionPack(broken)
    expect(read.ok ? [] : read.troubles.map((one) => one.path)).toEqual(['dated', 'rules.2.days'])
    const lacking = readRetentionPack({ ...neutralRetention, rules: [...rules.slice(1), rules[1]] })
    expect(lacking.ok ? [] : lacking.troubles.map((one) => one.what)).toEqual([
      'no rule for "invoice"',
      '2 rules for "authority-record"',
    ])
    expect(readRetentionPack(null).ok).toBe(false)
    const typo = readRetentionPack({ ...neutralRetention, stalled: 3 })
    expect(typo.ok ? '' : typo.troubles[0]?.what).toContain('stalled')
  })

  it('goes on record of a job as it is', () => {
    const body = retentionSetOf(neutralRetention)
    const read = readBody('retention-set', body)
    expect(read.ok && read.body).toEqual(body)
    expect(bodySchemas['retention-set'].safeParse(body).success).toBe(true)
  })
})
