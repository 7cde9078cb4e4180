import { webcrypto } from 'node:crypto'
import { mkdtemp, rm } from 'node:fs/promises'
import { join } from 'node:path'
import { Verifier } from '@shearline/jobfile'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import type { Engine } from '../contract/engine.ts'
import { openSqlite } from '../sqlite/index.ts'
import { note, OtherDevice } from '../testing/devices.ts'
import { quickFolder } from '../testing/folders.ts'
import { enrol } from './devices.ts'
import { Standings } from './standings.ts'
import { Taking } from './taking.ts'

let folder: string
let engine: Engine
let commits = 0
let taking: Taking
let devices: readonly OtherDevice[]

function takingOn(on: Engine): Taking {
  const verifier = new Verifier(webcrypto.subtle)
  return new Taking(on, verifier, new Standings(verifier), () => '2026-11-25T09:30:00.000Z')
}

beforeEach(async () => {
  folder = await mkdtemp(join(quickFolder, 'shearline-taking-'))
  const real = await openSqlite({
    file: join(folder, 'a.sqlite'),
    backups: folder,
    lockWaitMilliseconds: 100,
    clock: () => 0,
  })
  engine = {
    ...real,
    transact: (work) => {
      commits++
      return real.transact(work)
    },
  }
  taking = takingOn(engine)
  devices = await Promise.all(Array.from({ length: 40 }, () => OtherDevice.make()))
  for (const { device } of devices) await enrol(engine, device, '2026-11-25T09:00:00.000Z')
  commits = 0
})
afterEach(async () => {
  await engine.close()
  await rm(folder, { recursive: true, force: true })
})

describe('appends that come together', () => {
  test('STO-28 share few commits, and a refused one spoils no other', async () => {
    const calls = []
    for (const device of devices) {
      const [one, two] = [
        await device.write(note('job-a', 'one')),
        await device.write(note('job-a', 'two', 1)),
      ]
      calls.push([one], [two])
    }
    const stranger = await OtherDevice.make()
    const outcomes = await Promise.all([
      ...calls.map((facts) => taking.append(facts, 'device')),
      taking.append([await stranger.write(note('job-a', 'x'))], 'device'),
    ])
    expect(commits).toBeLessThan(20)
    // The second fact of a device may be looked at before its first: then it is a gap, and nothing of it is kept.
    const codes = outcomes.map((outcome) => (outcome.ok ? 'taken' : outcome.refusal.code))
    expect(new Set(codes)).toEqual(
      new Set([...codes.filter((code) => code === 'gap'), 'taken', 'unknown-device']),
    )
    const taken = codes.filter((code) => code === 'taken').length
    expect(taken).toBeGreaterThanOrEqual(devices.length)
    const rows = await engine.db.selectFrom('facts').selectAll().execute()
    expect(rows).toHaveLength(taken)
    const again = await taking.append(
      devices.flatMap(({ written }) => written),
      'device',
    )
    expect(again).toEqual({ ok: true, value: { accepted: 80 - taken, already: taken } })
  })

  test('STO-28 the same facts in several calls are accepted once', async () => {
    const [device] = devices
    const facts = (await device?.writeNotes('job-a', 5)) ?? []
    const outcomes = await Promise.all(Array.from({ length: 10 }, () => taking.append(facts, 'device')))
    const accepted = outcomes.map((outcome) => (outcome.ok ? outcome.value.accepted : -1))
    expect(accepted.sort()).toEqual([0, 0, 0, 0, 0, 0, 0, 0, 0, 5])
  })

  test('STO-28 when the commit fails none is acknowledged, and all can come again', async () => {
    const facts = await Promise.all(devices.map((device) => device.write(note('job-a', 'x'))))
    const failing = takingOn({ ...engine, transact: () => Promise.reject(new Error('the disk is gone')) })
    const lost = await Promise.allSettled(facts.map((fact) => failing.append([fact], 'device')))
    expect(new Set(lost.map(({ status }) => status))).toEqual(new Set(['rejected']))
    const kept = await Promise.all(facts.map((fact) => taking.append([fact], 'device')))
    expect(kept.every((outcome) => outcome.ok && outcome.value.accepted === 1)).toBe(true)
  })
})
