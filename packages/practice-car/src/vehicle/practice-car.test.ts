import { candumpLine, Decoder, type Message } from '@shearline/bus'
import { describe, expect, it } from 'vitest'
import { buildCar } from '../build/index.ts'
import { LOST_CODES, type UnitFor } from '../control-unit/index.ts'
import type { PracticeCar as Car } from './practice-car.ts'
import { PracticeCar } from './practice-car.ts'

const bytes = (hex: string): Uint8Array =>
  Uint8Array.from(hex.split(' '), (each) => Number.parseInt(each, 16))

function running(seed: number, more: Parameters<typeof buildCar>[1] = {}): Car {
  const car = new PracticeCar(buildCar(seed, more))
  car.turnIgnition(true)
  car.advance(6)
  return car
}

const hexOf = (car: Car, unit: UnitFor, request: string): string =>
  [...(car.ask(unit, bytes(request))[0]?.bytes ?? [])]
    .map((byte) => byte.toString(16).padStart(2, '0'))
    .join(' ')

const STRONG = { ampereHours: 70, stateOfCharge: 1, resistanceOhms: 0.004, celsius: 20 }
const WEAK = { ampereHours: 44, stateOfCharge: 0.05, resistanceOhms: 0.03, celsius: -15 }

describe('a practice car', () => {
  it('does the same frame for frame with the same seed, and something else with another', () => {
    const play = (seed: number): string => {
      const car = running(seed, { ownFrames: true })
      car.ask('engine', bytes('19 02 ff'))
      return car.trace.frames.map(candumpLine).join('')
    }
    expect(play(5)).toBe(play(5))
    expect(play(5)).not.toBe(play(6))
  })

  it('has between 12 and 20 units with identifiers of their own', () => {
    for (let seed = 0; seed < 60; seed++) {
      const { units } = buildCar(seed)
      expect(units.length).toBeGreaterThanOrEqual(12)
      expect(units.length).toBeLessThanOrEqual(20)
      const ids = units.flatMap((unit) => [unit.requestId, unit.answerId, unit.ownId])
      expect(new Set(ids).size).toBe(ids.length)
    }
  })

  it('sends what the bus package reads whole: every answer, none incomplete', () => {
    const car = running(3)
    let answers = 0
    for (const unit of car.units.keys()) {
      answers += car.ask(unit, bytes('22 f1 90')).length
      answers += car.ask(unit, bytes('19 02 ff')).length
    }
    const messages: Message[] = []
    const decoder = new Decoder({ message: (message) => messages.push(message) }, {})
    for (const frame of car.trace.frames) decoder.frame(frame)
    decoder.end()
    expect(messages.filter((message) => !message.complete)).toEqual([])
    expect(messages.filter((message) => message.kind === 'response')).toHaveLength(answers)
    expect(answers).toBe(car.units.size * 2)
  })

  it('answers a refusal as ISO 14229-1 asks, and none to a request to all', () => {
    const car = running(3)
    expect(hexOf(car, 'body', '28 01 01')).toBe('7f 28 7f')
    expect(hexOf(car, 'body', '27 01')).toBe('7f 27 11')
    expect(hexOf(car, 'body', '19 77 00')).toBe('7f 19 12')
    expect(hexOf(car, 'body', '14 ff ff')).toBe('7f 14 13')
    expect(car.ask('all', bytes('27 01'))).toEqual([])
    expect(hexOf(car, 'body', '3e 80')).toBe('')
  })

  it('lets every listener complain of a unit that was restarted for longer than it waits, and of no other', () => {
    const car = running(9, { battery: STRONG })
    const body = car.units.get('body')
    car.ask('body', bytes('11 01'))
    car.advance(10)
    const code = LOST_CODES.body
    for (const unit of car.units.values()) {
      const complains = unit.memory.byMask(0x08).some((fault) => fault.code === code)
      const waits = unit.choices.lostAfterSeconds
      const should = unit.choices.listensTo.includes('body') && (body?.choices.bootSeconds ?? 0) > waits + 0.3
      const close = Math.abs((body?.choices.bootSeconds ?? 0) - waits) <= 0.4
      if (!close && unit.name !== 'body') expect([unit.name, complains]).toEqual([unit.name, should])
    }
    expect(car.raised.every((each) => each.cause === 'work' && each.what === 'reset')).toBe(true)
  })

  it('stores nothing while faults are switched off (85 02), and forgets the switch at the end of the session', () => {
    const car = running(9, { battery: STRONG })
    const names = [...car.units.keys()]
    for (const name of names) {
      car.ask(name, bytes('10 03'))
      car.ask(name, bytes('85 02'))
    }
    for (const name of names) car.ask(name, bytes('3e 00'))
    car.ask('body', bytes('11 01'))
    for (let seconds = 0; seconds < 5; seconds++) {
      for (const name of names) car.ask(name, bytes('3e 00'))
      car.advance(0.2)
    }
    expect(car.raised.filter((each) => each.unit !== 'body')).toEqual([])
    car.advance(6)
    expect([...car.units.values()].every((unit) => !unit.faultsOff && unit.session === 1)).toBe(true)
  })

  it('sags without a supply on a weak cold battery and raises supply codes; with a supply it does not', () => {
    const alone = running(4, { battery: WEAK })
    alone.load(30)
    alone.advance(120)
    expect(alone.battery.volts).toBeLessThan(11)
    expect(alone.raised.some((each) => each.code === 'P0562-00')).toBe(true)
    const held = new PracticeCar(buildCar(4, { battery: WEAK }))
    held.supply(60)
    held.turnIgnition(true)
    held.load(30)
    held.advance(120)
    expect(held.battery.volts).toBeGreaterThan(13)
    expect(held.raised).toEqual([])
  })

  it('refuses a key it does not know, with a code in engine and immobiliser, and starts with one it knows', () => {
    const car = running(11, { battery: STRONG })
    expect(car.tryStart('N')).toBe('key-not-accepted')
    expect(car.raised.map((each) => [each.unit, each.code]).sort()).toEqual([
      ['engine', 'P0513-00'],
      ['immobiliser', 'P0513-00'],
    ])
    expect(car.tryStart('A')).toBe('started')
    expect(car.tryStart('nobody')).toBe('not-on-the-bench')
  })

  it('breaks an open session off when the battery goes, as its rule says', () => {
    const car = running(2, {
      battery: STRONG,
      rule: {
        ...buildCar(2).rule,
        kind: 'replace-all',
        commits: 'at-close',
        onBreak: 'revert',
        erases: 'at-close',
        opensWith: 'equipment',
      },
    })
    expect(car.keyList.open(car.keys, true)).toBe(true)
    car.showKey('A')
    car.disconnectBattery(2)
    expect(car.keyList.taught).toBeNull()
    expect(car.keyList.accepted).toEqual(['A', 'B', 'X'])
  })
})
