/**
 * A bundle checked by a stranger: the commands are taken from its own README and run as they stand, in an empty
 * folder, by a shell that finds nothing but unzip (Info-ZIP), openssl 3 and sha256sum (GNU coreutils).
 */
import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { BundleInput } from '../../packages/jobfile/src/bundle/index.ts'
import { packed, photo, vanBundle } from '../../packages/jobfile/src/bundle/testing/packed.ts'

const whereIs = (program: string) =>
  spawnSync('sh', ['-c', `command -v ${program}`], { encoding: 'utf8' }).stdout.trim()
const programs = ['unzip', 'openssl', 'sha256sum'].map((name) => ({ name, path: whereIs(name) }))
const absent = programs.filter(({ path }) => path === '').map(({ name }) => name)
const note = absent.length === 0 ? '' : ` [skipped: ${absent.join(', ')} not on this machine]`
const shells = ['/bin/dash', '/bin/bash', '/bin/busybox'].filter((path) => existsSync(path))

let folder = ''
let input: BundleInput
let honest: Uint8Array
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'shearline-stranger-'))
  mkdirSync(join(folder, 'bin'))
  for (const { name, path } of programs) if (path !== '') symlinkSync(path, join(folder, 'bin', name))
  input = (await vanBundle()).input
  honest = await packed(input)
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** The shell blocks of the README inside a bundle, in order. */
function commandsOf(zip: Uint8Array): string {
  const file = join(folder, 'for-readme.zip')
  writeFileSync(file, zip)
  const readme = spawnSync('unzip', ['-p', file, 'README.md'], { encoding: 'utf8' }).stdout
  return [...readme.matchAll(/^```sh\n([\s\S]*?)^```$/gm)].map(([, block]) => block).join('')
}

let run = 0
/** Runs the README's own commands on a bundle, alone in an empty folder. */
function check(zip: Uint8Array, commands: string, shell = '/bin/sh'): { code: number | null; said: string } {
  const cwd = join(folder, `empty-${run++}`)
  mkdirSync(cwd)
  writeFileSync(join(cwd, 'given.zip'), zip)
  const first = shell.endsWith('busybox') ? ['sh'] : shell.endsWith('bash') ? ['--norc'] : []
  const args = [...first, '-c', commands]
  const ran = spawnSync(shell, args, { cwd, encoding: 'utf8', env: { PATH: join(folder, 'bin') } })
  return { code: ran.status, said: `${ran.stdout}${ran.stderr}` }
}

/** The place of a file's byte in a zip: after its local header of 30 bytes and its name (APPNOTE 4.3.7). */
function placeOf(zip: Uint8Array, name: string, offset: number): number {
  const all = Buffer.from(zip)
  let at = all.indexOf(name)
  while (at >= 0 && all.readUInt32LE(Math.max(at - 30, 0)) !== 0x04034b50) at = all.indexOf(name, at + 1)
  if (at < 0) throw new Error(`${name} is not in the bundle`)
  return at + name.length + offset
}

function flipped(zip: Uint8Array, at: number): Uint8Array {
  const forged = zip.slice()
  forged[at] = (forged[at] ?? 0) ^ 1
  return forged
}

describe.skipIf(absent.length > 0)(`a bundle, checked by its own instructions${note}`, () => {
  it.each(shells)('holds for a stranger with %s, unzip, openssl and sha256sum', (shell) => {
    const { code, said } = check(honest, commandsOf(honest), shell)
    expect(said).toBe('Signature Verified Successfully\nEverything holds.\n')
    expect(code).toBe(0)
  })

  const facts = () => input.record.facts
  it.each([
    ['a fact in facts.jsonl', () => placeOf(honest, 'facts.jsonl', 40), 'facts.jsonl'],
    ['a kept file', () => placeOf(honest, `blobs/${input.blobs[0]?.sha256}`, 100), `blobs/`],
    ['a document', () => placeOf(honest, `documents/${input.documents[0]?.sha256}.pdf`, 9000), 'documents/'],
    ['a body', () => placeOf(honest, `chain/${facts()[3]?.device}/00000004.body`, 12), '00000004.body'],
    [
      'a signed text',
      () => placeOf(honest, `chain/${facts()[3]?.device}/00000004.signed`, 30),
      '00000004.signed',
    ],
    ['a signature', () => placeOf(honest, `chain/${facts()[3]?.device}/00000004.sig`, 30), '00000004.sig'],
    ['a key', () => placeOf(honest, `keys/${input.packer.device}.pem`, 60), `keys/${'dev-'}`],
    ['the list', () => placeOf(honest, 'SHA256SUMS', 30), 'SHA256SUMS'],
  ] as const)('says where one byte of %s was changed', (_, at, where) => {
    const { code, said } = check(flipped(honest, at()), commandsOf(honest))
    expect(code).not.toBe(0)
    expect(said).toContain('WRONG: the zip file was changed')
    expect(
      said
        .split('\n')
        .filter((line) => line.includes(where))
        .join(),
    ).not.toBe('')
    expect(said).toContain('Something is WRONG: see above.')
  })

  it('finds what a dishonest packer changed, whose list and zip are in order', async () => {
    const commands = commandsOf(honest)
    const repacked = async (change: Partial<BundleInput>) => {
      const { code, said } = check(await packed({ ...input, ...change }), commands)
      expect(code).not.toBe(0)
      return said
    }
    const record = (change: (facts: BundleInput['record']['facts']) => BundleInput['record']['facts']) => ({
      record: { ...input.record, facts: change(input.record.facts) },
    })
    const body = await repacked(
      record((all) => all.map((fact, index) => (index === 4 ? { ...fact, body: { text: 'x' } } : fact))),
    )
    expect(body).toContain(`is not signed by ${facts()[4]?.device}`)
    expect(body).toContain('does not follow the fact before it')
    expect(await repacked(record((all) => all.filter((_, index) => index !== 7)))).toContain(
      '(the seal) counts other facts than there are',
    )
    // The last body with the same length: only the tree head can tell a fact put in another one's place.
    const swapped = await repacked(
      record((all) => [...all.slice(0, 2), ...all.slice(3, 4), ...all.slice(2, 3), ...all.slice(4)]),
    )
    expect(swapped).toContain('(the seal) was made over other facts')
    const unsealed = await repacked(record((all) => all.filter(({ kind }) => kind !== 'document-sealed')))
    expect(unsealed).toContain('the job is not sealed')
  })

  it('finds a file that was added', () => {
    const cwd = join(folder, 'added')
    mkdirSync(join(cwd, 'blobs'), { recursive: true })
    writeFileSync(join(cwd, 'given.zip'), honest)
    writeFileSync(join(cwd, 'blobs', 'ab'.repeat(32)), photo)
    const env = { PATH: join(folder, 'bin') }
    const ran = spawnSync('/bin/sh', ['-c', commandsOf(honest)], { cwd, encoding: 'utf8', env })
    expect(ran.status).not.toBe(0)
    expect(ran.stdout).toMatch(/WRONG: \d+ files are here, \d+ were packed/)
    expect(ran.stdout).toContain(`blobs/${'ab'.repeat(32)} is not what its name says`)
  })
})
