import { createHash, randomUUID } from 'node:crypto'
import { Readable } from 'node:stream'
import { buffer } from 'node:stream/consumers'
import { describe, expect, test } from 'vitest'
import type { Store } from '../contract/index.ts'
import { note } from './devices.ts'
import { expectRefused, type UnderTest } from './under-test.ts'

/** Blobs, documents, live news and copies. */
export function bytesCase(on: UnderTest): void {
  describe('keeps blobs by their content', () => {
    const chunks = Array.from({ length: 50 }, (_, i) => Buffer.alloc(40_000, i))
    const whole = Buffer.concat(chunks)
    const sha256 = createHash('sha256').update(whole).digest('hex')

    test('STO-16 streamed bytes come back the same, and again changes nothing', async () => {
      expect(await on.store.blobEntry(sha256)).toBeNull()
      expect(await on.store.openBlob(sha256)).toBeNull()
      const put = await on.store.putBlob(sha256, 'application/octet-stream', Readable.from(chunks))
      expect(put).toMatchObject({ ok: true, value: { sha256, bytes: whole.length } })
      expect(await on.store.putBlob(sha256, 'text/plain', Readable.from(chunks))).toEqual(put)
      const opened = await on.store.openBlob(sha256)
      if (opened === null) throw new Error('the blob was put')
      expect(Buffer.compare(await buffer(opened.stream), whole)).toBe(0)
      expect(opened.entry).toMatchObject({ bytes: whole.length, mediaType: 'application/octet-stream' })
    })

    test('STO-16 an empty blob is a blob', async () => {
      const empty = createHash('sha256').digest('hex')
      expect(await on.store.putBlob(empty, 'text/plain', Readable.from([]))).toMatchObject({
        ok: true,
        value: { bytes: 0 },
      })
      expect(await on.store.blobEntry(empty)).toMatchObject({ bytes: 0 })
    })

    test('STO-17 bytes that hash to something else are refused and not kept', async () => {
      const outcome = await on.store.putBlob('0'.repeat(64), 'text/plain', Readable.from(chunks))
      expectRefused(outcome, 'hash-differs')
      expect(await on.store.blobEntry('0'.repeat(64))).toBeNull()
      expect(await on.store.blobEntry(sha256)).toBeNull()
    })

    test('STO-17 more bytes than accepted are refused and not kept', async () => {
      const source = Readable.from(chunks)
      const outcome = await on.store.putBlob(sha256, 'text/plain', source, { maxBytes: 100_000 })
      expectRefused(outcome, 'too-large')
      expect(await on.store.blobEntry(sha256)).toBeNull()
    })

    test('STO-17 an upload that breaks off leaves nothing', async () => {
      const broken = Readable.from(
        (function* () {
          yield chunks[0]
          throw new Error('the line broke')
        })(),
      )
      await expect(on.store.putBlob(sha256, 'text/plain', broken)).rejects.toThrow('the line broke')
      expect(await on.store.blobEntry(sha256)).toBeNull()
    })

    test('STO-18 the documents of a job come with the latest seal first', async () => {
      expect(await on.store.documentsOf('job-a')).toEqual([])
      const pages = await Promise.all(['first', 'second'].map((text) => keep(on.store, text)))
      const sealed = pages.map((blob, i) => ({
        job: 'job-a',
        seal: randomUUID(),
        blob,
        sealedAt: `2026-11-25T1${i}:00:00.000Z`,
      }))
      for (const document of sealed.toReversed()) await on.store.keepDocument(document)
      expect(await on.store.documentsOf('job-a')).toEqual(sealed.toReversed())
      expect(await on.store.documentsOf('job-b')).toEqual([])
    })
  })

  describe('tells and copies', () => {
    test('STO-19 listeners hear of jobs written here and on another connection', async () => {
      const heard: string[] = []
      const end = on.store.onJobs((jobs) => heard.push(...jobs))
      const other = await on.place.open()
      await on.store.writeOwn([note('job-here', 'x')])
      await other.writeOwn([note('job-there', 'x')])
      await expect.poll(() => [...new Set(heard)].sort()).toEqual(['job-here', 'job-there'])
      end()
      await other.writeOwn([note('job-later', 'x')])
      await new Promise((resolve) => setTimeout(resolve, 500))
      expect(heard).not.toContain('job-later')
      await other.close()
    })

    test('STO-20 a copy made while another connection writes is sound and of one instant', async () => {
      const other = await on.place.open()
      let writing = true
      const writer = (async () => {
        for (let i = 0; writing; i++)
          await other.writeOwn([note('job-a', `${i}`, i), note('job-a', `${i}`, i)])
      })()
      await on.store.writeOwn([note('job-b', 'before the copy')])
      await on.store.backupTo(on.place.backup.file)
      await on.store.writeOwn([note('job-c', 'after the copy')])
      writing = false
      await writer
      await other.close()
      expect(await on.place.backup.factsIn(on.place.backup.file, 'job-b')).toHaveLength(1)
      expect(await on.place.backup.factsIn(on.place.backup.file, 'job-c')).toHaveLength(0)
      // Pairs are written in one transaction, so a copy of one instant holds whole pairs.
      expect((await on.place.backup.factsIn(on.place.backup.file, 'job-a')).length % 2).toBe(0)
      await expect(on.store.backupTo(on.place.backup.file)).rejects.toMatchObject({ code: 'file-exists' })
    })
  })
}

async function keep(store: Store, text: string): Promise<string> {
  const sha256 = createHash('sha256').update(text).digest('hex')
  await store.putBlob(sha256, 'application/pdf', Readable.from([Buffer.from(text)]))
  return sha256
}
