/** The document of the demo van in every language, sealed and proven by the commands a technician and a customer run. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { recordingBefore } from '@shearline/jobfile/demo'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { shearline } from '../support/shearline.ts'

const languages = ['en', 'de', 'fr', 'es', 'pl', 'ar'] as const

let folder = ''
let env: Record<string, string> = {}
let job = ''

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'shearline-languages-'))
  const recording = join(folder, 'arrival.log')
  writeFileSync(recording, recordingBefore(1_767_960_000))
  const ran = shearline(['demo', recording, '--out', folder, '--json'])
  env = { SHEARLINE_DATA: join(folder, 'data'), SHEARLINE_BY: 'A. Tester' }
  job = JSON.parse(ran.out).job
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

describe('the document of the demo van', () => {
  it.each(languages)('is proven by shearline verify, its pages too: %s', (language) => {
    const out = join(folder, `${language}.pdf`)
    const sealed = shearline(['job', 'seal', job, '--language', language, '--out', out, '--json'], { env })
    expect([sealed.code, sealed.err]).toEqual([0, ''])
    expect(readFileSync(out, 'latin1')).toContain(`/Lang (${language})`)
    const check = shearline(['verify', out, '--json'])
    expect(check.code).toBe(0)
    expect(JSON.parse(check.out)).toMatchObject({ proven: true, pages: 'state-the-record', findings: [] })
  })
})
