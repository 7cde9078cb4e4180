/**
 * @module A whole key visit at a practice car, played by chance: what passed on the bus, what the technician noted, and
 * who is really behind every new fault. The last is what no real visit ever tells.
 */

import { buildCar } from '../build/index.ts'
import { TEACH_CLOSE, TEACH_OPEN, TEACH_SHOW, type UnitFor } from '../control-unit/index.ts'
import { Chance } from '../random/index.ts'
import { PracticeCar } from '../vehicle/index.ts'

export type VisitPhase = 'before' | 'after' | 'cleared' | 'cycled'

/** When a scan was made, in seconds of the recording. */
export interface ScanMark {
  readonly phase: VisitPhase
  readonly fromSeconds: number
  readonly toSeconds: number
}

/** What a technician would have put on record beside the recording. */
export interface VisitNote {
  readonly kind: 'supply-low' | 'battery-disconnected' | 'teaching' | 'key-refused'
  readonly seconds: number
  readonly text: string
}

/** What is true of one fault that some scan showed. */
export interface VisitTruth {
  readonly unit: UnitFor
  readonly code: string
  readonly there: 'before' | 'raised-by-work' | 'raised-by-car'
  readonly what: string
}

/** A visit that has been played. */
export interface Visit {
  readonly car: PracticeCar
  readonly marks: readonly ScanMark[]
  readonly notes: readonly VisitNote[]
  readonly truth: readonly VisitTruth[]
  /** Units that were not asked in the first scan. */
  readonly skipped: readonly UnitFor[]
}

/** Volts at which a technician notes a low supply. */
const LOW_VOLTS = 11.2

/** Plays the visit of a seed; the same seed plays the same visit. */
export function playVisit(seed: number): Visit {
  return new Player(seed).play()
}

class Player {
  readonly #chance: Chance
  readonly #car: PracticeCar
  readonly #startSeconds: number
  readonly #marks: ScanMark[] = []
  readonly #notes: VisitNote[] = []
  readonly #skipped: UnitFor[] = []
  #workFrom = 0

  constructor(seed: number) {
    const choices = buildCar(seed)
    this.#car = new PracticeCar(choices)
    this.#startSeconds = choices.startSeconds
    this.#chance = new Chance(seed ^ 0x5ca1ab1e)
  }

  play(): Visit {
    const { before, car } = { before: this.#arrive(), car: this.#car }
    this.#work()
    this.#scan('after', false)
    if (this.#chance.percent(75)) this.#clearAndCycle()
    return { car, marks: this.#marks, notes: this.#notes, truth: this.#truth(before), skipped: this.#skipped }
  }

  /** Faults of earlier days, the arrival, and the first scan. Returns what was stored when the work began. */
  #arrive(): ReadonlySet<string> {
    const car = this.#car
    const chance = this.#chance
    for (const unit of car.units.values()) {
      // The car has been driven: its tests have run, but where somebody cleared the memory only this morning.
      if (!chance.percent(8)) for (const { code } of unit.memory.all()) unit.memory.passed(code)
      for (const part of unit.choices.parts) {
        if (!chance.percent(12)) continue
        if (chance.percent(50)) unit.memory.leaveFrom(part.code, { volts: 12.4, seconds: 0 })
        else if (chance.percent(60)) unit.breakPart(part.code, () => true)
        else unit.breakPart(part.code, intermittent(chance))
      }
      if (chance.percent(4)) this.#oldSilence(unit.name)
    }
    car.turnIgnition(true)
    car.advance(chance.between(4, 12))
    this.#scan('before', true)
    const before = new Set<string>()
    for (const unit of car.units.values()) {
      for (const fault of unit.memory.byMask(0xaf)) before.add(`${unit.name} ${fault.code}`)
    }
    car.workBegins()
    this.#workFrom = car.raised.length
    return before
  }

  /** A complaint about another unit that some earlier day left. */
  #oldSilence(name: UnitFor): void {
    const unit = this.#car.units.get(name)
    const lost = unit?.memory.all().filter((fault) => fault.code.startsWith('U01'))
    if (unit !== undefined && lost !== undefined && lost.length > 0)
      unit.memory.leaveFrom(this.#chance.oneOf(lost).code, { volts: 11.9, seconds: 0 })
  }

  #work(): void {
    const car = this.#car
    const chance = this.#chance
    if (chance.percent(65)) car.supply(chance.oneOf([10, 30, 60]))
    if (chance.percent(30)) this.#carBreaks()
    const happenings = chance.shuffled([
      (): void => this.#teach(),
      (): void => this.#teach(),
      (): void => this.#restartUnit(),
      (): void => this.#restartUnit(),
      (): void => this.#muteUnits(),
      (): void => this.#switchFaultsOff(),
      (): void => this.#refuseKey(),
      (): void => this.#wait(),
      (): void => this.#batteryOff(),
      (): void => car.advance(chance.between(5, 60)),
    ])
    for (const happening of happenings.slice(0, chance.whole(2, 6))) {
      happening()
      car.advance(chance.between(2, 15))
      this.#noteSupply()
      this.#readVolts()
    }
    car.load(0)
    car.advance(5)
  }

  #note(kind: VisitNote['kind'], text: string): void {
    this.#notes.push({ kind, seconds: this.#startSeconds + this.#car.seconds, text })
  }

  #noteSupply(): void {
    if (this.#car.battery.connected && this.#car.battery.volts < LOW_VOLTS)
      this.#note('supply-low', `${this.#car.battery.volts.toFixed(2)} V`)
  }

  #readVolts(): void {
    this.#car.ask('engine', Uint8Array.of(0x01, 0x42))
  }

  #teach(): void {
    const car = this.#car
    this.#note('teaching', 'teaching session')
    car.ask('immobiliser', Uint8Array.of(0x10, 0x03))
    car.ask('immobiliser', Uint8Array.of(0x31, 0x01, TEACH_OPEN >> 8, TEACH_OPEN & 255))
    for (const key of car.keys.filter((each) => each.onBench)) {
      car.insert(key.label)
      car.advance(this.#chance.between(1, 4))
      car.ask('immobiliser', Uint8Array.of(0x31, 0x01, TEACH_SHOW >> 8, TEACH_SHOW & 255))
    }
    if (this.#chance.percent(85))
      car.ask('immobiliser', Uint8Array.of(0x31, 0x01, TEACH_CLOSE >> 8, TEACH_CLOSE & 255))
    // Some units restart to take over what they learnt.
    if (this.#chance.percent(40)) car.ask('immobiliser', Uint8Array.of(0x11, 0x01))
    car.advance(6)
  }

  #restartUnit(): void {
    const unit = this.#chance.oneOf([...this.#car.units.keys()])
    this.#car.ask(unit, Uint8Array.of(0x11, this.#chance.oneOf([1, 3])))
    this.#car.advance(6)
  }

  #muteUnits(): void {
    const car = this.#car
    const units = this.#chance.shuffled([...car.units.keys()]).slice(0, this.#chance.whole(1, 3))
    for (const unit of units) {
      car.ask(unit, Uint8Array.of(0x10, 0x03))
      car.ask(unit, Uint8Array.of(0x28, 0x01, 0x01))
    }
    const seconds = this.#chance.between(0.3, 12)
    for (let passed = 0; passed < seconds; passed += 2) {
      for (const unit of units) car.ask(unit, Uint8Array.of(0x3e, 0x00))
      car.advance(Math.min(2, seconds - passed))
    }
    for (const unit of units) car.ask(unit, Uint8Array.of(0x28, 0x00, 0x01))
    car.advance(6)
  }

  #switchFaultsOff(): void {
    const car = this.#car
    const unit = this.#chance.oneOf([...car.units.keys()])
    car.ask(unit, Uint8Array.of(0x10, 0x03))
    car.ask(unit, Uint8Array.of(0x85, 0x02))
    this.#restartUnit()
    car.ask(unit, Uint8Array.of(0x85, 0x01))
  }

  #refuseKey(): void {
    const refused = this.#car.keys.find((key) => key.onBench && !this.#car.keyList.starts(key))
    if (refused === undefined) return
    this.#note('key-refused', `key ${refused.label}`)
    this.#car.tryStart(refused.label)
  }

  #wait(): void {
    this.#car.load(this.#chance.between(0, 35))
    const minutes = this.#chance.whole(2, 12)
    for (let passed = 0; passed < minutes; passed++) {
      this.#car.advance(60)
      this.#readVolts()
      this.#noteSupply()
    }
    this.#car.load(0)
  }

  #batteryOff(): void {
    if (!this.#chance.percent(40)) return
    this.#note('battery-disconnected', 'battery taken off')
    this.#car.supply(0)
    this.#car.disconnectBattery(this.#chance.between(5, 40))
    this.#car.advance(10)
  }

  /** Something of the car's own gives way while the technician is there. */
  #carBreaks(): void {
    const chance = this.#chance
    const unit = chance.oneOf([...this.#car.units.values()])
    const from = this.#car.seconds + chance.between(1, 60)
    const part = unit.choices.parts[0]
    if (part !== undefined && chance.percent(60)) {
      const lasting = chance.percent(60)
      unit.breakPart(part.code, (seconds) => seconds >= from && (lasting || seconds < from + 8))
    } else {
      unit.wireOpenUntil = this.#car.seconds + chance.between(3, 20)
    }
  }

  #clearAndCycle(): void {
    const car = this.#car
    const kept = new Set(this.#airbagFaults())
    for (const unit of car.units.keys())
      if (!kept.has(unit)) car.ask(unit, Uint8Array.of(0x14, 0xff, 0xff, 0xff))
    this.#scan('cleared', false)
    car.turnIgnition(false)
    car.advance(20)
    car.turnIgnition(true)
    car.drive(this.#chance.between(20, 90))
    this.#scan('cycled', false)
  }

  /** Airbag units with something stored: never cleared. */
  #airbagFaults(): readonly UnitFor[] {
    const unit = this.#car.units.get('restraints')
    return unit !== undefined && unit.memory.byMask(0x2f).length > 0 ? ['restraints'] : []
  }

  #scan(phase: VisitPhase, maySkip: boolean): void {
    const car = this.#car
    const fromSeconds = this.#startSeconds + car.seconds
    this.#readVolts()
    for (const unit of car.units.keys()) {
      if (maySkip && this.#chance.percent(3)) {
        this.#skipped.push(unit)
        continue
      }
      car.ask(unit, Uint8Array.of(0x19, 0x02, 0xff))
    }
    this.#marks.push({ phase, fromSeconds, toSeconds: this.#startSeconds + car.seconds })
  }

  #truth(before: ReadonlySet<string>): VisitTruth[] {
    const truth = new Map<string, VisitTruth>()
    for (const key of before) {
      const at = key.lastIndexOf(' ')
      const unit = key.slice(0, at) as UnitFor
      truth.set(key, { unit, code: key.slice(at + 1), there: 'before', what: '' })
    }
    for (const { unit, code, cause, what } of this.#car.raised.slice(this.#workFrom)) {
      const key = `${unit} ${code}`
      const known = truth.get(key)
      // Whoever else had a hand in it: a fault the car raised too is not ours alone.
      if (known !== undefined && (known.there !== 'raised-by-work' || cause === 'work')) continue
      truth.set(key, { unit, code, there: cause === 'work' ? 'raised-by-work' : 'raised-by-car', what })
    }
    return [...truth.values()]
  }
}

function intermittent(chance: Chance): (seconds: number) => boolean {
  const period = chance.between(20, 300)
  const length = chance.between(2, 15)
  const phase = chance.between(0, period)
  return (seconds) => (seconds + phase) % period < length
}
