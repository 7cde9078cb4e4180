/** The document checked by a stranger: the commands are copied from its own printed page and run as they stand. */
import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { sha256OfBytes } from '../../chain/index.ts'
import { commandLines } from '../document/by-hand.ts'
import { makeHandover } from '../make.ts'
import { latin1 } from '../pdf/bytes.ts'
import { baseOf, present, sealAt, sealOf, skipNote } from '../testing/files.ts'
import { fonts, type SealedJob, sealedJob, vanJob } from '../testing/jobs.ts'

const tools = ['grep', 'tail', 'head', 'tr', 'cut', 'openssl', 'sha256sum', 'pdftotext']
const absent = tools.filter((tool) => !present(tool))
const shells = ['/bin/dash', '/bin/bash'].filter((path) => existsSync(path))

let folder = ''
let job: SealedJob
let bytes: Uint8Array
let printed = ''

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'by-hand-'))
  job = await sealedJob(vanJob())
  bytes = await makeHandover({ ...job, language: 'en', fonts, madeAt: '2026-01-12T09:41:00.000Z' })
  if (absent.length > 0) return
  writeFileSync(join(folder, 'printed.pdf'), bytes)
  const text = spawnSync('pdftotext', ['-raw', join(folder, 'printed.pdf'), '-'], { encoding: 'utf8' }).stdout
  // From the first command to the last, without the foot and the repeated head where a page ends between them.
  const lines = text.split(/[\n\f]/).map((line) => line.trim())
  const from = lines.findIndex((line) => line.startsWith('export LC_ALL'))
  const to = lines.findLastIndex((line) => line.startsWith('printf %s "$k" |'))
  printed = lines
    .slice(from, to + 1)
    .filter((line) => !/^(Commands|Page \d|Job )|· record /.test(line))
    .join('\n')
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

let run = 0
function check(file: Uint8Array, shell = '/bin/sh'): { code: number | null; said: string } {
  const cwd = mkdtempSync(join(folder, `empty-${run++}-`))
  writeFileSync(join(cwd, 'document.pdf'), file)
  const ran = spawnSync(shell, ['-c', printed], { cwd, encoding: 'utf8' })
  return { code: ran.status, said: `${ran.stdout}${ran.stderr}` }
}

const flipped = (at: number, mask = 1) => {
  const copy = bytes.slice()
  copy[at] = (copy[at] ?? 0) ^ mask
  return copy
}
const fails = (file: Uint8Array, what: string) => {
  const { code, said } = check(file)
  expect(code, what).not.toBe(0)
  expect(said, what).not.toContain('It holds')
}
const withText = (text: string) => new Uint8Array([...bytes, ...new TextEncoder().encode(text)])

describe.skipIf(absent.length > 0)(
  `a document, checked by the commands that its own page prints${absent.length === 0 ? '' : skipNote(absent[0] ?? '')}`,
  () => {
    it('prints every command whole, on one line each', () => {
      expect(printed.split('\n')).toEqual(commandLines)
    })

    it.each(shells)('holds in %s and tells the fingerprint of the key', (shell) => {
      const { code, said } = check(bytes, shell)
      const key = Buffer.from(job.device.publicKey, 'base64url')
      expect(said).toBe(
        `Signature Verified Successfully\nIt holds. The key fingerprint is:\n${sha256OfBytes(new Uint8Array(key))}  -\n`,
      )
      expect(code).toBe(0)
    })

    it('fails with one byte changed anywhere before the seal', () => {
      const end = baseOf(bytes).length
      for (let step = 0; step < 24; step++) {
        const at = Math.floor(((step + 0.4) * end) / 24)
        fails(flipped(at, 1 << (step % 8)), `byte ${at}`)
      }
    })

    it('fails with one byte changed in the seal or around it, but for the identifiers, which say nothing', () => {
      const from = baseOf(bytes).length
      const text = latin1(bytes, from)
      const id = from + text.indexOf('/ID [')
      const idEnd = from + text.indexOf('\n', id - from)
      const seal = sealAt(bytes)
      const sealEnd = from + text.indexOf('\nendstream')
      const places = Array.from({ length: bytes.length - from - 1 }, (_, index) => from + index).filter(
        (at) => (at < id || at > idEnd) && (at < seal || at > sealEnd ? at % 9 === 0 : at % 701 === 0),
      )
      expect(places.length).toBeGreaterThan(30)
      for (const at of places) fails(flipped(at, 2), `byte ${at}`)
    })

    it('fails with anything added that a reader would follow, also behind the line of the seal', () => {
      const update = `7 0 obj\n<<>>\nendobj\nxref\n7 1\n0000000000 00000 n \ntrailer\n<< /Size 99 >>\nstartxref\n0\n%%EOF\n`
      fails(withText(update), 'an update after the end')
      fails(withText(`/ID [<00> <00>] ${update}`), 'an update behind identifiers')
      // A carriage return ends a line for a reader of PDF and none for grep.
      const line = latin1(bytes, sealAt(bytes), bytes.length).split('\n')[0] ?? ''
      fails(withText(`${line}\r${update.replaceAll('\n', '\r')}\n`), 'an update behind a second seal line')
      fails(bytes.slice(0, -20), 'a file cut off')
      fails(baseOf(bytes), 'a file without its seal')
    })

    it('fails when somebody without the key made the list of hashes fit a changed file', () => {
      const { manifest } = sealOf(bytes)
      const sum = manifest.whole?.sha256 ?? ''
      const changed = flipped(4000)
      const forged = sha256OfBytes(changed.subarray(0, manifest.whole?.bytes))
      const text = Buffer.from(latin1(changed).replaceAll(sum, forged), 'latin1')
      fails(new Uint8Array(text), 'renewed hash')
    })
  },
)
