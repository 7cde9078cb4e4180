/** @module Makes the message that is shown out of the bytes that were put together: dialect, meaning, redaction. */

import type { Heard } from '../addressing/heard.ts'
import type { Where } from '../finding/index.ts'
import type { Direction, RecordedTime } from '../frame/index.ts'
import type { Incomplete } from '../isotp/incomplete.ts'
import { dialectOf } from '../message/dialect.ts'
import { interpret, kindOf, nameOfService, serviceOf } from '../message/interpret.ts'
import type { Meaning, Message, MessageKind, Protocol } from '../message/types.ts'
import { type ByteRange, secretRanges, withoutSecrets } from '../redaction/index.ts'
import { hexByte } from '../uds/reader.ts'

/** The bytes of one message and where they came from. */
export interface Received {
  readonly from: Heard
  readonly payload: Uint8Array
  readonly expected: number
  readonly incomplete: Incomplete | undefined
  readonly startTime: RecordedTime
  readonly time: RecordedTime
  readonly where: Where
  readonly direction: Direction | undefined
}

/** The dialect of the last request of each service on a channel, by service byte. */
export type LastAsked = (Protocol | undefined)[]

/** What a message is and says. */
export interface Understood {
  readonly kind: MessageKind
  /** Identifier of the request's service. */
  readonly service: number
  readonly protocol: Protocol
  /** Empty for an incomplete message. */
  readonly meaning: Meaning
}

const NOTHING: Meaning = {}
const NO_SECRETS: readonly ByteRange[] = []

/** Reads what a message says. Remembers the dialect of requests in `lastAsked`. */
export function understand(received: Received, lastAsked: LastAsked): Understood {
  const { from, payload } = received
  const kind = kindOf(from, payload)
  const service = serviceOf(kind, payload)
  const protocol = dialectOf(from, kind, service, payload, lastAsked[service])
  if (kind === 'request') lastAsked[service] = protocol
  const meaning = received.incomplete === undefined ? interpret(protocol, kind, service, payload) : NOTHING
  return { kind, service, protocol, meaning }
}

/** The message as it is shown; `raw` keeps its secret bytes. */
export function present(received: Received, understood: Understood, raw: boolean): Message {
  const { from, payload, incomplete, direction } = received
  const { kind, service, protocol, meaning } = understood
  const secret = raw ? NO_SECRETS : secretRanges(payload)
  const message: { -readonly [Part in keyof Message]: Message[Part] } = {
    time: received.time,
    startTime: received.startTime,
    channel: from.channel,
    id: from.id,
    payload: secret.length === 0 ? payload : withoutSecrets(payload, secret),
    redacted: secret,
    length: received.expected,
    complete: incomplete === undefined,
    protocol,
    service: hexByte(service),
    name: nameOfService(protocol, service),
    kind,
    where: received.where,
  }
  if (incomplete !== undefined) message.incomplete = incomplete
  if (direction !== undefined) message.direction = direction
  return Object.assign(message, meaning)
}
