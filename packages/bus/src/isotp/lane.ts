/** @module One direction of one address on one channel: what has been heard there, and the transfer under way. */

import type { Heard } from '../addressing/heard.ts'
import type { Transfer } from './transfer.ts'

/** How an address is carried (ISO 15765-2 clause 10): in the identifier alone, or with a first data byte. */
export type Addressing = 'normal' | 'extended' | 'mixed'

/** One direction of one address on one channel. */
export interface Lane {
  readonly channel: string
  readonly canId: number
  readonly extended: boolean
  readonly addressing: Addressing
  /** The identifier as shown: `7E8`, `18DAF110`, with the address byte when there is one: `6F1-12`. */
  readonly id: string
  transfer: Transfer | undefined
  /** The transfer before, over and told: the next is made of it. */
  spent: Transfer | undefined
  /** Whose lane it is, once a frame was heard on it. */
  heard: Heard | undefined
  /** True after a transfer was broken off, until the next single or first frame. */
  broken: boolean
  frames: number
  malformed: number
}

/** A lane on which nothing has been heard yet. */
export function newLane(
  channel: string,
  canId: number,
  extended: boolean,
  addressing: Addressing,
  id: string,
): Lane {
  return {
    channel,
    canId,
    extended,
    addressing,
    id,
    transfer: undefined,
    spent: undefined,
    heard: undefined,
    broken: false,
    frames: 0,
    malformed: 0,
  }
}
