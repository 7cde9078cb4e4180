import { compareFacts } from '@shearline/jobfile'
import { describe, expect, test } from 'vitest'
import { note, OtherDevice } from './devices.ts'
import { accepted, expectRefused, headAfter, type UnderTest } from './under-test.ts'

/** Facts of other devices: what is taken, what is refused. */
export function takingCase(on: UnderTest): void {
  describe('takes facts of other devices', () => {
    test('STO-01 a chain sent in order is kept and comes back in fold order', async () => {
      const facts = await on.tablet.writeNotes('job-a', 5)
      expect(await on.fromDevice(facts)).toEqual({ ok: true, value: { accepted: 5, already: 0 } })
      expect(await on.store.factsOfJob('job-a')).toEqual([...facts].sort(compareFacts))
    })

    test('STO-01 facts in any order within one batch are put in their order', async () => {
      const facts = await on.tablet.writeNotes('job-a', 4)
      expect(await on.fromDevice(facts.toReversed())).toEqual({
        ok: true,
        value: { accepted: 4, already: 0 },
      })
    })

    test('STO-02 the same facts again are already there, one by one or in a longer batch', async () => {
      const facts = await on.tablet.writeNotes('job-a', 3)
      await on.fromDevice(facts)
      expect(await on.fromDevice(facts.slice(1, 2))).toEqual({ ok: true, value: { accepted: 0, already: 1 } })
      const longer = [...facts, ...(await on.tablet.writeNotes('job-a', 2))]
      expect(await on.fromDevice(longer)).toEqual({ ok: true, value: { accepted: 2, already: 3 } })
      expect(await on.store.factsOfJob('job-a')).toHaveLength(5)
    })

    test('STO-02 the same fact twice in one batch is kept once', async () => {
      const [fact] = await on.tablet.writeNotes('job-a', 1)
      expect(await on.fromDevice([fact, fact])).toEqual({ ok: true, value: { accepted: 1, already: 1 } })
    })

    test('STO-02 the same facts sent on four connections at once are each accepted exactly once', async () => {
      const others = [await on.place.open(), await on.place.open(), await on.place.open()]
      const facts = await on.tablet.writeNotes('job-a', 20)
      const answers = await Promise.all(
        [on.store, ...others].map((one) => one.appendFacts(facts, { from: 'device' })),
      )
      expect(answers.map(accepted).sort()).toEqual([0, 0, 0, 20])
      expect(await on.store.factsOfJob('job-a')).toHaveLength(20)
      for (const other of others) await other.close()
    })

    test('STO-03 another fact with the same number is a fork, whoever brings it', async () => {
      const [first, second] = await on.tablet.writeNotes('job-a', 2)
      await on.fromDevice([first, second])
      const { fact } = await on.tablet.sign(note('job-a', 'another second'), headAfter(first))
      for (const outcome of [await on.fromDevice([fact]), await on.fromBundle([fact])]) {
        expectRefused(outcome, 'fork', { index: 0, device: on.tablet.device.device, seq: 2, id: fact.id })
      }
      expect(await on.store.factsOfJob('job-a')).toEqual([first, second])
    })

    test('STO-04 a gap is refused from a device, and the answer says which number must come', async () => {
      const facts = await on.tablet.writeNotes('job-a', 4)
      await on.fromDevice(facts.slice(0, 1))
      const outcome = await on.fromDevice(facts.slice(2))
      expectRefused(outcome, 'gap', { index: 0, seq: 3 })
      expect(!outcome.ok && outcome.refusal.doNext).toContain('number 2')
      expect(await on.fromDevice(facts.slice(1))).toEqual({ ok: true, value: { accepted: 3, already: 0 } })
    })

    test('STO-04 a gap is allowed in a bundle, and the device fills it later', async () => {
      const facts = await on.tablet.writeNotes('job-a', 6)
      const [first, second, third, fourth, fifth, sixth] = facts
      expect(await on.fromBundle([second, fourth, fifth])).toEqual({
        ok: true,
        value: { accepted: 3, already: 0 },
      })
      expectRefused(await on.fromDevice([sixth]), 'gap', { seq: 6 })
      expect(await on.fromDevice([first, second, third])).toEqual({
        ok: true,
        value: { accepted: 2, already: 1 },
      })
      // With 1 to 5 whole, 6 is next although it was 3 that came last.
      expect(await on.fromDevice([sixth])).toEqual({ ok: true, value: { accepted: 1, already: 0 } })
      expect(await on.store.factsOfJob('job-a')).toEqual(facts)
    })

    test('STO-05 a fact that follows another version of its predecessor is refused', async () => {
      const [first] = await on.tablet.writeNotes('job-a', 1)
      await on.fromDevice([first])
      const { fact: otherFirst } = await on.tablet.sign(note('job-a', 'another first'), {
        seq: 0,
        hash: null,
      })
      const { fact: second } = await on.tablet.sign(note('job-a', 'second'), headAfter(otherFirst))
      expectRefused(await on.fromDevice([second]), 'link-broken', { seq: 2 })
      expectRefused(await on.fromBundle([second]), 'link-broken', { seq: 2 })
    })

    test('STO-05 a fact that its kept successor does not follow is refused', async () => {
      const [first, , third] = await on.tablet.writeNotes('job-a', 3)
      await on.fromBundle([first, third])
      const { fact: otherSecond } = await on.tablet.sign(note('job-a', 'another second'), headAfter(first))
      expectRefused(await on.fromDevice([otherSecond]), 'link-broken', { seq: 2 })
    })

    test('STO-05 only the first fact of a device has nothing before it', async () => {
      const { fact } = await on.tablet.sign(note('job-a', 'no predecessor'), { seq: 4, hash: null })
      expectRefused(await on.fromBundle([fact]), 'link-broken', { seq: 5 })
      const { fact: first } = await on.tablet.sign(note('job-a', 'has one'), { seq: 0, hash: 'a'.repeat(64) })
      expectRefused(await on.fromDevice([first]), 'link-broken', { seq: 1 })
    })

    test('STO-06 what is not a fact is refused with its place and the field', async () => {
      const [fact] = await on.tablet.writeNotes('job-a', 1)
      const outcome = await on.fromDevice([fact, { ...fact, seq: 'two' }])
      expectRefused(outcome, 'not-a-fact', { index: 1 })
      expect(!outcome.ok && outcome.refusal.where).toBe('fact 2, seq')
      expectRefused(await on.fromDevice([null]), 'not-a-fact', { index: 0 })
    })

    test('STO-06 a signed fact of a kind or shape this version does not know is kept as it is', async () => {
      const later = { ...note('job-a', 'x'), kind: 'from-the-future', body: { wave: [1, { deep: null }] } }
      const fact = await on.tablet.write(later)
      expect(await on.fromDevice([fact])).toEqual({ ok: true, value: { accepted: 1, already: 0 } })
      expect(await on.store.factsOfJob('job-a')).toEqual([fact])
    })

    test('STO-07 facts of a device nobody enrolled are refused', async () => {
      const stranger = await OtherDevice.make('stranger')
      const facts = await stranger.writeNotes('job-a', 1)
      expectRefused(await on.fromDevice(facts), 'unknown-device', { device: stranger.device.device })
      await on.store.enrol(stranger.device)
      expect(accepted(await on.fromDevice(facts))).toBe(1)
    })

    test('STO-08 a changed word, a changed signature and a foreign signature are refused', async () => {
      const [first, second] = await on.tablet.writeNotes('job-a', 2)
      if (first === undefined || second === undefined) throw new Error('two notes were written')
      const changed = { ...second, body: { text: 'changed' } }
      expectRefused(await on.fromDevice([first, changed]), 'signature-wrong', { index: 1, seq: 2 })
      const wrong = { ...first, sig: `${first.sig[0] === 'A' ? 'B' : 'A'}${first.sig.slice(1)}` }
      expectRefused(await on.fromDevice([wrong]), 'signature-wrong', { index: 0 })
      const other = await OtherDevice.make('other')
      const [foreign] = await other.writeNotes('job-a', 1)
      expectRefused(await on.fromDevice([{ ...first, sig: foreign?.sig }]), 'signature-wrong', { index: 0 })
    })

    test('STO-09 nothing of a batch is written when one fact of it is refused', async () => {
      const facts = await on.tablet.writeNotes('job-a', 3)
      const other = await OtherDevice.make('other')
      await on.store.enrol(other.device)
      const [, gapOfOther] = await other.writeNotes('job-b', 2)
      expectRefused(await on.fromDevice([...facts, gapOfOther]), 'gap', { device: other.device.device })
      expect(await on.store.jobs()).toEqual([])
      expect(accepted(await on.fromDevice(facts))).toBe(3)
    })

    test('STO-01 a batch of three thousand facts of two devices and many jobs is kept whole', async () => {
      const other = await OtherDevice.make('other')
      await on.store.enrol(other.device)
      const facts = []
      for (let i = 0; i < 1500; i++) {
        facts.push(await on.tablet.write(note(`job-${i % 7}`, `a ${i}`, i)))
        facts.push(await other.write(note(`job-${i % 7}`, `b ${i}`, i)))
      }
      expect(accepted(await on.fromDevice(facts))).toBe(3000)
      const kept = await Promise.all((await on.store.jobs()).map(({ job }) => on.store.factsOfJob(job)))
      expect(kept.flat().length).toBe(3000)
      expect(accepted(await on.fromDevice(facts))).toBe(0)
    })
  })
}
