/**
 * @module The practice car against what does not know it: tshark and scapy read its bus, and the engine that computes
 * teaching sessions foresees what its immobiliser does.
 *
 * Sources of the expectations: Debian's tshark and scapy, run here; for the key list the two independent writings of
 * the rules ENR-01 to ENR-09 (`packages/practice-car/src/key-list`, `packages/keywork/src/enrolment`).
 */

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { candumpLine, PcapngWriter } from '@shearline/bus'
import { parsePlan, type Rehearsal, rehearse } from '@shearline/keywork'
import {
  buildCar,
  Chance,
  PracticeCar,
  type PracticeKey,
  type PracticeRule,
  playVisit,
} from '@shearline/practice-car'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { pythonPresent, readWithPython, tsharkFrames, tsharkMessages, tsharkPresent } from './programs.ts'
import { framesOf, messagesOf } from './reading.ts'

const folder = mkdtempSync(join(tmpdir(), 'shearline-practice-'))
const at = (name: string): string => join(folder, name)
const visit = playVisit(7)
const ids = [...visit.car.units.values()].map((unit) => unit.choices)

beforeAll(() => {
  const { frames } = visit.car.trace
  const writer = new PcapngWriter()
  writeFileSync(at('visit.log'), frames.map(candumpLine).join(''))
  writeFileSync(
    at('visit.pcapng'),
    Buffer.concat([writer.header(), ...frames.map((each) => writer.frame(each))]),
  )
})
afterAll(() => rmSync(folder, { recursive: true }))

describe('the bus of a practice car', () => {
  it.skipIf(!tsharkPresent)('is read by tshark frame by frame and message by message as we read it', () => {
    expect(tsharkFrames(at('visit.pcapng'))).toEqual(framesOf(at('visit.pcapng')))
    const ours = messagesOf(at('visit.pcapng'))
    expect(ours.incomplete).toBe(0)
    expect(ours.lines.length).toBeGreaterThan(80)
    // One unit speaks at a time on this bus, so tshark loses nothing in a single run.
    const all = [0x7df, ...ids.flatMap((unit) => [unit.requestId, unit.answerId])]
    expect(tsharkMessages(at('visit.pcapng'), [all]).sort()).toEqual(ours.lines.sort())
  })

  it.skipIf(!pythonPresent)('is read by scapy as we read it', () => {
    const all = [0x7df, ...ids.flatMap((unit) => [unit.requestId, unit.answerId])]
    const [answer] = readWithPython([{ file: at('visit.log'), by: 'scapy log', ids: all }])
    expect(answer?.error).toBeNull()
    expect([...(answer?.messages ?? [])].sort()).toEqual(messagesOf(at('visit.log')).lines.sort())
  })
})

const STATES = ['known', 'blank', 'prepared', 'locked-elsewhere'] as const

function randomRule(chance: Chance): PracticeRule {
  return {
    kind: chance.oneOf(['replace-all', 'append', 'append-drop-oldest']),
    capacity: chance.whole(1, 5),
    leastKeys: chance.whole(1, 3),
    mostKeys: chance.whole(3, 6),
    opensWith: chance.oneOf(['equipment', 'accepted-key', 'two-accepted-keys']),
    erases: chance.oneOf(['at-open', 'at-close', 'never']),
    commits: chance.oneOf(['each-key', 'at-close']),
    sameKeyTwice: chance.oneOf(['refused', 'ignored', 'counts']),
    onBreak: chance.oneOf(['revert', 'keep-so-far']),
    accepts: STATES.filter(() => chance.percent(75)),
  }
}

function randomKeys(chance: Chance): PracticeKey[] {
  return ['A', 'B', 'C', 'N', 'M'].slice(0, chance.whole(1, 5)).map((label) => ({
    label,
    identity: label === 'C' ? 'A' : label,
    state: chance.oneOf(STATES),
    onBench: chance.percent(80),
    cellVolts: 3,
  }))
}

describe('the immobiliser of a practice car', () => {
  it('does after every key, at every break and at the close what the rehearsal foresaw, for 3,000 random plans', () => {
    let opened = 0
    for (let seed = 0; seed < 3000; seed++) {
      const chance = new Chance(seed)
      const rule = randomRule(chance)
      const keys = randomKeys(chance)
      const stored = ['A', 'B', 'X', 'Y'].slice(0, chance.whole(0, Math.min(4, rule.capacity)))
      const equipment = chance.percent(85)
      const teach = chance.shuffled(keys.filter((key) => key.onBench).map((key) => key.label))
      const parsed = parsePlan({
        rule,
        stored,
        keys: keys.map(({ label, identity, state, onBench }) => ({ id: label, identity, state, onBench })),
        means: { equipment, backup: false },
        teach,
      })
      if (!('plan' in parsed)) throw new Error(`seed ${seed}: ${parsed.path} ${parsed.what}`)
      const foreseen: Rehearsal = rehearse(parsed.plan, { order: 'given' })
      const car = (): PracticeCar => new PracticeCar(buildCar(1, { rule, stored, keys }))
      const seen = (made: PracticeCar): object => ({
        accepted: made.keyList.accepted,
        starts: made.keys.filter((key) => made.keyList.starts(key)).map((key) => key.label),
      })
      const first = car()
      const opens = first.keyList.open(first.keys, equipment)
      expect([seed, opens]).toEqual([seed, foreseen.opened])
      if (!opens) continue
      opened++
      for (const [index, point] of foreseen.breaks.entries()) {
        const made = car()
        made.keyList.open(made.keys, equipment)
        for (const label of foreseen.order.slice(0, index)) made.showKey(label)
        made.keyList.breakOff()
        expect([seed, point.after, seen(made)]).toEqual([
          seed,
          point.after,
          { accepted: point.accepted, starts: point.starts },
        ])
      }
      for (const label of foreseen.order) first.showKey(label)
      first.keyList.close()
      expect([seed, seen(first)]).toEqual([
        seed,
        { accepted: foreseen.end.accepted, starts: foreseen.end.starts },
      ])
    }
    expect(opened).toBeGreaterThan(1000)
  })
})
