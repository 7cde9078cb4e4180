import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import packageJson from '../../../package.json' with { type: 'json' }
import { factHash, fromBase64Url, sha256OfBytes } from '../../chain/index.ts'
import { recordText } from '../../record/index.ts'
import { latestEdition } from '../document/index.ts'
import { makeHandover } from '../make.ts'
import { latin1 } from '../pdf/bytes.ts'
import { baseOf, present, sealAt, sealOf, skipNote } from '../testing/files.ts'
import { bareJob, fonts, type SealedJob, sealedJob } from '../testing/jobs.ts'
import { maker, partsListed } from './manifest.ts'
import { placesOf } from './parts.ts'

const openssl = 'openssl'
let job: SealedJob
let bytes: Uint8Array

beforeAll(async () => {
  job = await sealedJob(bareJob())
  bytes = await makeHandover({ ...job, language: 'en', fonts, madeAt: '2026-01-12T09:41:00.000Z' })
})

describe('the seal of a document', () => {
  it('lists parts whose hashes another implementation of SHA-256 gives too', () => {
    const parts = partsListed(sealOf(bytes).manifest)
    placesOf(parts).forEach(({ from, to }, index) => {
      const hash = createHash('sha256').update(bytes.subarray(from, to)).digest('hex')
      expect(parts[index]?.sha256).toBe(hash)
    })
  })

  it('names the record, its own seal and the device, and where the record stands', () => {
    const { manifest } = sealOf(bytes)
    const { at, bytes: length, sha256 } = manifest.record
    expect(new TextDecoder().decode(bytes.subarray(at, at + length))).toBe(recordText(job.record))
    expect(sha256).toBe(sha256OfBytes(recordText(job.record)))
    const sealed = job.record.facts.at(-1)
    expect(manifest.sealFact).toBe(sealed === undefined ? null : factHash(sealed))
    expect(manifest.job).toBe('test-job')
    expect(manifest.publicKey).toBe(job.device.publicKey)
  })

  it('stands in an incremental update that names the table before it (ISO 32000-1, 7.5.6)', () => {
    const base = baseOf(bytes)
    const update = latin1(bytes, base.length)
    const previous = /startxref\n(\d+)\n%%EOF\n$/.exec(latin1(base, base.length - 200))?.[1]
    expect(update).toContain(`/Prev ${previous}\n`)
    const table = Number(/startxref\n(\d+)\n%%EOF\n$/.exec(update)?.[1])
    expect(latin1(bytes, table, table + 5)).toBe('xref\n')
    const object = Number(/\n(\d{10}) 00000 n \n/.exec(latin1(bytes, table))?.[1])
    expect(latin1(bytes, object, object + 12)).toMatch(
      new RegExp(`^${sealOf(bytes).manifest.object} 0 obj\n`),
    )
  })

  it(`is verified by openssl from the bytes of the file alone (RFC 8032, RFC 8410)${skipNote('openssl')}`, {
    skip: !present('openssl'),
  }, () => {
    const text = latin1(bytes, sealAt(bytes))
    const from = '{"manifest":'.length
    const to = text.lastIndexOf(',"signature":"')
    const manifest = text.slice(from, to)
    const signature = /^,"signature":"([^"]+)"}\n/.exec(text.slice(to))?.[1] ?? ''
    const publicKey = /"publicKey":"([^"]+)"/.exec(manifest)?.[1] ?? ''
    const folder = mkdtempSync(join(tmpdir(), 'seal-'))
    try {
      // An Ed25519 key as SubjectPublicKeyInfo is these twelve bytes and the key.
      const key = Buffer.concat([
        Buffer.from('302a300506032b6570032100', 'hex'),
        fromBase64Url(publicKey) ?? Buffer.alloc(0),
      ])
      writeFileSync(join(folder, 'key.der'), key)
      writeFileSync(join(folder, 'sig'), fromBase64Url(signature) ?? '')
      const check = (data: string) => {
        writeFileSync(join(folder, 'manifest.json'), Buffer.from(data, 'latin1'))
        const words =
          'pkeyutl -verify -pubin -keyform DER -inkey key.der -rawin -in manifest.json -sigfile sig'
        return spawnSync(openssl, words.split(' '), { cwd: folder }).status
      }
      expect(check(manifest)).toBe(0)
      expect(check(manifest.replace('"version":1', '"version":2'))).not.toBe(0)
    } finally {
      rmSync(folder, { recursive: true, force: true })
    }
  })

  it('says by which version it was made', () => {
    expect(maker).toBe(`shearline ${packageJson.version}, document ${latestEdition}`)
  })
})
