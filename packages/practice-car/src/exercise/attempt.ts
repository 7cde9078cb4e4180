/** @module One attempt at an exercise: actions one by one, what came of each, and a score with reasons. */

import type { UnitFor } from '../control-unit/index.ts'
import { PracticeCar } from '../vehicle/index.ts'
import type { Exercise } from './exercises.ts'

/** What a person can do. `key` is a label. */
export type Action =
  | { readonly do: 'supply'; readonly amperes: number }
  | { readonly do: 'scan' | 'open' | 'close' | 'restore' | 'cycle' | 'clear' | 'code' | 'stop' }
  | { readonly do: 'show' | 'start' | 'button' | 'fetch' | 'cell'; readonly key: string }
  | { readonly do: 'wait'; readonly minutes: number }

/** What came of an action: a code for the catalogues, and values for its words. */
export interface Outcome {
  readonly code: string
  readonly values: Readonly<Record<string, string | number>>
  /** What went wrong right after it. */
  readonly incident?: Outcome
}

/** Why points were given or lost. `points` is negative for a loss. */
export interface Mark {
  readonly code: string
  readonly points: number
  readonly values: Readonly<Record<string, string | number>>
}

/** The end of an attempt. */
export interface Score {
  /** 0 to 100. */
  readonly points: number
  readonly marks: readonly Mark[]
  readonly minutes: number
  readonly lowestVolts: number
  readonly startsAtEnd: readonly string[]
}

/** Actions take this long by hand, in seconds. Common practice, no source. */
const HAND_SECONDS: Readonly<Partial<Record<Action['do'], number>>> = {
  supply: 60,
  scan: 20,
  open: 15,
  show: 10,
  close: 5,
  restore: 600,
  start: 5,
  button: 3,
  fetch: 1800,
  cell: 60,
  cycle: 20,
  code: 15,
}

/** An attempt that runs. */
export class Attempt {
  readonly exercise: Exercise
  readonly car: PracticeCar
  readonly #saved: readonly string[]
  readonly #done: Action['do'][] = []
  readonly #provenStart = new Set<string>()
  readonly #provenButton = new Set<string>()
  #incidentPending: boolean
  #scannedBefore = false
  #supplyBefore = false
  #codeAccepted = false
  #codesEntered = 0
  #wrongTries = 0
  /** Seconds on the car's clock before which no code is taken. */
  #noCodeBefore = 0

  constructor(exercise: Exercise) {
    this.exercise = exercise
    this.car = new PracticeCar(exercise.car)
    this.#saved = [...this.car.keyList.accepted]
    this.#incidentPending = exercise.incident.what !== 'none'
    this.car.turnIgnition(true)
    this.car.advance(5)
    this.car.workBegins()
  }

  /** Does one thing and says what came of it. */
  act(action: Action): Outcome {
    const outcome = this.#act(action)
    this.#done.push(action.do)
    this.car.advance(HAND_SECONDS[action.do] ?? 0)
    const incident = this.#incident()
    return incident === null ? outcome : { ...outcome, incident }
  }

  /** Ends the attempt. Points are lost for what a customer would come back for. */
  score(): Score {
    const marks: Mark[] = []
    const lose = (code: string, points: number, values: Mark['values'] = {}): void => {
      marks.push({ code, points: -points, values })
    }
    const starts = this.car.keys.filter((key) => this.car.keyList.starts(key)).map((key) => key.label)
    if (starts.length === 0) lose('stranded', 60)
    if (this.car.keyList.taught !== null) lose('session-open', 20)
    for (const label of this.exercise.wanted) {
      if (!starts.includes(label)) lose('key-does-not-start', 20, { key: label })
      else if (!this.#provenStart.has(label)) lose('start-not-proven', 8, { key: label })
      if (starts.includes(label) && !this.#provenButton.has(label))
        lose('buttons-not-proven', 6, { key: label })
    }
    if (!this.#scannedBefore) lose('no-scan-before', 10)
    if (this.#done.lastIndexOf('scan') <= this.#done.indexOf('open')) lose('no-scan-after', 10)
    if (!this.#supplyBefore && this.exercise.car.battery.stateOfCharge < 0.6) lose('no-supply', 15)
    const points = Math.max(0, 100 + marks.reduce((sum, mark) => sum + mark.points, 0))
    return {
      points,
      marks,
      minutes: Math.round(this.car.seconds / 60),
      lowestVolts: this.car.lowestVolts,
      startsAtEnd: starts,
    }
  }

  #act(action: Action): Outcome {
    const { car } = this
    switch (action.do) {
      case 'supply':
        car.supply(action.amperes)
        if (action.amperes > 0 && car.keyList.taught === null && !this.#done.includes('open'))
          this.#supplyBefore = true
        return said('supply-on', { amperes: action.amperes, volts: car.battery.volts.toFixed(2) })
      case 'scan':
        return this.#scan()
      case 'clear':
        for (const unit of car.units.keys())
          if (unit !== 'restraints') car.ask(unit, Uint8Array.of(0x14, 255, 255, 255))
        return said('cleared')
      case 'cycle':
        car.turnIgnition(false)
        car.advance(20)
        car.turnIgnition(true)
        car.advance(10)
        return said('cycled')
      case 'open':
        if (this.exercise.gate !== undefined && !this.#codeAccepted) return said('session-wants-code')
        if (!car.keyList.open(car.keys, true)) return said('session-refused')
        // A code opens one session.
        this.#codeAccepted = false
        return said('session-opened')
      case 'code':
        return this.#code()
      case 'stop':
        if (car.keyList.taught === null) return said('no-session')
        car.keyList.breakOff()
        return said('stopped')
      case 'close':
        if (car.keyList.taught === null) return said('no-session')
        return said(car.keyList.close() ? 'session-closed' : 'session-too-few', {
          stored: car.keyList.accepted.length,
        })
      case 'restore':
        if (!this.exercise.backup) return said('no-backup')
        car.keyList.restore(this.#saved)
        return said('restored', { stored: car.keyList.accepted.length })
      case 'wait':
        car.advance(action.minutes * 60)
        return said('waited', { minutes: action.minutes, volts: car.battery.volts.toFixed(2) })
      default:
        return this.#withKey(action)
    }
  }

  #withKey(action: Extract<Action, { readonly key: string }>): Outcome {
    const { car } = this
    const label = action.key
    if (!car.keys.some((each) => each.label === label)) return said('no-such-key', { key: label })
    switch (action.do) {
      case 'show': {
        const shown = car.showKey(label)
        return said(`show-${shown}`, { key: label, taught: car.keyList.taught?.length ?? 0 })
      }
      case 'start': {
        const started = car.tryStart(label)
        if (started === 'started') this.#provenStart.add(label)
        return said(`start-${started}`, { key: label, volts: car.battery.volts.toFixed(2) })
      }
      case 'button': {
        const works = car.pressButton(label)
        if (works) this.#provenButton.add(label)
        return said(works ? 'button-works' : 'button-dead', { key: label })
      }
      case 'fetch':
        car.place(label, true)
        return said('fetched', { key: label })
      case 'cell':
        car.newCell(label)
        return said('cell-new', { key: label })
    }
  }

  /** A code is entered; while a penalty runs none is taken, and the penalty does not start anew. */
  #code(): Outcome {
    const { gate } = this.exercise
    if (gate === undefined) return said('code-not-wanted')
    const left = this.#noCodeBefore - this.car.seconds
    if (left > 0) return said('code-wait', { minutes: Math.ceil(left / 60) })
    this.#codesEntered++
    if (!gate.firstIsWrong || this.#codesEntered > 1) {
      this.#codeAccepted = true
      this.#wrongTries = 0
      return said('code-accepted')
    }
    this.#wrongTries++
    const waits = this.#wrongTries % gate.triesBeforeWait === 0
    if (waits) this.#noCodeBefore = this.car.seconds + gate.waitSeconds
    return said('code-refused', { minutes: waits ? Math.ceil(gate.waitSeconds / 60) : 0 })
  }

  #scan(): Outcome {
    const { car } = this
    if (!this.#done.includes('open')) this.#scannedBefore = true
    let faults = 0
    let answered = 0
    const complain: UnitFor[] = []
    for (const unit of car.units.keys()) {
      const [reply] = car.ask(unit, Uint8Array.of(0x19, 0x02, 0x0d))
      if (reply === undefined) continue
      answered++
      const count = Math.floor((reply.bytes.length - 3) / 4)
      faults += count
      if (count > 0) complain.push(unit)
    }
    return said('scanned', { units: answered, faults, where: complain.join(', ') })
  }

  /** The mishap of the exercise, once, as soon as its moment has come. */
  #incident(): Outcome | null {
    const { incident } = this.exercise
    const taught = this.car.keyList.taught
    if (!this.#incidentPending || incident.what === 'none' || taught === null) return null
    if (taught.length < incident.afterKeysTaken) return null
    this.#incidentPending = false
    if (incident.what === 'supply-lost') {
      this.car.disconnectBattery(3)
      return said('incident-supply-lost', { volts: this.car.battery.volts.toFixed(2) })
    }
    this.car.keyList.breakOff()
    return said('incident-link-lost')
  }
}

function said(code: string, values: Outcome['values'] = {}): Outcome {
  return { code, values }
}
