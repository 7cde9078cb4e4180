import { webcrypto } from 'node:crypto'
import { FactRefused, toBase64Url, Verifier, verifyFacts } from '@shearline/jobfile'
import { describe, expect, test } from 'vitest'
import { note, OtherDevice } from './devices.ts'
import { expectRefused, type UnderTest } from './under-test.ts'

/** Own facts, jobs, devices and settings. */
export function keepingCase(on: UnderTest): void {
  describe('writes facts of its own', () => {
    test('STO-10 drafts get their place, are signed with the own key, and verify', async () => {
      const written = await on.store.writeOwn([note('job-a', 'one'), note('job-a', 'two', 1)])
      expect(written.map(({ seq }) => seq)).toEqual([1, 2])
      expect(await on.store.factsOfJob('job-a')).toEqual(written)
      const check = await verifyFacts(written, [on.store.device], new Verifier(webcrypto.subtle))
      expect(check.findings).toEqual([])
      expect(check.signaturesRight).toBe(2)
      const bytes = new TextEncoder().encode('a seal')
      const signature = toBase64Url(await on.store.sign(bytes))
      expect(await new Verifier(webcrypto.subtle).verify(on.store.device.publicKey, signature, bytes)).toBe(
        true,
      )
    })

    test('STO-10 a draft that does not fit its kind is refused and nothing is written', async () => {
      const bad = { ...note('job-a', 'x'), body: { words: 'no text' } }
      await expect(on.store.writeOwn([note('job-a', 'good'), bad])).rejects.toThrow(FactRefused)
      expect(await on.store.factsOfJob('job-a')).toEqual([])
      expect((await on.store.writeOwn([note('job-a', 'good')])).map(({ seq }) => seq)).toEqual([1])
    })

    test('STO-11 writers on several connections never write one number twice', async () => {
      const others = [await on.place.open(), await on.place.open()]
      await Promise.all(
        [on.store, ...others].map(async (one, writer) => {
          for (let i = 0; i < 15; i++) await one.writeOwn([note('job-a', `${writer} ${i}`, i)])
        }),
      )
      for (const other of others) await other.close()
      const facts = await on.store.factsOfJob('job-a')
      expect(facts.map(({ seq }) => seq).sort((a, b) => a - b)).toEqual(counting(45))
      const check = await verifyFacts(facts, [on.store.device], new Verifier(webcrypto.subtle))
      expect(check.findings).toEqual([])
    })

    test('STO-12 what is composed after a job speaks of exactly the facts that are there', async () => {
      const other = await on.place.open()
      const seals = await Promise.all(
        [on.store, other, on.store, other].map((one) =>
          one.writeOwnAfter('job-a', (before) => [note('job-a', `after ${before.length}`, before.length)]),
        ),
      )
      await other.close()
      expect(seals.map(({ before }) => before.length).sort()).toEqual([0, 1, 2, 3])
      expect(seals.flatMap(({ written }) => written.map(({ body }) => body.text)).sort()).toEqual([
        'after 0',
        'after 1',
        'after 2',
        'after 3',
      ])
    })
  })

  describe('knows jobs and devices', () => {
    test('lists jobs with the latest instant first, and counts their facts', async () => {
      await on.fromDevice([
        await on.tablet.write(note('job-early', 'x', 0)),
        await on.tablet.write(note('job-late', 'x', 30)),
        await on.tablet.write(note('job-early', 'x', 10)),
      ])
      expect(await on.store.jobs()).toMatchObject([
        { job: 'job-late', facts: 1, lastAt: '2026-11-25T09:30:00.000Z' },
        { job: 'job-early', facts: 2, lastAt: '2026-11-25T09:10:00.000Z' },
      ])
      expect(await on.store.jobEntry('job-unknown')).toBeNull()
      expect(await on.store.factsOfJob('job-unknown')).toEqual([])
    })

    test('STO-14 the mark of a job changes when a fact of it arrives and at no other time', async () => {
      await on.store.writeOwn([note('job-a', 'one')])
      const mark = (await on.store.jobEntry('job-a'))?.mark
      await on.store.writeOwn([note('job-b', 'one')])
      await on.fromDevice([])
      expect((await on.store.jobEntry('job-a'))?.mark).toBe(mark)
      // An earlier instant does not hide the arrival.
      await on.fromDevice([await on.tablet.write(note('job-a', 'late', -60))])
      expect((await on.store.jobEntry('job-a'))?.mark).not.toBe(mark)
    })

    test('STO-15 enrolling is idempotent and the key of an identifier never changes', async () => {
      const again = await on.store.enrol({ ...on.tablet.device, name: 'Renamed' })
      expect(again).toMatchObject({ ok: true, value: { name: 'Van tablet' } })
      const other = await OtherDevice.make('other')
      expectRefused(
        await on.store.enrol({ ...on.tablet.device, publicKey: other.device.publicKey }),
        'device-key-mismatch',
      )
      expectRefused(await on.store.enrol({ ...on.tablet.device, publicKey: '%' }), 'device-key-mismatch')
      const known = (await on.store.devices()).map(({ device }) => device)
      expect(known.sort()).toEqual([on.store.device.device, on.tablet.device.device].sort())
    })

    test('keeps settings by name', async () => {
      expect(await on.store.setting('demo')).toBeNull()
      await on.store.putSetting('demo', 'seeded')
      await on.store.putSetting('demo', 'seeded twice')
      expect(await on.store.setting('demo')).toBe('seeded twice')
    })
  })
}

function counting(to: number): number[] {
  return Array.from({ length: to }, (_, i) => i + 1)
}
