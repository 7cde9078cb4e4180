import { createHash, webcrypto } from 'node:crypto'
import { Readable } from 'node:stream'
import { erasedFact, factHash, Verifier, verifyFacts } from '@shearline/jobfile'
import { describe, expect, test } from 'vitest'
import { sealJob } from '../index.ts'
import { note } from './devices.ts'
import type { UnderTest } from './under-test.ts'

/** Deleting content while the chain stays whole, and the times of receipt. */
export function erasingCase(on: UnderTest): void {
  const nothing = { facts: [], blobs: [], documents: [] }

  async function keep(text: string): Promise<string> {
    const bytes = Buffer.from(text)
    const sha256 = createHash('sha256').update(bytes).digest('hex')
    await on.store.putBlob(sha256, 'image/jpeg', Readable.from([bytes]))
    return sha256
  }

  describe('deletes content', () => {
    test('STO-29 a body becomes its hash; signatures, links and the same fact again are as before', async () => {
      const facts = await on.tablet.writeNotes('job-a', 3)
      await on.fromDevice(facts)
      const [first, second, third] = facts
      if (first === undefined || second === undefined || third === undefined) throw new Error('three notes')
      const wish = { ...nothing, facts: [second.id] }
      expect(await on.store.erase('job-a', wish)).toEqual({ ...nothing, facts: [second.id] })
      const kept = await on.store.factsOfJob('job-a')
      expect(kept).toEqual([first, erasedFact(second), third])
      const check = await verifyFacts(kept, [on.tablet.device], new Verifier(webcrypto.subtle))
      expect([check.signaturesRight, check.linksRight]).toEqual([3, 3])
      expect(check.findings.map(({ code }) => code)).toEqual(['erased-without-proof'])
      // A tablet that sends it once more does not bring its content back.
      expect(await on.fromDevice(facts)).toEqual({ ok: true, value: { accepted: 0, already: 3 } })
      expect(await on.store.factsOfJob('job-a')).toEqual(kept)
      expect(await on.store.erase('job-a', wish)).toEqual({ ...nothing, facts: [second.id] })
    })

    test('STO-29 a fact of another job is not touched', async () => {
      const facts = await on.tablet.writeNotes('job-a', 1)
      await on.fromDevice(facts)
      const wish = { ...nothing, facts: facts.map(({ id }) => id) }
      expect(await on.store.erase('job-b', wish)).toEqual(nothing)
      expect(await on.store.factsOfJob('job-a')).toEqual(facts)
    })

    test('STO-29 a blob goes with its bytes, and asking again answers the same', async () => {
      const [gone, stays] = [await keep('a photo'), await keep('another photo')]
      const wish = { ...nothing, blobs: [gone] }
      const erased = { ...nothing, blobs: [{ sha256: gone, keyDestroyed: false }] }
      expect(await on.store.erase('job-a', wish)).toEqual(erased)
      expect(await on.store.blobEntry(gone)).toBeNull()
      expect(await on.store.openBlob(gone)).toBeNull()
      expect(await on.store.blobEntry(stays)).not.toBeNull()
      expect(await on.store.erase('job-a', wish)).toEqual(erased)
    })

    test('STO-29 the documents of every seal of a job go, not only the latest', async () => {
      await on.store.writeOwn([note('job-a', 'first')])
      const documents = []
      for (const minute of [0, 1]) {
        const now = Date.UTC(2026, 10, 25, 10, minute)
        const sealed = await sealJob(on.store, 'job-a', { by: 'Robin', evenIfNotReady: true, now })
        if (!sealed.ok) throw new Error(sealed.refusal.what)
        const seal = (await on.store.factsOfJob('job-a')).at(-1)?.id ?? ''
        documents.push({ seal, sha256: sealed.value.document.sha256 })
      }
      const wish = { ...nothing, documents: documents.map(({ seal }) => seal) }
      const first = await on.store.erase('job-a', wish)
      expect(new Set(first.documents)).toEqual(new Set(documents))
      expect(await on.store.documentsOf('job-a')).toEqual([])
      for (const { sha256 } of documents) expect(await on.store.blobEntry(sha256)).toBeNull()
      expect(new Set((await on.store.erase('job-a', wish)).documents)).toEqual(new Set(documents))
    })
  })

  describe('keeps the time of receipt', () => {
    test('STO-30 of every fact, of other devices and of its own, and the same fact again does not move it', async () => {
      const facts = await on.tablet.writeNotes('job-a', 2)
      const before = new Date().toISOString()
      await on.fromDevice(facts)
      const [own] = await on.store.writeOwn([note('job-a', 'own')])
      const received = await on.store.receivedOfJob('job-a')
      expect([...received.keys()].sort()).toEqual([...facts, own].map((fact) => fact?.id).sort())
      for (const instant of received.values()) {
        expect(instant >= before).toBe(true)
        expect(instant <= new Date().toISOString()).toBe(true)
      }
      await on.fromDevice(facts)
      expect(await on.store.receivedOfJob('job-a')).toEqual(received)
    })

    test('STO-30 it says where a chain ends and what a fact of it hashes to', async () => {
      const facts = await on.tablet.writeNotes('job-a', 2)
      await on.fromDevice(facts)
      const { device } = on.tablet.device
      const hashes = facts.map(factHash)
      expect(await on.store.chainEnd(device)).toEqual({ seq: 2, hash: hashes[1] })
      expect(await on.store.factHashOf(device, 1)).toBe(hashes[0])
      expect(await on.store.factHashOf(device, 3)).toBeNull()
      expect(await on.store.chainEnd('dev-0000000000000000')).toBeNull()
    })
  })
}
