/** @module The practice car: units on one bus, a battery, an immobiliser, and time that passes in steps. */

import { Battery, type BatteryChoices } from '../battery/index.ts'
import {
  answer,
  type CarSide,
  type Cause,
  ControlUnit,
  type Raised,
  TEACH_OPEN,
  TEACH_SHOW,
  type UnitChoices,
  type UnitFor,
} from '../control-unit/index.ts'
import { KeyList, type PracticeKey, type PracticeRule, type ShowResult } from '../key-list/index.ts'
import { Trace } from '../trace/index.ts'

/** What makes a practice car. */
export interface CarChoices {
  readonly vin: string
  readonly units: readonly UnitChoices[]
  readonly battery: BatteryChoices
  readonly rule: PracticeRule
  /** Identities stored, oldest first. */
  readonly stored: readonly string[]
  readonly keys: readonly PracticeKey[]
  /** Instant of the car's zero, in seconds since 1970. */
  readonly startSeconds: number
  /** Frames the units send by themselves go into the trace as well. */
  readonly ownFrames: boolean
}

/** One answer to a request. */
export interface Answer {
  readonly unit: UnitFor
  readonly bytes: Uint8Array
}

const STEP_SECONDS = 0.1
const REQUEST_TO_ALL = 0x7df
/** Asleep, ignition on with all units awake, and cranking; common practice, no source. */
const ASLEEP_AMPERES = 0.03
const IGNITION_AMPERES = 14
const CRANK_AMPERES = 160
const BUTTON_CELL_VOLTS = 2.4

const LIST_FULL = 2
const NOT_TAKEN = 1

/** What came of turning a key to start. */
export type StartResult = 'started' | 'key-not-accepted' | 'battery-too-weak' | 'not-on-the-bench'

/** A simulated vehicle. Deterministic: the same choices and the same calls give the same frames. */
export class PracticeCar {
  readonly trace: Trace
  readonly units: ReadonlyMap<UnitFor, ControlUnit>
  readonly keyList: KeyList
  readonly battery: Battery
  /** Every fault that was stored anew, with who is behind it. */
  readonly raised: Raised[] = []
  /** Lowest supply since the car was made, in volts. */
  lowestVolts: number = Number.POSITIVE_INFINITY
  readonly #choices: CarChoices
  readonly #keys: Map<string, PracticeKey>
  readonly #nextOwn = new Map<UnitFor, number>()
  #seconds = 0
  #ignition = false
  #extraAmperes = 0
  #inserted: PracticeKey | null = null
  #supplyCause: Cause = 'car'
  #supplyWhat = 'supply-low'

  constructor(choices: CarChoices) {
    this.#choices = choices
    this.trace = new Trace(choices.startSeconds)
    this.keyList = new KeyList(choices.rule, choices.stored)
    this.battery = new Battery(choices.battery)
    this.#keys = new Map(choices.keys.map((key) => [key.label, key]))
    this.units = new Map(
      choices.units.map((unit) => [unit.name, new ControlUnit(unit, (raised) => this.raised.push(raised))]),
    )
  }

  get seconds(): number {
    return this.#seconds
  }

  get ignition(): boolean {
    return this.#ignition
  }

  get keys(): readonly PracticeKey[] {
    return [...this.#keys.values()]
  }

  /** From here on what the supply does is the visit's doing, not the car's. */
  workBegins(): void {
    this.#supplyCause = 'work'
  }

  /** Turns the ignition; on begins an operation cycle. Off ends an open teaching session. */
  turnIgnition(on: boolean): void {
    if (on === this.#ignition) return
    this.#ignition = on
    if (!on) {
      this.keyList.breakOff()
      return
    }
    for (const unit of this.units.values()) unit.newCycle(this.#seconds)
    this.advance(STEP_SECONDS)
  }

  /** Connects a supply of so many amperes, or takes it off with 0. */
  supply(amperes: number): void {
    this.battery.supply(amperes)
    this.advance(STEP_SECONDS)
  }

  /** Lamps, fans, a door left open: amperes beside the usual. */
  load(amperes: number): void {
    this.#extraAmperes = amperes
  }

  /** Takes the battery off: every unit restarts when it is back, and an open teaching session breaks off. */
  disconnectBattery(seconds: number): void {
    this.keyList.breakOff()
    this.battery.connect(false)
    this.#supplyWhat = 'battery-off'
    this.advance(seconds)
    this.battery.connect(true)
    this.advance(STEP_SECONDS)
    for (const unit of this.units.values())
      unit.lostPower({ seconds: this.#seconds, volts: this.battery.volts }, this.#supplyCause)
    this.#supplyWhat = 'supply-low'
  }

  /** Lets time pass. */
  advance(seconds: number): void {
    const end = this.#seconds + seconds
    while (this.#seconds < end - 1e-9) {
      const step = Math.min(STEP_SECONDS, end - this.#seconds)
      this.#seconds += step
      this.#step(step)
    }
  }

  /** Asks one unit, or all with `all`, and returns what they answered; both pass on the bus. */
  ask(unit: UnitFor | 'all', request: Uint8Array): readonly Answer[] {
    const functional = unit === 'all'
    const asked = functional ? [...this.units.values()] : [this.#unit(unit)]
    const requestId = functional ? REQUEST_TO_ALL : this.#unit(unit).choices.requestId
    const first = asked[0]
    const hears = first?.answers(this.#seconds) === true
    // Without a unit that hears there is no flow control: only the first frame of a longer request passes.
    const sent = hears
      ? this.trace.message(this.#seconds, requestId, first.choices.answerId, request)
      : this.trace.send(this.#seconds, requestId, request.length < 8 ? padded(request) : firstFrame(request))
    let at = sent
    const answers: Answer[] = []
    if (this.#ignition) {
      for (const each of asked) {
        if (!each.answers(this.#seconds)) continue
        const bytes = answer(each, request, functional, this.#sideFor())
        if (bytes === null) continue
        const { requestId: back, answerId, slow } = each.choices
        if (slow && (request[0] === 0x19 || request[0] === 0x14)) {
          at = this.trace.message(at + 0.04, answerId, back, Uint8Array.of(0x7f, request[0], 0x78))
        }
        at = this.trace.message(at + 0.004, answerId, back, bytes)
        answers.push({ unit: each.name, bytes })
      }
    }
    // A tester waits P2 for a unit that does not answer.
    this.advance(Math.max(0.06, at - this.#seconds + 0.01))
    return answers
  }

  /** Holds a key to the reader, so that the teaching routine can take it. */
  insert(label: string): void {
    this.#inserted = this.#keys.get(label) ?? null
  }

  /** Shows a key to the open session without the bus; what a person does with a key in the lock. */
  showKey(label: string): ShowResult {
    const key = this.#keys.get(label)
    if (key === undefined) return 'not-accepted'
    const result = this.keyList.show(key)
    // What has once been taken is this car's and no other's (ENR-13).
    if (result === 'taken') this.#keys.set(label, { ...key, state: 'known' })
    return result
  }

  /** Brings a key from home, or leaves it there. */
  place(label: string, onBench: boolean): void {
    const key = this.#keys.get(label)
    if (key !== undefined) this.#keys.set(label, { ...key, onBench })
  }

  /** Puts a new cell into a remote. */
  newCell(label: string): void {
    const key = this.#keys.get(label)
    if (key !== undefined) this.#keys.set(label, { ...key, cellVolts: 3 })
  }

  /** Tries to start with a key. A refused one leaves a fault code, a started car charges its battery. */
  tryStart(label: string): StartResult {
    const key = this.#keys.get(label)
    if (key === undefined || !key.onBench) return 'not-on-the-bench'
    this.turnIgnition(true)
    this.advance(1)
    const known = this.keyList.starts(key)
    const around = { seconds: this.#seconds, volts: this.battery.volts }
    for (const unit of this.units.values()) unit.judgeKey(known, around)
    if (!known) return 'key-not-accepted'
    this.battery.step(0.6, CRANK_AMPERES)
    this.lowestVolts = Math.min(this.lowestVolts, this.battery.volts)
    const enough = this.battery.volts > 8.5
    this.advance(1)
    return enough ? 'started' : 'battery-too-weak'
  }

  /** Presses a button: dead with a flat cell or with a key the car does not know. */
  pressButton(label: string): boolean {
    const key = this.#keys.get(label)
    if (key === undefined || !key.onBench || key.cellVolts < BUTTON_CELL_VOLTS) return false
    return this.keyList.accepted.includes(key.identity)
  }

  /** Drives round the block: the wheel is turned, the units are tested. */
  drive(seconds: number): void {
    for (const unit of this.units.values()) unit.steeringTurned()
    this.battery.supply(60)
    this.advance(seconds)
    this.battery.supply(0)
  }

  #step(seconds: number): void {
    const load = (this.#ignition ? IGNITION_AMPERES : ASLEEP_AMPERES) + this.#extraAmperes
    this.battery.step(seconds, load)
    const volts = this.battery.volts
    if (this.battery.connected) this.lowestVolts = Math.min(this.lowestVolts, volts)
    if (!this.#ignition) {
      for (const unit of this.units.values()) unit.lastSpoke = this.#seconds
      return
    }
    const around = {
      seconds: this.#seconds,
      volts,
      supplyCause: this.#supplyCause,
      supplyWhat: this.#supplyWhat,
      unit: (name: UnitFor): ControlUnit | undefined => this.units.get(name),
    }
    for (const unit of this.units.values()) if (unit.speaks(this.#seconds)) this.#speak(unit)
    for (const unit of this.units.values()) unit.step(around)
  }

  #speak(unit: ControlUnit): void {
    const { ownId, periodSeconds, name } = unit.choices
    unit.lastSpoke = this.#seconds
    if (!this.#choices.ownFrames) return
    const due = this.#nextOwn.get(name) ?? 0
    if (this.#seconds < due) return
    this.#nextOwn.set(name, this.#seconds + periodSeconds)
    const count = Math.floor(this.#seconds / periodSeconds) & 15
    this.trace.send(this.#seconds, ownId, Uint8Array.of(0x10 | count, 0, ownId & 255, 0, 0, 0, 0, count))
  }

  #sideFor(): CarSide {
    return {
      seconds: this.#seconds,
      volts: this.battery.volts,
      vin: this.#choices.vin,
      keysStored: this.keyList.accepted.length,
      keysTaught: this.keyList.taught?.length ?? 0,
      teach: (routine) => this.#teach(routine),
    }
  }

  #teach(routine: number): { readonly outcome: number } | { readonly refused: number } {
    const CONDITIONS_NOT_CORRECT = 0x22
    if (routine === TEACH_OPEN) {
      return this.keyList.open(this.keys, true) ? { outcome: 0 } : { refused: CONDITIONS_NOT_CORRECT }
    }
    if (this.keyList.taught === null) return { refused: CONDITIONS_NOT_CORRECT }
    if (routine === TEACH_SHOW) {
      const shown = this.#inserted === null ? 'not-accepted' : this.showKey(this.#inserted.label)
      if (shown === 'taken') return { outcome: 0 }
      return { outcome: shown === 'list-full' ? LIST_FULL : NOT_TAKEN }
    }
    return { outcome: this.keyList.close() ? 0 : NOT_TAKEN }
  }

  #unit(name: UnitFor): ControlUnit {
    const unit = this.units.get(name)
    if (unit === undefined) throw new RangeError(`this car has no ${name} unit`)
    return unit
  }
}

function padded(request: Uint8Array): Uint8Array {
  const data = new Uint8Array(8).fill(0x55)
  data[0] = request.length
  data.set(request, 1)
  return data
}

function firstFrame(request: Uint8Array): Uint8Array {
  return Uint8Array.of(0x10 | (request.length >> 8), request.length & 255, ...request.subarray(0, 6))
}
