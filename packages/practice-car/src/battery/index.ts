/**
 * @module The 12 V battery of the practice car: it sags under load and with the cold, and a supply holds it up.
 *
 * A plain model on purpose (open-circuit voltage straight over charge, one resistance): the engine's own model in
 * `keywork` is another one, so that training and tests do not compare a thing with itself. Values are common practice
 * for a flooded lead-acid battery, no source.
 */

/** What the battery is when the visit begins. */
export interface BatteryChoices {
  /** Rated capacity in ampere-hours. */
  readonly ampereHours: number
  /** 0 to 1. */
  readonly stateOfCharge: number
  /** At 25 degrees and full, in ohms. */
  readonly resistanceOhms: number
  readonly celsius: number
}

const FULL_VOLTS = 12.75
const EMPTY_VOLTS = 11.6
const SUPPLY_VOLTS = 13.4

/** A battery that loses charge to its load. */
export class Battery {
  readonly #capacityAmpereSeconds: number
  readonly #resistanceOhms: number
  #charge: number
  #supplyAmperes = 0
  #connected = true
  #volts: number

  constructor(choices: BatteryChoices) {
    this.#capacityAmpereSeconds = choices.ampereHours * 3600
    // The cold slows the acid: about twice the resistance at -20 degrees. Common practice, no source.
    const cold = 1 + Math.max(0, 25 - choices.celsius) / 45
    this.#resistanceOhms = choices.resistanceOhms * cold
    this.#charge = choices.stateOfCharge
    this.#volts = this.#openVolts()
  }

  /** Volts at the units since the last step; 0 when the battery is off and no supply is on. */
  get volts(): number {
    return this.#volts
  }

  get stateOfCharge(): number {
    return this.#charge
  }

  get connected(): boolean {
    return this.#connected
  }

  /** Connects a supply that gives up to so many amperes; 0 takes it off. */
  supply(amperes: number): void {
    this.#supplyAmperes = amperes
  }

  /** Takes the battery off the car, or puts it back. */
  connect(connected: boolean): void {
    this.#connected = connected
  }

  /** Lets time pass under a load in amperes. */
  step(seconds: number, loadAmperes: number): void {
    if (!this.#connected) {
      this.#volts = this.#supplyAmperes >= loadAmperes && this.#supplyAmperes > 0 ? SUPPLY_VOLTS : 0
      return
    }
    const open = this.#openVolts()
    // A supply gives what the load and the battery take, up to its limit.
    const wanted = loadAmperes + Math.max(0, (SUPPLY_VOLTS - open) / this.#resistance())
    const given = Math.min(this.#supplyAmperes, wanted)
    const fromBattery = loadAmperes - given
    this.#charge = Math.min(
      1,
      Math.max(0, this.#charge - (fromBattery * seconds) / this.#capacityAmpereSeconds),
    )
    this.#volts = Math.max(0, open - fromBattery * this.#resistance())
  }

  #openVolts(): number {
    return EMPTY_VOLTS + (FULL_VOLTS - EMPTY_VOLTS) * this.#charge
  }

  #resistance(): number {
    return this.#resistanceOhms * (1 + 1.5 * (1 - this.#charge) ** 2)
  }
}
