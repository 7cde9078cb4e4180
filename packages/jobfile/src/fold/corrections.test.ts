import { describe, expect, it } from 'vitest'
import { canBeCorrected, type Fact, type Kind, kinds, readBody } from '../facts/index.ts'
import { drafts } from '../facts/testing/drafts.ts'
import { TestDevice } from '../testing/device.ts'
import { Collected } from './collect.ts'
import { foldJob } from './index.ts'

const reason = 'Taken down wrongly.'
const lasting: readonly Kind[] = kinds.filter((kind: string): boolean => !canBeCorrected(kind))

describe('a correction', () => {
  it.each(kinds.filter(canBeCorrected))(
    'withdraws or replaces a fact of kind %s and leaves it on record',
    async (kind) => {
      const tablet = await TestDevice.create()
      const [first] = drafts[kind]
      const wrong = await tablet.write(kind, first as never)
      expect(new Collected(tablet.facts).all(kind)).toHaveLength(1)
      const other = readBody(kind, drafts[kind].at(-1))
      if (!other.ok) throw new Error(`the draft of ${kind} fits`)
      const body = other.body as Record<string, unknown>
      await tablet.write('corrected', { fact: wrong.id, action: 'replaced', body, reason })
      expect(new Collected(tablet.facts).all(kind).map((entry) => entry.body)).toEqual([other.body])
      await tablet.write('corrected', { fact: wrong.id, action: 'withdrawn', reason })
      const state = foldJob('test-job', tablet.facts)
      expect(new Collected(tablet.facts).all(kind)).toEqual([])
      expect(state.corrections.map((one) => one.stands)).toEqual(['superseded', 'applied'])
      expect(tablet.facts[0]).toEqual(wrong)
    },
  )

  it.each(lasting)('does not reach a fact of kind %s, and says so', async (kind) => {
    const tablet = await TestDevice.create()
    const [first] = drafts[kind]
    const fact = await tablet.write(kind, first as never)
    await tablet.write('corrected', { fact: fact.id, action: 'withdrawn', reason })
    const standing = new Collected(tablet.facts)
    if (kind !== 'corrected') expect(standing.all(kind)).toHaveLength(1)
    expect(standing.corrections.at(-1)?.stands).toBe('cannot-be-corrected')
  })

  it('that does not fit, or brings nothing, replaces nothing', async () => {
    const tablet = await TestDevice.create()
    const said = await tablet.write('keys-said', { count: 4 })
    await tablet.write('corrected', { fact: said.id, action: 'replaced', body: { count: -1 }, reason })
    const state = foldJob('test-job', tablet.facts)
    expect(state.corrections[0]?.stands).toBe('does-not-fit')
    expect(state.tally.saidToExist).toBe(4)
    await tablet.write('corrected', { fact: said.id, action: 'replaced', reason })
    expect(foldJob('test-job', tablet.facts).tally.saidToExist).toBe(4)
  })

  it('can be undone by correcting the fact again with what it said first', async () => {
    const tablet = await TestDevice.create()
    const said = await tablet.write('keys-said', { count: 4 })
    await tablet.write('corrected', { fact: said.id, action: 'withdrawn', reason })
    expect(foldJob('test-job', tablet.facts).tally.saidToExist).toBeNull()
    await tablet.write('corrected', {
      fact: said.id,
      action: 'replaced',
      body: said.body,
      reason: 'It was right.',
    })
    expect(foldJob('test-job', tablet.facts).tally.saidToExist).toBe(4)
  })

  it('of a body in an older form is read in that form', async () => {
    const tablet = await TestDevice.create()
    const set = await tablet.write('retention-set', {
      pack: 'p',
      classes: [{ class: 'photo', days: 9, source: 's' }],
    })
    const old = { pack: 'older', classes: [{ class: 'photo', days: 3, source: 's' }] }
    await tablet.write('corrected', { fact: set.id, action: 'replaced', body: old, v: 1, reason })
    expect(foldJob('test-job', tablet.facts).retention).toEqual({
      pack: 'older',
      classes: [{ class: 'photo', days: 3, trigger: 'sealed', source: 's' }],
    })
  })
})

describe('what this version does not understand', () => {
  it('is kept and shown, a newer form of a known kind too, and nothing of it is folded', async () => {
    const tablet = await TestDevice.create()
    const said = await tablet.write('keys-said', { count: 4 })
    const newer: Fact = { ...said, id: crypto.randomUUID(), seq: 2, v: 7, body: { count: 9, absent: [] } }
    const state = foldJob('test-job', [...tablet.facts, newer])
    expect(state.unknown).toEqual([newer])
    expect(state.tally.saidToExist).toBe(4)
    const change = { fact: said.id, action: 'withdrawn', reason }
    const correction: Fact = { ...newer, id: crypto.randomUUID(), seq: 3, kind: 'corrected', body: change }
    expect(foldJob('test-job', [...tablet.facts, correction])).toMatchObject({
      unknown: [correction],
      corrections: [],
    })
  })
})

describe('what is agreed and kept secret', () => {
  it('stands in the job: call, quote, appointment, plan, photos, secrets with every opening', async () => {
    const tablet = await TestDevice.create()
    for (const kind of kinds)
      if (!kind.startsWith('device-')) await tablet.write(kind, drafts[kind].at(-1) as never)
    const state = foldJob('test-job', tablet.facts)
    expect(state.unreadable).toEqual([])
    expect(state).toMatchObject({
      call: { channel: 'office', starts: true },
      quote: { currency: 'JPY' },
      appointment: { made: { place: 'Harbour' }, ended: { outcome: 'moved' } },
      planAccepted: { signer: 'fleet manager' },
      photos: [{ shows: 'key', key: 'A' }],
      handedOver: { to: 'fleet driver' },
      secrets: [{ what: 'immobiliser data', opened: [{ by: 'technician' }] }],
      custody: {
        holds: [{ reason: 'Insurer asks for the photos.' }],
        deletions: [{ class: 'authority-record' }],
      },
    })
  })
})
