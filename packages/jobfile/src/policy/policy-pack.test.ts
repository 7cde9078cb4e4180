import { describe, expect, it } from 'vitest'
import { foldJob, retentionPackOf } from '../index.ts'
import { TestDevice } from '../testing/device.ts'
import { isCode, sayNeed } from '../words/index.ts'
import {
  neutralPack,
  packChosen,
  packLabel,
  readPolicyPack,
  shippedPacks,
  situationChosen,
  situations,
  unitedKingdomPack,
} from './index.ts'

const opened = {
  title: 'A job',
  place: 'Yard',
  zone: 'UTC',
  vehicle: 'Van',
  work: 'add-a-key',
} as const

async function stateOf(
  write: (device: TestDevice) => Promise<void>,
  customer: 'private' | 'fleet' = 'private',
) {
  const device = await TestDevice.create()
  await device.write('job-opened', { ...opened, customer })
  await write(device)
  return foldJob('test-job', device.facts)
}

const authorityOf = (state: Awaited<ReturnType<typeof stateOf>>) =>
  state.tumblers.find(({ name }) => name === 'authority')

describe('a policy pack', () => {
  it.each(shippedPacks.map((pack) => [pack.name, pack] as const))(
    'that is shipped reads back as it is, knows every situation, and has words for every code: %s',
    (_, pack) => {
      expect(readPolicyPack(JSON.parse(JSON.stringify(pack)))).toEqual({ ok: true, pack })
      expect(pack.authority.map((one) => one.situation)).toEqual([...situations])
      for (const row of pack.authority) {
        for (const { code } of [...row.identity, ...row.entitlement])
          expect(isCode(`policy-document.${code}`), code).toBe(true)
        for (const { code } of row.checks) expect(isCode(`policy-asks.${code}`), code).toBe(true)
      }
      for (const { code } of pack.contract.flatMap((row) => row.checks))
        expect(isCode(`policy-asks.${code}`), code).toBe(true)
      expect(retentionPackOf(pack).rules).toEqual(pack.retention.rules)
    },
  )

  it('says of every row whether somebody read its source; the neutral one claims none', () => {
    const rows = (pack: typeof neutralPack) => [...pack.authority, ...pack.contract, pack.radio]
    for (const row of shippedPacks.flatMap(rows))
      if (row.basis === 'memory') expect(row.source).toMatch(/from memory/)
    expect(new Set(rows(neutralPack).map((row) => row.basis))).toEqual(new Set(['common-practice']))
  })

  it('of a firm is read with every place named that is wrong', () => {
    const broken = JSON.parse(JSON.stringify(unitedKingdomPack)) as typeof unitedKingdomPack
    broken.authority[0]?.checks.push({ code: 'authority.own-question' })
    broken.authority[1]?.checks.push({ code: 'our-question', words: 'Asked?' })
    const twice = broken.authority[4]
    if (twice !== undefined) twice.situation = 'owner'
    broken.retention.rules.pop()
    broken.radio.bands.push({
      words: 'ours',
      lowMegahertz: 434,
      highMegahertz: 433,
      source: 'us',
      basis: 'firm',
    })
    const read = readPolicyPack(broken)
    expect(read.ok ? [] : read.troubles.map((one) => one.path)).toEqual([
      'retention.rules',
      'authority.4.situation',
      'authority.0.checks.3.code',
      'authority.1.checks.4.code',
      'radio.bands.0',
    ])
    for (const wrong of [null, 3, [], {}, { ...neutralPack, extra: 1 }])
      expect(readPolicyPack(wrong).ok).toBe(false)
  })
})

describe('TUM-03 a job that chose a policy pack', () => {
  it('wants its questions answered; one that chose none is as it was', async () => {
    expect((await stateOf(async () => undefined)).policy).toBeNull()
    const state = await stateOf(
      async (device) =>
        void (await device.write('policy-answered', packChosen(unitedKingdomPack, 'private'))),
    )
    const codes = authorityOf(state)?.needs.map((need) => String(need.params.question ?? ''))
    expect(codes).toContain('authority.situation')
    expect(codes).toContain('contract.cancelling-explained')
    expect(codes).not.toContain('authority.owner-asked')
    expect(state.policy?.pack).toBe(packLabel(unitedKingdomPack))
    const record = state.tumblers.find(({ name }) => name === 'record')
    expect(record?.needs.map(({ code }) => code)).toContain('site-question-open')
  })

  it('wants no cancelling explained to a fleet', async () => {
    const state = await stateOf(
      async (device) => void (await device.write('policy-answered', packChosen(unitedKingdomPack, 'fleet'))),
      'fleet',
    )
    expect(state.policy?.questions.some(({ question }) => question.startsWith('contract.'))).toBe(false)
  })

  it('asks what hangs on who stands there, and drops it when that turns out otherwise', async () => {
    const state = async (...chosen: readonly ('leaseholder' | 'owner')[]) =>
      stateOf(async (device) => {
        await device.write('policy-answered', packChosen(neutralPack, 'private'))
        for (const one of chosen) await device.write('policy-answered', situationChosen(neutralPack, one))
      })
    const asked = (of: Awaited<ReturnType<typeof state>>) =>
      of.policy?.questions.map(({ question }) => question)
    expect(asked(await state('leaseholder'))).toContain('authority.owner-asked')
    expect(asked(await state('leaseholder', 'owner'))).not.toContain('authority.owner-asked')
  })

  it('stands high on a no without a reason, and in line again with one', async () => {
    const state = async (because: string | undefined) =>
      stateOf(async (device) => {
        await device.write('policy-answered', packChosen(neutralPack, 'private'))
        await device.write('policy-answered', {
          pack: packLabel(neutralPack),
          question: 'contract.informed-before',
          answer: false,
          ...(because === undefined ? {} : { because }),
        })
      })
    const without = authorityOf(await state(undefined))
    expect(without?.state).toBe('high')
    const need = without?.needs.find(({ code }) => code === 'policy-answer-no')
    expect(need === undefined ? '' : sayNeed('en', need)).toBe(
      'Answered no, without a reason: Did the customer get price, work and terms before agreeing?',
    )
    expect(authorityOf(await state('Agreed by telephone yesterday.'))?.state).toBe('low')
  })

  it('keeps what was asked even when the firm has changed its pack since', async () => {
    const own = {
      ...neutralPack,
      name: 'ours',
      authority: neutralPack.authority.map((row) => ({
        ...row,
        checks: [...row.checks, { code: 'authority.our-own', words: 'Did the office agree?' }],
      })),
    }
    const state = await stateOf(async (device) => {
      await device.write('policy-answered', packChosen(own, 'private'))
      await device.write('policy-answered', situationChosen(own, 'owner'))
    })
    const need = authorityOf(state)?.needs.find(({ params }) => params.question === 'authority.our-own')
    expect(need === undefined ? '' : sayNeed('en', need)).toBe('Not answered: Did the office agree?')
  })
})
