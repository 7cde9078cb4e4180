import { beforeEach, describe, expect, it } from 'vitest'
import { bodyHash, factHash, treeHeadOfHashes, verifyFacts } from '../chain/index.ts'
import { settled, vanAfterSession, vanUntilSession } from '../demo/index.ts'
import type { Fact } from '../facts/index.ts'
import { foldJob } from '../fold/index.ts'
import { neutralRetention } from '../policy/index.ts'
import { TestDevice as Device, type TestDevice, testVerifier } from '../testing/device.ts'
import { playScene } from '../testing/scene.ts'
import { deletionProof, dueInJob, erasedFact, retentionClocks } from './index.ts'

const start = Date.UTC(2026, 0, 12, 8)
const dayMs = 86_400_000
const at = (days: number) => new Date(start + days * dayMs).toISOString()
const on = (days: number) => start + days * dayMs
const blob = 'a'.repeat(64)

let tablet: TestDevice
beforeEach(async () => {
  tablet = await Device.create()
})

const photo = (shows: 'key' | 'identity', days: number) =>
  tablet.write('photo-attached', { blob, mediaType: 'image/jpeg', bytes: 9, shows }, { at: at(days) })
const seal = (days: number) =>
  tablet.write('document-sealed', { count: 1, root: blob, language: 'en', ready: true }, { at: at(days) })
const classes = (days: number) => dueInJob('test-job', tablet.facts, on(days)).map((one) => one.class)
const clock = (name: string, days: number) =>
  retentionClocks('test-job', tablet.facts, on(days)).clocks.find((one) => one.class === name)

describe('a deletion clock', () => {
  it('starts with its trigger, not before: sealing, hand-over, end of warranty, end of purpose', async () => {
    await tablet.write(
      'price-agreed',
      { currency: 'EUR', lines: [{ text: 'x', amountMinor: 1 }] },
      { at: at(0) },
    )
    await photo('key', 0)
    await photo('identity', 0)
    expect(clock('invoice', 1)).toMatchObject({ startedAt: null, until: null })
    await seal(1)
    expect(clock('invoice', 1)).toMatchObject({ startedAt: on(1), until: on(1 + 2190) })
    await tablet.write('warranty-given', { months: 12 }, { at: at(1) })
    await tablet.write('vehicle-handed-over', { to: 'driver' }, { at: at(2) })
    expect(clock('identity-image', 2)).toMatchObject({ startedAt: on(2), until: on(32) })
    // Twelve months of 30.436875 days, rounded up, after the hand-over; then 30 days.
    expect(clock('photo', 2)).toMatchObject({ startedAt: on(2 + 366), until: on(2 + 366 + 30) })
    await tablet.write('purpose-ended', { class: 'photo', because: 'Settled.' }, { at: at(3) })
    expect(clock('photo', 3)).toMatchObject({ startedAt: on(3), until: on(33) })
  })

  it('follows what the job says over the pack, and the pack where the job says nothing', async () => {
    await photo('key', 0)
    await tablet.write(
      'retention-set',
      { pack: 'short', classes: [{ class: 'photo', days: 2, trigger: 'recorded', source: 's' }] },
      { at: at(0) },
    )
    await seal(1)
    expect(clock('photo', 1)).toMatchObject({ setInJob: true, until: on(2) })
    expect(clock('invoice', 1)).toMatchObject({ setInJob: false, rule: { days: 2190 } })
    expect(classes(1.9)).toEqual([])
    expect(classes(2)).toEqual(['photo'])
  })

  it('starts by itself when a job was left lying: nothing is kept for ever', async () => {
    await photo('identity', 0)
    const stalls = neutralRetention.stalledAfterDays
    expect(clock('identity-image', stalls - 1)?.startedAt).toBeNull()
    expect(clock('identity-image', stalls)).toMatchObject({ stalled: true, until: on(stalls + 30) })
    expect(classes(stalls + 30)).toEqual(['identity-image'])
  })

  it('counts content under a correction too: withdrawn words are still kept words', async () => {
    const note = await tablet.write('note-written', { text: 'Name and address.' }, { at: at(0) })
    await tablet.write(
      'corrected',
      { fact: note.id, action: 'withdrawn', reason: 'Not needed.' },
      { at: at(0) },
    )
    await seal(1)
    expect(clock('job-rest', 1)?.kept.map((one) => one.kind)).toEqual(['note-written', 'corrected'])
  })

  it('knows every kind of a whole job, and holds none of what proves it', async () => {
    const { facts } = await playScene([...vanUntilSession(), ...vanAfterSession(), ...settled(80)])
    const kept = retentionClocks('test-job', facts, on(1)).clocks.flatMap((one) => one.kept)
    const proving = facts.filter((fact) => fact.kind === 'retention-set')
    expect(kept.length).toBe(facts.length - proving.length)
  })
})

describe('deleting', () => {
  const verified = async (facts: readonly Fact[]) => verifyFacts(facts, [tablet.device], testVerifier())

  it('is due by class with its documents, and is stopped by a hold until that is lifted', async () => {
    await tablet.write(
      'authority-seen',
      {
        role: 'identity',
        document: 'card',
        issuer: 'registry',
        lastCharacters: '418',
        original: true,
        matched: true,
        checkedBy: 'technician',
      },
      { at: at(0) },
    )
    const sealed = await seal(1)
    const [due] = dueInJob('test-job', tablet.facts, on(1 + 1095))
    expect(due).toMatchObject({
      class: 'authority-record',
      until: on(1 + 1095),
      documents: [sealed.id],
      heldBy: [],
    })
    const hold = await tablet.write('hold-placed', { reason: 'Letter of a solicitor.' }, { at: at(2) })
    expect(dueInJob('test-job', tablet.facts, on(1 + 1095))[0]?.heldBy).toMatchObject([{ fact: hold.id }])
    expect(foldJob('test-job', tablet.facts).custody.holds).toHaveLength(1)
    await tablet.write('hold-lifted', { hold: hold.id, reason: 'Settled.' }, { at: at(3) })
    expect(dueInJob('test-job', tablet.facts, on(1 + 1095))[0]?.heldBy).toEqual([])
  })

  it('holds only the classes a hold names', async () => {
    await photo('key', 0)
    await photo('identity', 0)
    await seal(1)
    await tablet.write('hold-placed', { reason: 'Insurer.', classes: ['photo'] }, { at: at(1) })
    const held = dueInJob('test-job', tablet.facts, on(60)).map((one) => [one.class, one.heldBy.length])
    expect(held).toEqual([
      ['identity-image', 0],
      ['photo', 1],
    ])
  })

  it('leaves the chain and the seal whole, and a proof that the fold shows', async () => {
    const seen = await tablet.write('note-written', { text: 'Name and address.' }, { at: at(0) })
    await tablet.write('keys-said', { count: 2 }, { at: at(0) })
    const root = treeHeadOfHashes(tablet.facts.map(factHash))
    await tablet.write('document-sealed', { count: 2, root, language: 'en', ready: true }, { at: at(1) })
    const [due] = dueInJob('test-job', tablet.facts, on(3000))
    if (due === undefined) throw new Error('the rest of the job is due')
    const goes = new Set(due.items.map((one) => one.fact))
    const facts = tablet.facts.map((fact) => (goes.has(fact.id) ? erasedFact(fact) : fact))
    expect(JSON.stringify(facts)).not.toContain('Name and address')
    const bodies = facts.filter((fact) => goes.has(fact.id))
    const proof = deletionProof(
      due,
      { bodies, blobs: [], documents: [] },
      'Six years are over.',
      'neutral default',
    )
    facts.push(await tablet.write('deletion-proven', proof, { at: at(3000) }))
    const check = await verified(facts)
    expect(check.findings).toEqual([])
    expect(treeHeadOfHashes(check.hashes.slice(0, 2))).toBe(root)
    expect(proof.items.find((item) => item.fact === seen.id)?.sha256).toBe(bodyHash(seen.body))
    const state = foldJob('test-job', facts, { now: on(3001) })
    expect(state.custody).toMatchObject({
      deletions: [
        { class: 'job-rest', by: 'technician', why: 'Six years are over.', items: 2, keysDestroyed: true },
      ],
      due: [],
      erased: 2,
    })
    expect(state.unreadable).toEqual([])
    expect(state.tally.saidToExist).toBeNull()
  })

  it('of a blob says whether its key is gone too, and is not due again', async () => {
    const fact = await photo('identity', 0)
    await seal(1)
    const [due] = dueInJob('test-job', tablet.facts, on(40))
    if (due === undefined) throw new Error('the image is due')
    expect(due).toMatchObject({
      class: 'identity-image',
      documents: [],
      items: [{ fact: fact.id, as: 'blob', blob }],
    })
    const erased = {
      bodies: [],
      blobs: [{ fact: fact.id, sha256: blob, keyDestroyed: false }],
      documents: [],
    }
    await tablet.write('deletion-proven', deletionProof(due, erased, 'Due.', 'neutral default'), {
      at: at(40),
    })
    expect(dueInJob('test-job', tablet.facts, on(41))).toEqual([])
    const state = foldJob('test-job', tablet.facts)
    expect(state.custody.deletions).toMatchObject([{ keysDestroyed: false }])
    expect(() => deletionProof(due, { bodies: [], blobs: [], documents: [] }, 'x', 'y')).toThrow(RangeError)
  })
})
