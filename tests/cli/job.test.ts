import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { recordingBefore } from '@shearline/jobfile/demo'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { captures, shearline } from '../support/shearline.ts'

let folder = ''
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'shearline-cli-'))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

/** Where the repository has no captures beside it: what the demo finds when it looks for them. */
const generated = () => {
  const file = join(folder, 'arrival.log')
  writeFileSync(file, recordingBefore(1_767_960_000))
  return file
}

describe('shearline job', () => {
  it('opens a job, takes a recording, shows it, and refuses to seal it before it is in line', () => {
    const env = { SHEARLINE_DATA: join(folder, 'data') }
    const opened = shearline(
      [
        'job',
        'open',
        'van-1',
        '--title',
        'Small van',
        '--place',
        'Harbour',
        '--vehicle',
        'small van',
        '--zone',
        'Europe/Lisbon',
      ],
      { env },
    )
    expect([opened.code, opened.err]).toEqual([0, ''])
    const imported = shearline(['job', 'import', 'van-1', generated(), '--as', 'before', '--json'], { env })
    expect(JSON.parse(imported.out)).toMatchObject({ scannedUnits: 9, faults: 1 })
    const shown = JSON.parse(shearline(['job', 'show', 'van-1', '--json'], { env }).out)
    expect(shown.recordings).toHaveLength(1)
    expect(shown.tumblers).toHaveLength(7)
    expect(shearline(['job', 'show', 'van-1'], { env }).out).toContain('Next:')
    const out = join(folder, 'early.pdf')
    const refused = shearline(['job', 'seal', 'van-1', '--out', out, '--json'], { env })
    expect(refused.code).toBe(1)
    expect(JSON.parse(refused.out)).toMatchObject({ sealed: false, code: 'not-in-line' })
    const forced = shearline(['job', 'seal', 'van-1', '--out', out, '--even-if-not-ready'], { env })
    expect([forced.code, forced.err]).toEqual([0, ''])
    expect(shearline(['verify', out]).code).toBe(0)
    const record = shearline(['job', 'export', 'van-1'], { env }).out
    const check = shearline(['verify', '-', '--json'], { input: record })
    expect(JSON.parse(check.out)).toMatchObject({ proven: true })
  })

  it('says what is wrong with a job, a kind or a body it does not know', () => {
    const env = { SHEARLINE_DATA: join(folder, 'data') }
    expect(shearline(['job', 'show', 'nobody'], { env })).toMatchObject({ code: 2 })
    shearline(
      ['job', 'open', 'van-1', '--title', 'Small van', '--place', 'Harbour', '--vehicle', 'small van'],
      { env },
    )
    const kind = shearline(['job', 'record', 'van-1', 'no-such-kind', '-'], { env, input: '{}' })
    expect([kind.code, kind.err]).toEqual([2, expect.stringContaining('no kind of fact')])
    const body = shearline(['job', 'record', 'van-1', 'keys-said', '-'], { env, input: '{"count":-1}' })
    expect([body.code, body.err]).toEqual([2, expect.stringContaining('count')])
  })
})

describe('shearline demo', () => {
  it('turns a generated recording into a proven handover, and a changed byte names the fact', () => {
    const ran = shearline(['demo', generated(), '--out', join(folder, 'demo'), '--json'])
    expect(ran.code, ran.err).toBe(0)
    const result = JSON.parse(ran.out)
    expect(result).toMatchObject({ source: 'given', tumblersInLine: 7, proven: true, tamperFound: true })
    expect(result.tamperFinding).toMatch(/^fact \d+ \(key-taught\)$/)
    const bytes = readFileSync(result.document)
    const page = Buffer.from(bytes)
    page[bytes.length >> 1] = (page[bytes.length >> 1] ?? 0) ^ 1
    const forged = join(folder, 'forged.pdf')
    writeFileSync(forged, page)
    const verdict = shearline(['verify', forged, '--json'])
    expect(verdict.code).toBe(1)
    expect(JSON.parse(verdict.out).findings[0].where).not.toBe('')
  })

  it.skipIf(captures === null)('turns a real recording into a proven handover (../shared/captures)', () => {
    const ran = shearline(['demo', '--out', join(folder, 'demo'), '--json'])
    expect(ran.code, ran.err).toBe(0)
    expect(JSON.parse(ran.out)).toMatchObject({
      source: 'captures',
      units: 21,
      faultLines: 22,
      tumblersInLine: 7,
      proven: true,
      tamperFound: true,
    })
  })
})
