import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'

const root = join(import.meta.dirname, '..', '..')
let scratch = ''

/** The project's own rules over an empty tree of the same shape, so that planting never touches the sources. */
beforeEach(() => {
  scratch = mkdtempSync(join(tmpdir(), 'shearline-layers-'))
  mkdirSync(join(scratch, 'scripts', 'lint'), { recursive: true })
  for (const file of ['biome.json', 'scripts/lint/ambient.grit', 'package.json'])
    cpSync(join(root, file), join(scratch, file))
})

afterEach(() => rmSync(scratch, { recursive: true, force: true }))

/** Plants files, lints the last one and returns what the linter says of it. */
function plant(...files: readonly (readonly [path: string, text: string])[]): string {
  let last = ''
  for (const [file, text] of files) {
    last = join(scratch, file)
    mkdirSync(dirname(last), { recursive: true })
    writeFileSync(last, text)
  }
  const { stdout, stderr, status } = spawnSync(
    process.execPath,
    [
      join(root, 'node_modules/@biomejs/biome/bin/biome'),
      'lint',
      '--colors=off',
      '--vcs-enabled=false',
      last,
    ],
    { cwd: scratch, encoding: 'utf8' },
  )
  expect(status, `the linter accepted ${last}`).not.toBe(0)
  return stdout + stderr
}

/** Every arrow that architecture.md forbids, planted once; the sentence must tell a newcomer what to do instead. */
const forbidden = [
  ['packages/bus/src', '@shearline/keywork', 'bus is the lowest layer'],
  ['packages/keywork/src', '@shearline/jobfile', 'keywork says what it means'],
  ['packages/keywork/src', '@shearline/store', 'keywork says what it means'],
  ['packages/jobfile/src', '@shearline/store', 'jobfile says what is on record'],
  ['packages/store/src', '@shearline/keywork', 'store keeps what jobfile defines'],
  ['apps/server/src', '@shearline/cli', 'Apps import packages, never each other'],
  ['apps/cli/src', '@shearline/bench', 'Apps import packages, never each other'],
  ['apps/bench/src', '@shearline/store', 'The bench runs in a browser'],
  ['apps/verify-page/src', '@shearline/keywork', 'The verify page proves a file by itself'],
] as const

describe('layer rules', () => {
  for (const [folder, imported, sentence] of forbidden) {
    it(`refuse ${imported} in ${folder}`, () => {
      const text = `import * as planted from '${imported}'\nexport const it: unknown = planted\n`
      expect(plant([`${folder}/planted-import.ts`, text])).toContain(sentence)
    })
  }

  it('refuse an import cycle', () => {
    const said = plant(
      ['packages/bus/src/a.ts', `import { b } from './b.ts'\nexport const a: unknown = () => b\n`],
      ['packages/bus/src/b.ts', `import { a } from './a.ts'\nexport const b: unknown = () => a\n`],
    )
    expect(said).toContain('noImportCycles')
  })

  it('accept what is allowed, so that the rules above do not simply refuse everything', () => {
    const text = `import * as bus from '@shearline/bus'\nexport const it: unknown = bus\n`
    expect(() => plant(['packages/keywork/src/allowed.ts', text])).toThrow('the linter accepted')
  })
})

describe('pure packages', () => {
  const ambient = [
    ['Date.now()', 'have no clock'],
    ['performance.now()', 'have no clock'],
    ['Math.random()', 'have no randomness'],
    ['crypto.randomUUID()', 'have no randomness'],
    ['fetch("/")', 'do no input or output'],
    ['process.env', 'know no runtime'],
    ['setTimeout(() => {}, 1)', 'have no clock'],
  ] as const
  for (const folder of ['packages/bus/src', 'packages/keywork/src', 'packages/jobfile/src']) {
    it(`${folder} refuses clock, network, runtime and randomness`, () => {
      const text = ambient.map(([code], index) => `export const p${index}: unknown = ${code}\n`).join('')
      const said = plant([`${folder}/planted-ambient.ts`, text])
      for (const [code, sentence] of ambient) expect(said, code).toContain(sentence)
    })

    it(`${folder} refuses Node's modules`, () => {
      const text = `import { readFileSync } from 'node:fs'\nexport const it: unknown = readFileSync\n`
      const said = plant([`${folder}/planted-node.ts`, text])
      expect(said).toContain('noNodejsModules')
    })
  }
})
