/** @module Makes the message that is shown out of the bytes that were put together: dialect, meaning, redaction. */

import type { Heard } from '../addressing/heard.ts'
import type { Where } from '../finding/index.ts'
import type { Direction, RecordedTime } from '../frame/index.ts'
import type { Incomplete } from '../isotp/incomplete.ts'
import { dialectOf } from '../message/dialect.ts'
import { interpret, kindOf, nameOfService } from '../message/interpret.ts'
import type { Message, Protocol } from '../message/types.ts'
import { secretRanges, withoutSecrets } from '../redaction/index.ts'
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

/** The message as it is shown; `raw` keeps its secret bytes. Remembers the dialect of requests in `lastAsked`. */
export function present(received: Received, lastAsked: LastAsked, raw: boolean): Message {
  const { from, payload, incomplete } = received
  const { kind, service } = kindOf(from, payload)
  const protocol = dialectOf(from, kind, service, payload, lastAsked[service])
  if (kind === 'request') lastAsked[service] = protocol
  const secret = raw ? [] : secretRanges(payload)
  return {
    time: received.time,
    startTime: received.startTime,
    channel: from.channel,
    id: from.id,
    payload: secret.length === 0 ? payload : withoutSecrets(payload, secret),
    redacted: secret,
    length: received.expected,
    complete: incomplete === undefined,
    ...(incomplete === undefined ? {} : { incomplete }),
    protocol,
    service: hexByte(service),
    name: nameOfService(protocol, service),
    kind,
    where: received.where,
    ...(received.direction === undefined ? {} : { direction: received.direction }),
    ...(incomplete === undefined ? interpret(protocol, kind, service, payload) : {}),
  }
}
