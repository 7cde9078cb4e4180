import { spawnSync } from 'node:child_process'
import { beforeAll, describe, expect, it } from 'vitest'
import { factHash, sha256OfBytes, treeHeadOfHashes } from '../chain/index.ts'
import { makeRecord } from '../record/index.ts'
import { TestDevice, testVerifier } from '../testing/device.ts'
import { accessTo, type BundleInput, BundleRefused, blobsNamed, verifyBundle } from './index.ts'
import { blobOf, packed, photo, vanBundle } from './testing/packed.ts'

let input: BundleInput
let bytes: Uint8Array
beforeAll(async () => {
  input = (await vanBundle()).input
  bytes = await packed(input)
})

const check = (changed: Uint8Array) => verifyBundle(accessTo(changed), testVerifier())

/** The smallest bundle: two facts and a seal. */
async function smallBundle(): Promise<{ input: BundleInput; tablet: TestDevice }> {
  const tablet = await TestDevice.create()
  await tablet.write('note-written', { text: 'one' })
  await tablet.write('note-written', { text: 'two' })
  const root = treeHeadOfHashes(tablet.facts.map(factHash))
  await tablet.write('document-sealed', { count: 2, root, language: 'en', ready: true })
  const record = makeRecord('test-job', tablet.facts, [tablet.device])
  return { input: { record, blobs: [], documents: [], packer: tablet.device, sign: tablet.sign }, tablet }
}

describe('a bundle', () => {
  it('is proven with its facts, files and document, two devices, an erased body and gaps in the numbers', async () => {
    const found = await check(bytes)
    expect(found.findings.filter(({ severity }) => severity === 'error')).toEqual([])
    const facts = input.record.facts.length
    // One signature for each fact, one for the list, one for the seal of the document.
    expect(found).toMatchObject({ proven: true, facts, signatures: facts + 2, packedBy: input.packer.device })
  })

  it('has the same bytes whenever and wherever it is written', async () => {
    expect(sha256OfBytes(await packed(input))).toBe(sha256OfBytes(bytes))
    const zone = process.env.TZ
    try {
      process.env.TZ = 'Pacific/Kiritimati'
      expect(sha256OfBytes(await packed({ ...input, blobs: [...input.blobs, ...input.blobs] }))).toBe(
        sha256OfBytes(bytes),
      )
    } finally {
      if (zone === undefined) delete process.env.TZ
      else process.env.TZ = zone
    }
  })

  // Measured once over every byte (78 s); here the instructions are tried at every 61st byte and the rest at every third.
  it('is not proven with any one byte changed, and every finding says where', async () => {
    const small = await packed((await smallBundle()).input)
    expect((await check(small)).proven).toBe(true)
    expect(small.length).toBeGreaterThan(10_000)
    for (let at = 0; at < small.length; at += at < 8000 ? 61 : 3) {
      const forged = small.slice()
      forged[at] = (forged[at] ?? 0) ^ (1 << (at % 8))
      const found = await check(forged)
      if (
        found.proven ||
        found.findings.length === 0 ||
        found.findings.some(({ where }) => where.part === undefined)
      )
        expect.fail(`byte ${at}: ${JSON.stringify(found.findings)}`)
    }
  }, 120_000)

  it('is proven with the verify page in it, says what that is, and not once the page was changed', async () => {
    const { input: honest } = await smallBundle()
    const page = new TextEncoder().encode('<!doctype html><title>Verify</title>')
    const packedWithPage = await packed({ ...honest, page })
    expect((await check(packedWithPage)).findings).toEqual([])
    const text = new TextDecoder('latin1').decode(packedWithPage)
    expect(text).toContain('use one you got elsewhere')
    expect(new TextDecoder('latin1').decode(await packed(honest))).not.toContain('verify.html')
    const forged = packedWithPage.slice()
    const at = text.indexOf('<title>')
    forged[at] = 0x20
    expect((await check(forged)).findings.map(({ where }) => where.part)).toContain('verify.html')
  })

  it('is not proven when it is cut off anywhere or bytes are added', async () => {
    const small = await packed((await smallBundle()).input)
    for (let length = 0; length < small.length; length += 37)
      expect((await check(small.slice(0, length))).proven).toBe(false)
    expect((await check(Uint8Array.from([...small, 0]))).proven).toBe(false)
    expect((await check(Uint8Array.from([0, ...small]))).proven).toBe(false)
  })

  it('names the fact whose body was changed before it was packed by somebody with a key', async () => {
    const { input: honest, tablet } = await smallBundle()
    const facts = honest.record.facts.map((fact, index) =>
      index === 1 ? { ...fact, body: { text: 'three' } } : fact,
    )
    const forged = await packed({ ...honest, record: makeRecord('test-job', facts, [tablet.device]) })
    const found = await check(forged)
    expect(found.proven).toBe(false)
    expect(found.findings.map(({ where }) => where.part)).toContain('fact 2 (note-written)')
  })

  it('tells of a fact left out, and of a document that states another record', async () => {
    const without = input.record.facts.filter((_, index) => index !== 7)
    const found = await check(await packed({ ...input, record: { ...input.record, facts: without } }))
    const codes = found.findings.map(({ code }) => code)
    expect(codes).toContain('facts-missing')
    expect(codes).toContain('document-of-other-record')
  })

  it('says what facts name and what is not in it', async () => {
    expect([...blobsNamed(input.record).keys()]).toContain(sha256OfBytes(photo))
    const readme = new TextDecoder().decode(await packed({ ...input, blobs: [] }))
    expect(readme).toMatch(new RegExp(`- ${sha256OfBytes(photo)}, named by fact \\d+`))
  })

  it('lets no name of a device pass for a command in its instructions', async () => {
    const text = new TextDecoder().decode(bytes)
    const readme = text.slice(text.indexOf('# The record of job'), text.indexOf('Something is WRONG'))
    expect(readme).toContain('"office computer sh rm -rf"')
    expect(readme).not.toMatch(/^rm -rf/m)
  })

  it('refuses to pack a kept file that is not what it is named', async () => {
    const { sha256 } = blobOf(photo)
    const damaged = { ...blobOf(photo.slice(1)), sha256 }
    await expect(packed({ ...input, blobs: [damaged] })).rejects.toThrow(BundleRefused)
    const huge = { ...blobOf(photo), bytes: 2 ** 32 }
    await expect(packed({ ...input, blobs: [huge] })).rejects.toThrow('more than a zip can')
  })

  it.skipIf(spawnSync('unzip', ['-v']).status !== 0)(
    'is a zip that Info-ZIP and Python read without complaint',
    async () => {
      const { mkdtempSync, rmSync, writeFileSync } = await import('node:fs')
      const { tmpdir } = await import('node:os')
      const { join } = await import('node:path')
      const folder = mkdtempSync(join(tmpdir(), 'shearline-bundle-'))
      try {
        const file = join(folder, 'x.zip')
        writeFileSync(file, bytes)
        expect(spawnSync('unzip', ['-tqq', file]).status).toBe(0)
        const python = spawnSync('python3', ['-m', 'zipfile', '-t', file], { encoding: 'utf8' })
        if (python.error === undefined) expect(python.stdout.trim()).toBe('Done testing')
      } finally {
        rmSync(folder, { recursive: true, force: true })
      }
    },
  )
})
