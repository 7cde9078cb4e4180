/** `shearline verify` on everything it proves: exit 0 when it holds, 1 with the place when a byte was changed, 2 when there is nothing. */
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Ran, shearline } from '../support/shearline.ts'

let folder = ''
let env: Record<string, string> = {}
const at = (name: string) => join(folder, name)
const run = (...args: string[]): Ran => shearline(args, { env })

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'shearline-verify-'))
  env = { SHEARLINE_DATA: at('data'), SHEARLINE_BY: 'technician' }
  run('job', 'open', 'van-1', '--title', 'Van', '--place', 'Yard', '--vehicle', 'small van')
  run('job', 'seal', 'van-1', '--out', at('van-1.pdf'), '--even-if-not-ready')
  run('job', 'export', 'van-1', '--bundle', at('van-1.zip'))
  run('job', 'export', 'van-1', '--bundle', at('again.zip'))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const answer = (file: string) => {
  const ran = run('verify', file, '--json')
  return { code: ran.code, ...JSON.parse(ran.out) }
}

/** Changes one bit of a file in place and gives back how to undo it. */
function flip(file: string, place: (bytes: Buffer) => number): () => void {
  const bytes = readFileSync(file)
  const forged = Buffer.from(bytes)
  const offset = place(bytes)
  forged[offset] = (forged[offset] ?? 0) ^ 1
  writeFileSync(file, forged)
  return () => writeFileSync(file, bytes)
}

describe('shearline verify', () => {
  it('proves a document, a bundle, a data folder and its database file', () => {
    expect(readFileSync(at('van-1.zip')).equals(readFileSync(at('again.zip')))).toBe(true)
    expect(answer(at('van-1.pdf'))).toMatchObject({
      code: 0,
      proven: true,
      facts: 2,
      signatures: 3,
      findings: [],
    })
    expect(answer(at('van-1.zip'))).toMatchObject({
      code: 0,
      proven: true,
      facts: 2,
      signatures: 4,
      findings: [],
    })
    for (const place of [at('data'), at('data/shearline.sqlite')])
      expect(answer(place)).toMatchObject({ code: 0, proven: true, facts: 2, signatures: 2 })
  })

  it('reads a bundle from standard input', () => {
    const ran = shearline(['verify', '-', '--json'], { input: readFileSync(at('van-1.zip')) })
    expect(ran.code, ran.err).toBe(0)
  })

  it('says where one changed byte of a bundle is', () => {
    const undo = flip(at('van-1.zip'), (bytes) => bytes.lastIndexOf('"title":"Van"') + 9)
    try {
      const { code, findings } = answer(at('van-1.zip'))
      expect(code).toBe(1)
      expect(findings[0].where).toMatch(/^(documents|chain|facts)/)
    } finally {
      undo()
    }
  })

  it('says where one changed byte of a kept file of the data folder is', () => {
    const blobs = readdirSync(at('data/blobs'), { recursive: true, encoding: 'utf8' })
    const blob = blobs.find((name) => /[0-9a-f]{64}$/.test(name)) ?? ''
    const undo = flip(at(join('data/blobs', blob)), () => 1000)
    try {
      const { code, findings } = answer(at('data'))
      expect(code).toBe(1)
      expect(findings.map(({ where }: { where: string }) => where)).toContain(`blob ${blob.slice(-64)}`)
    } finally {
      undo()
    }
  })

  it('ends with 2 and says what to do when there is nothing to prove', () => {
    expect(run('verify', at('nothing.zip'))).toMatchObject({
      code: 2,
      err: expect.stringContaining('does not exist'),
    })
    expect(run('verify', at('data/blobs')).code).toBe(2)
  })
})
