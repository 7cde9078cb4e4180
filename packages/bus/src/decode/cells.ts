/** @module Messages as lines of a table: chosen fields only, parted by tabs. */

import { formatTime } from '../frame/index.ts'
import { nameOfService } from '../message/interpret.ts'
import { redactedHex, secretRanges } from '../redaction/index.ts'
import { hexByte } from '../uds/reader.ts'
import type { Received, Understood } from './present.ts'

type Cell = (received: Received, understood: Understood, raw: boolean) => string

/** What can stand in a column. */
export type MessageField =
  | 'time'
  | 'startTime'
  | 'channel'
  | 'id'
  | 'protocol'
  | 'service'
  | 'name'
  | 'kind'
  | 'subFunction'
  | 'did'
  | 'nrc'
  | 'dtc'
  | 'vin'
  | 'length'
  | 'complete'
  | 'payload'

/** Written as in the JSON of a message; several identifiers or codes stand in one cell, parted by spaces. */
const CELLS: Readonly<Record<MessageField, Cell>> = {
  time: ({ time }) => formatTime(time),
  startTime: ({ startTime }) => formatTime(startTime),
  // A name from a recording may hold anything; the table must keep its shape.
  channel: ({ from }) => from.channel.replace(/[\t\r\n]/g, ' '),
  id: ({ from }) => from.id,
  protocol: (_, { protocol }) => protocol,
  service: (_, { service }) => hexByte(service),
  name: (_, { protocol, service }) => nameOfService(protocol, service),
  kind: (_, { kind }) => kind,
  subFunction: (_, { meaning }) => meaning.subFunction?.name ?? '',
  did: (_, { meaning: { dids } }) =>
    dids === undefined ? '' : dids.length === 1 ? (dids[0]?.did ?? '') : dids.map(({ did }) => did).join(' '),
  nrc: (_, { meaning }) => meaning.nrc?.code ?? '',
  dtc: (_, { meaning }) => meaning.dtcs?.map(({ code }) => code).join(' ') ?? '',
  vin: (_, { meaning }) => meaning.vin ?? '',
  length: ({ expected }) => String(expected),
  complete: ({ incomplete }) => String(incomplete === undefined),
  payload: ({ payload }, _, raw) => redactedHex(payload, raw ? [] : secretRanges(payload)),
}

/** All fields, in the order in which they are named to people. */
export const MESSAGE_FIELDS: readonly MessageField[] = Object.keys(CELLS) as MessageField[]

/** Writes messages as the cells of chosen fields; a message without such a thing has an empty cell. */
export class MessageCells {
  readonly #cells: readonly Cell[]
  readonly #raw: boolean

  /** With `raw` secret bytes are written too. */
  constructor(fields: readonly MessageField[], raw: boolean) {
    this.#cells = fields.map((field) => CELLS[field])
    this.#raw = raw
  }

  /** One message. */
  text(received: Received, understood: Understood): string {
    let line = ''
    for (let at = 0; at < this.#cells.length; at++) {
      if (at > 0) line += '\t'
      line += (this.#cells[at] as Cell)(received, understood, this.#raw)
    }
    return line
  }
}
