/** @module What a control unit of the practice car is. */

import type { MonitorChoices } from '../fault-memory/index.ts'

/** What a unit is for; the plain words of the trade. */
export type UnitFor =
  | 'engine'
  | 'transmission'
  | 'brakes'
  | 'steering'
  | 'body'
  | 'gateway'
  | 'restraints'
  | 'instruments'
  | 'immobiliser'
  | 'alarm'
  | 'remote'
  | 'climate'
  | 'radio'
  | 'parking'
  | 'left door'
  | 'right door'
  | 'seats'
  | 'lamps'
  | 'trailer'
  | 'battery monitor'

/** One unit of the car. */
export interface UnitChoices {
  readonly name: UnitFor
  /** 11-bit identifiers of requests to it and answers from it. */
  readonly requestId: number
  readonly answerId: number
  /** Identifier and period of the frame it sends by itself. */
  readonly ownId: number
  readonly periodSeconds: number
  /** Silence after a restart. */
  readonly bootSeconds: number
  /** Units whose frames it waits for, and how long before it complains of each. */
  readonly listensTo: readonly UnitFor[]
  readonly lostAfterSeconds: number
  /** Its code for a low supply, with the volts and the seconds it takes; null when it has none. */
  readonly lowSupply: {
    readonly code: string
    readonly belowVolts: number
    readonly afterSeconds: number
  } | null
  /** Below this it restarts. */
  readonly dropoutVolts: number
  /** Status bits it supports (19 02). */
  readonly availability: number
  /** Its own part's faults, tested every second. */
  readonly parts: readonly MonitorChoices[]
  /** Slow units ask for time (NRC 78) before they answer service 14 and 19. */
  readonly slow: boolean
}

/** Codes for lost communication with a unit: SAE J2012 (memory); failure type 87 is "missing message". */
export const LOST_CODES: Readonly<Partial<Record<UnitFor, string>>> = {
  engine: 'U0100-87',
  transmission: 'U0101-87',
  brakes: 'U0121-87',
  steering: 'U0131-87',
  body: 'U0140-87',
  gateway: 'U0146-87',
  restraints: 'U0151-87',
  instruments: 'U0155-87',
  immobiliser: 'U0167-87',
  alarm: 'U0168-87',
  remote: 'U0214-87',
}
