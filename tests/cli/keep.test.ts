import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { openStore } from '@shearline/store'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { fill } from '../../packages/store/src/testing/filled.ts'
import { shearline } from '../support/shearline.ts'

let folder: string
const place = (name: string) => join(folder, name)

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'shearline-keep-'))
  const store = await openStore(place('data'))
  await fill(store)
  await store.close()
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

describe('looking after what is kept', () => {
  it('doctor, backup and restore answer 0 with JSON when everything is sound', () => {
    const doctor = shearline(['doctor', '--data', place('data'), '--json'])
    expect([doctor.code, doctor.err]).toEqual([0, ''])
    expect(JSON.parse(doctor.out)).toMatchObject({ sound: true, looked: { facts: 53 }, findings: [] })
    const backup = shearline(['backup', place('backup'), '--data', place('data'), '--json'])
    expect(backup.code).toBe(0)
    expect(JSON.parse(backup.out)).toMatchObject({ sound: true, folder: place('backup') })
    const restored = shearline(['restore', place('backup'), '--into', place('new'), '--json'])
    expect(restored.code).toBe(0)
    expect(JSON.parse(restored.out)).toMatchObject({ restored: true, examination: { looked: { facts: 53 } } })
  })

  it('doctor answers 1 with the place and what to do when a bit flipped, and 2 when there is nothing', () => {
    const file = join(place('new'), 'shearline.sqlite')
    const bytes = readFileSync(file)
    const at = bytes.indexOf('note 7')
    bytes[at] = (bytes[at] ?? 0) ^ 1
    writeFileSync(file, bytes)
    const changed = shearline(['doctor', '--data', place('new')])
    expect(changed.code).toBe(1)
    expect(changed.out).toMatch(/fact 7 of dev-[0-9a-f]{16}.*shearline restore/)
    const nothing = shearline(['doctor', '--data', place('nowhere')])
    expect([nothing.code, nothing.out]).toEqual([2, ''])
    expect(nothing.err).toContain('There is no record')
  })

  it('restore answers 2 for a place that holds something and 1 for a backup that was changed', () => {
    const used = shearline(['restore', place('backup'), '--into', place('data')])
    expect(used.code).toBe(2)
    expect(used.err).toContain('not empty')
    writeFileSync(join(place('backup'), 'device.pub'), 'x')
    const changed = shearline(['restore', place('backup'), '--into', place('never')])
    expect(changed.code).toBe(1)
    expect(changed.out).toContain('device.pub')
  })
})
