/** @module One control unit: alive or silent, and what it remembers. */

import { FaultMemory, type Snapshot } from '../fault-memory/index.ts'
import { LOST_CODES, type UnitChoices, type UnitFor } from './choices.ts'

/** Who is behind something that happened: the visit, or the car itself. */
export type Cause = 'work' | 'car'

/** A stored fault that was not there, when, and who is behind it: the ground truth of a practice car. */
export interface Raised {
  readonly unit: UnitFor
  readonly code: string
  readonly cause: Cause
  readonly what: string
  readonly seconds: number
}

const KEY_CODE = 'P0513-00'
const STEERING_ANGLE_CODE = 'C0460-54'
const SESSION_SECONDS = 5
/** After its own start a unit waits before it judges the others. */
const GRACE_SECONDS = 1.5

/** Volts and instant of a step, and who is to blame for what the supply does. */
export interface Surroundings {
  readonly seconds: number
  readonly volts: number
  readonly supplyCause: Cause
  readonly supplyWhat: string
  unit(name: UnitFor): ControlUnit | undefined
}

/** A unit that runs in steps. */
export class ControlUnit {
  readonly choices: UnitChoices
  readonly memory: FaultMemory = new FaultMemory()
  session = 1
  sessionUntil = 0
  /** 28 and 85 of ISO 14229-1. */
  muted = false
  faultsOff = false
  silentUntil = 0
  silentCause: Cause = 'car'
  silentWhat = ''
  /** A broken wire keeps it silent until this instant, whatever it does itself. */
  wireOpenUntil = 0
  lastSpoke = 0
  startedAt = 0
  #lowSince: number | null = null
  readonly #broken = new Map<string, (seconds: number) => boolean>()
  readonly #raise: (raised: Raised) => void

  constructor(choices: UnitChoices, raise: (raised: Raised) => void) {
    this.choices = choices
    this.#raise = raise
    for (const talker of choices.listensTo) {
      const code = LOST_CODES[talker]
      if (code !== undefined) this.memory.add({ code })
    }
    if (choices.lowSupply !== null) this.memory.add({ code: choices.lowSupply.code })
    if (choices.name === 'engine' || choices.name === 'immobiliser') this.memory.add({ code: KEY_CODE })
    if (choices.name === 'steering') this.memory.add({ code: STEERING_ANGLE_CODE })
    for (const part of choices.parts) this.memory.add(part)
  }

  get name(): UnitFor {
    return this.choices.name
  }

  /** Speaks on the bus by itself at this instant. */
  speaks(seconds: number): boolean {
    return !this.muted && this.answers(seconds)
  }

  /** Hears requests and answers them at this instant. */
  answers(seconds: number): boolean {
    return seconds >= this.silentUntil && seconds >= this.wireOpenUntil
  }

  /** Restarts: silent while it boots, default session, nothing muted any more. */
  restart(seconds: number, cause: Cause, what: string): void {
    this.silentUntil = seconds + this.choices.bootSeconds
    this.silentCause = cause
    this.silentWhat = what
    this.startedAt = this.silentUntil
    this.session = 1
    this.muted = false
    this.faultsOff = false
    this.#lowSince = null
  }

  /** Told to be silent, or to speak again (service 28). */
  mute(muted: boolean): void {
    this.muted = muted
    if (muted) {
      this.silentCause = 'work'
      this.silentWhat = 'muted'
    }
  }

  /** A part breaks: its test fails whenever `failing` says so. */
  breakPart(code: string, failing: (seconds: number) => boolean): void {
    if (!this.memory.has(code)) throw new RangeError(`${this.name} does not test for ${code}`)
    this.#broken.set(code, failing)
  }

  /** Begins an operation cycle. */
  newCycle(seconds: number): void {
    if (!this.faultsOff) this.memory.newCycle()
    this.startedAt = seconds
  }

  /** Lets its monitors run once. */
  step(around: Surroundings): void {
    const { seconds } = around
    if (this.session !== 1 && seconds > this.sessionUntil) this.endSession()
    if (around.volts < this.choices.dropoutVolts) {
      this.restart(seconds, around.supplyCause, around.supplyWhat)
      return
    }
    if (seconds < this.silentUntil) return
    this.#judgeSupply(around)
    if (seconds >= this.startedAt + GRACE_SECONDS) this.#judgeOthers(around)
    for (const part of this.choices.parts) {
      const failing = this.#broken.get(part.code)
      if (failing?.(seconds) === true) this.fail(part.code, around, 'car', 'part')
      else this.pass(part.code)
    }
  }

  /** Keeps a session open: tester present, or any request in it. */
  keepSession(seconds: number): void {
    this.sessionUntil = seconds + SESSION_SECONDS
  }

  /** Back to the default session: what the session had switched off works again (ISO 14229-1). */
  endSession(): void {
    this.session = 1
    this.muted = false
    this.faultsOff = false
  }

  /** A test failed; `cause` and `what` are kept as ground truth. */
  fail(code: string, around: Pick<Surroundings, 'seconds' | 'volts'>, cause: Cause, what: string): void {
    if (this.faultsOff) return
    const snapshot: Snapshot = { volts: around.volts, seconds: around.seconds }
    if (this.memory.failed(code, snapshot))
      this.#raise({ unit: this.name, code, cause, what, seconds: around.seconds })
  }

  /** A test passed. */
  pass(code: string): void {
    if (!this.faultsOff && this.memory.has(code)) this.memory.passed(code)
  }

  /** A key the car does not know was shown, or one it knows (engine and immobiliser only). */
  judgeKey(known: boolean, around: Pick<Surroundings, 'seconds' | 'volts'>): void {
    if (!this.memory.has(KEY_CODE) || !this.answers(around.seconds)) return
    if (known) this.pass(KEY_CODE)
    else this.fail(KEY_CODE, around, 'work', 'key-refused')
  }

  /** The battery was off: the steering has lost its middle until it is turned. */
  lostPower(around: Pick<Surroundings, 'seconds' | 'volts'>, cause: Cause): void {
    if (this.name === 'steering') this.fail(STEERING_ANGLE_CODE, around, cause, 'battery-off')
  }

  /** The wheel is turned from lock to lock. */
  steeringTurned(): void {
    if (this.name === 'steering') this.pass(STEERING_ANGLE_CODE)
  }

  #judgeSupply(around: Surroundings): void {
    const low = this.choices.lowSupply
    if (low === null) return
    if (around.volts >= low.belowVolts) {
      this.#lowSince = null
      // A little above the limit, so that a trembling supply is one fault.
      if (around.volts > low.belowVolts + 0.4) this.pass(low.code)
      return
    }
    this.#lowSince ??= around.seconds
    if (around.seconds - this.#lowSince >= low.afterSeconds)
      this.fail(low.code, around, around.supplyCause, around.supplyWhat)
  }

  #judgeOthers(around: Surroundings): void {
    for (const name of this.choices.listensTo) {
      const code = LOST_CODES[name]
      const other = around.unit(name)
      if (code === undefined || other === undefined) continue
      const silence = around.seconds - Math.max(other.lastSpoke, this.startedAt)
      if (silence > this.choices.lostAfterSeconds) {
        const wire = around.seconds < other.wireOpenUntil
        this.fail(code, around, wire ? 'car' : other.silentCause, wire ? 'wire' : other.silentWhat)
      } else if (other.speaks(around.seconds)) {
        this.pass(code)
      }
    }
  }
}
