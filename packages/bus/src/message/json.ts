/** @module A message as one object for JSON, as the command line contract states it. */

import { formatTime } from '../frame/index.ts'
import { redactedHex } from '../redaction/index.ts'
import type { Meaning, Message } from './types.ts'

/** What `shearline decode FILE --json` writes per message: the contract's fields first, the meaning after them. */
export interface MessageLine extends Meaning {
  /** Seconds as a decimal string, as in the recording. */
  readonly time: string
  readonly channel: string
  readonly id: string
  /** Lower-case hex; redacted bytes `xx`. */
  readonly payload: string
  readonly complete: boolean
  readonly protocol: Message['protocol']
  readonly service: string
  readonly kind: Message['kind']
  readonly name: string
  readonly startTime: string
  readonly length: number
  readonly incomplete?: Message['incomplete'] & string
  readonly direction?: Message['direction'] & string
  readonly where: Message['where']
}

/** A message as plain data for JSON. */
export function messageLine(message: Message): MessageLine {
  const {
    time,
    channel,
    id,
    payload,
    redacted,
    complete,
    protocol,
    service,
    kind,
    name,
    startTime,
    length,
    incomplete,
    ...rest
  } = message
  return {
    time: formatTime(time),
    channel,
    id,
    payload: redactedHex(payload, redacted),
    complete,
    protocol,
    service,
    kind,
    name,
    startTime: formatTime(startTime),
    length,
    ...(incomplete === undefined ? {} : { incomplete }),
    ...rest,
  }
}
