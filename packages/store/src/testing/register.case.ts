import { webcrypto } from 'node:crypto'
import { registerJob, Verifier, verifyRecord } from '@shearline/jobfile'
import { describe, expect, test } from 'vitest'
import { approve, chainBroken, enrolDevice, recordOf, revoke, standingsOf } from '../index.ts'
import { OtherDevice } from './devices.ts'
import { accepted, expectRefused, type UnderTest } from './under-test.ts'

/** The firm's register of devices: enrolments as facts, and what a revocation refuses. */
export function registerCase(on: UnderTest): void {
  const writer = () => ({ by: 'Robin', now: Date.now() })

  describe('keeps the register of devices', () => {
    test('STO-31 enrolling writes signed facts, the own device first, and once', async () => {
      const tablet = await OtherDevice.make('Second tablet')
      for (let i = 0; i < 2; i++)
        expect(await enrolDevice(on.store, tablet.device, writer())).toMatchObject({ ok: true })
      const facts = await on.store.factsOfJob(registerJob)
      expect(facts.map(({ kind, body }) => [kind, body.device])).toEqual([
        ['device-enrolled', on.store.device.device],
        ['device-enrolled', tablet.device.device],
      ])
      const { devices, troubles } = await standingsOf(on.store)
      expect(troubles).toEqual([])
      expect(devices.get(tablet.device.device)).toMatchObject({ approvedBy: 'Robin', revoked: null })
    })

    test('STO-31 two that enrol at once write each device once', async () => {
      const other = await on.place.open()
      const tablet = await OtherDevice.make('Second tablet')
      await Promise.all([on.store, other].map((one) => enrolDevice(one, tablet.device, writer())))
      await other.close()
      expect(await on.store.factsOfJob(registerJob)).toHaveLength(2)
    })

    test('STO-32 facts after a revocation are refused from the device, also by another process, and earlier ones stay', async () => {
      const other = await on.place.open()
      await enrolDevice(on.store, on.tablet.device, writer())
      expect(accepted(await on.fromDevice(await on.tablet.writeNotes('job-a', 2)))).toBe(2)
      const { device } = on.tablet.device
      const revoked = await revoke(on.store, { device, because: 'lost', reason: 'Left in a taxi.' }, writer())
      expect(revoked).toMatchObject({ ok: true, fact: { body: { last: { seq: 2 }, because: 'lost' } } })
      const later = await on.tablet.writeNotes('job-a', 1)
      for (const store of [on.store, other]) {
        const outcome = await store.appendFacts(later, { from: 'device' })
        expectRefused(outcome, 'device-revoked', { device, seq: 3 })
        expect(!outcome.ok && outcome.refusal.what).toContain('Left in a taxi.')
        expect(!outcome.ok && outcome.refusal.doNext).toContain('stay on the device')
      }
      // What it wrote before and sends again is here already.
      expect(await on.fromDevice(on.tablet.written.slice(0, 2))).toEqual({
        ok: true,
        value: { accepted: 0, already: 2 },
      })
      const facts = await on.store.factsOfJob('job-a')
      expect(await chainBroken(on.store, facts)).toBe(false)
      // As evidence from a bundle it is taken, and verifying says that it is not trusted.
      expect(accepted(await on.fromBundle(later))).toBe(1)
      const all = await on.store.factsOfJob('job-a')
      expect(await chainBroken(on.store, all)).toBe(true)
      const record = await recordOf(on.store, 'job-a', all)
      const { findings } = await verifyRecord(record, new Verifier(webcrypto.subtle))
      expect(findings.find(({ code }) => code === 'device-revoked')).toMatchObject({
        severity: 'error',
        where: { part: 'fact 3 (note-written)' },
      })
      await other.close()
    })

    test('STO-32 a revocation after a number takes the standing of what follows it, also of what is here', async () => {
      await enrolDevice(on.store, on.tablet.device, writer())
      await on.fromDevice(await on.tablet.writeNotes('job-a', 3))
      const { device } = on.tablet.device
      const wish = { device, because: 'stolen', reason: 'The van was broken into.' } as const
      expect(await revoke(on.store, { ...wish, after: 9 }, writer())).toMatchObject({ ok: false })
      expect(await revoke(on.store, { ...wish, after: 1 }, writer())).toMatchObject({ ok: true })
      expect(await revoke(on.store, wish, writer())).toMatchObject({ ok: false })
      expect(await chainBroken(on.store, await on.store.factsOfJob('job-a'))).toBe(true)
    })

    test('STO-32 a directory does not revoke itself, nor a device that stands in no register', async () => {
      const wish = { device: on.store.device.device, because: 'lost', reason: 'x' } as const
      expect(await revoke(on.store, wish, writer())).toMatchObject({ ok: false })
      const { device } = on.tablet.device
      expect(await revoke(on.store, { ...wish, device }, writer())).toMatchObject({ ok: false })
      expect(await approve(on.store, on.tablet.device, writer())).toMatchObject({ ok: true })
      expect(await approve(on.store, on.tablet.device, writer())).toEqual({ ok: true, fact: null })
      expect(await revoke(on.store, { ...wish, device }, writer())).toMatchObject({ ok: true })
    })
  })
}
