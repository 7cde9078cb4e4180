import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { shearline } from '../support/shearline.ts'

let folder = ''
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'shearline-sheet-'))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

const open = (job: string) =>
  `job open ${job} --title Van --place =Harbour --vehicle van --zone Europe/Lisbon --customer fleet`.split(
    ' ',
  )

describe('shearline sheet', () => {
  it('lists, makes and exports what the record holds, and says what it lacks', () => {
    const env = { SHEARLINE_DATA: join(folder, 'data'), SHEARLINE_BY: 'A. Tester' }
    expect(shearline(open('van-1'), { env }).code).toBe(0)
    const body = join(folder, 'body.json')
    writeFileSync(body, JSON.stringify({ count: 2, absent: ['spare at home'] }))
    expect(shearline(['job', 'record', 'van-1', 'keys-said', body], { env }).code).toBe(0)

    const listed = JSON.parse(shearline(['sheet', 'list', 'van-1', '--json'], { env }).out)
    expect(listed.sheets).toHaveLength(6)
    expect(listed.sheets.find(({ sheet }: { sheet: string }) => sheet === 'absent-keys')).toMatchObject({
      ready: true,
      preview: 'One key is named as not here: spare at home.',
    })
    expect(shearline(['sheet', 'list', 'van-1'], { env }).out).toMatch(/^= absent-keys/m)

    const out = join(folder, 'consent.pdf')
    const made = shearline(['sheet', 'make', 'van-1', 'absent-keys', '--out', out, '--json'], { env })
    expect(JSON.parse(made.out)).toMatchObject({ sheet: 'absent-keys', language: 'en' })
    expect(readFileSync(out, 'latin1')).toMatch(/^%PDF-1\.7/)
    const early = shearline(['sheet', 'make', 'van-1', 'refusal', '--out', out], { env })
    expect([early.code, early.err]).toEqual([
      0,
      'note: The work was neither refused nor held. The sheet is made all the same.\n',
    ])
    const message = shearline(['sheet', 'make', 'van-1', 'bring-this', '--message', '--firm', 'Quay Keys'], {
      env,
    })
    expect(message.out).toMatch(/^Quay Keys: key work on van,/)

    const csv = shearline(['sheet', 'register'], { env })
    expect(csv.out).toContain(`\r\nvan-1,`)
    expect(csv.out).toContain(`,'=Harbour,`)
    expect(csv.err).toContain('note: van-1: "vin" is wanted and not on record.')
    const pack = join(folder, 'pack.json')
    const field = { column: 'Stelle', from: 'place', required: true }
    writeFileSync(
      pack,
      JSON.stringify({ id: 'own', title: 'Own', date: '2026-01-01', source: 'own', fields: [field] }),
    )
    const json = JSON.parse(shearline(['sheet', 'register', 'van-1', '--pack', pack, '--json'], { env }).out)
    expect(json.rows).toEqual([{ Stelle: '=Harbour' }])
  })

  it('says what to do when it cannot', () => {
    const env = { SHEARLINE_DATA: join(folder, 'data') }
    expect(shearline(open('van-1'), { env }).code).toBe(0)
    const asked = (...args: string[]) => shearline(['sheet', ...args], { env })
    expect(asked('list', 'none')).toMatchObject({ code: 2 })
    expect(asked('make', 'van-1', 'refusal').err).toContain('Add --out FILE.pdf.')
    expect(asked('make', 'van-1', 'refusal', '--message').code).toBe(2)
    expect(asked('make', 'van-1', 'poem', '--out', 'x').code).toBe(2)
    const pack = join(folder, 'pack.json')
    writeFileSync(pack, '{"id":"x"}')
    const wrong = asked('register', '--pack', pack)
    expect([wrong.code, wrong.out]).toEqual([2, ''])
    expect(wrong.err).toContain('pack.json, ')
  })
})
