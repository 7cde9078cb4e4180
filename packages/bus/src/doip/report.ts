/** @module Tells a capture sink what DoIP messages say: diagnostic messages, announcements, and findings. */

import type { CaptureSink } from '../capture/contract.ts'
import type { Finding, Severity } from '../finding/index.ts'
import { activationGranted, hexByte, hexWord, PAYLOAD_TYPES, PROTOCOL_VERSIONS } from './codes.ts'
import { HEADER_LENGTH, headerFault, readHeader } from './header.ts'
import { type DoipBody, readBody } from './message.ts'
import type { Mark, StreamedMessage } from './stream.ts'

/** Every finding this folder makes. */
export type DoipFindingCode =
  | 'doip-unreadable'
  | 'doip-cut-message'
  | 'doip-wrong-length'
  | 'doip-unknown-type'
  | 'doip-unknown-version'
  | 'doip-wrong-transport'
  | 'doip-header-refused'
  | 'doip-activation-refused'
  | 'doip-diagnostic-refused'
  | 'doip-vin-unreadable'

/** Where a message came from and went to below DoIP. */
export interface DoipPath {
  readonly channel: string
  readonly transport: 'udp' | 'tcp'
  /** `address port` of the sender, as text. */
  readonly from: string
  readonly to: string
}

/** Any DoIP message that passed, of every payload type. */
export interface DoipEvent extends DoipPath {
  readonly version: number
  readonly type: number
  readonly body: DoipBody
  readonly complete: boolean
  readonly first: Mark
  readonly last: Mark
}

/** Told of every DoIP message, beside what the sink hears. */
export type DoipObserver = (event: DoipEvent) => void

/** Turns DoIP messages into what a sink understands. One per recording. */
export class DoipReporter {
  readonly #sink: CaptureSink
  readonly #observe: DoipObserver | undefined
  /** Types and versions already remarked on: a recording full of them gets one note each. */
  readonly #remarked = new Set<string>()

  constructor(sink: CaptureSink, observe: DoipObserver | undefined) {
    this.#sink = sink
    this.#observe = observe
  }

  /** One message, whole or cut, with the way it travelled. */
  message(message: StreamedMessage, path: DoipPath): void {
    const { type, version, payload, first, last } = message
    const body: DoipBody = message.complete
      ? readBody(type, payload, 0, payload.length)
      : { kind: 'malformed' }
    this.#observe?.({ ...path, version, type, body, complete: message.complete, first, last })
    const name = nameOf(type)
    if (!message.complete) {
      this.#cut(message, path)
      return
    }
    if (!PROTOCOL_VERSIONS.has(version)) {
      this.#once(
        `version ${version}`,
        'doip-unknown-version',
        first,
        `doIP version ${hexByte(version)} is not known`,
      )
    }
    const known = PAYLOAD_TYPES.get(type)
    if (known === undefined) {
      this.#once(
        `type ${type}`,
        'doip-unknown-type',
        first,
        `doIP payload type ${hexWord(type)} is reserved or the maker's own; it is passed over`,
      )
    } else if (known.transport !== 'both' && known.transport !== path.transport) {
      this.#once(
        `transport ${type} ${path.transport}`,
        'doip-wrong-transport',
        first,
        `a ${name} (${hexWord(type)}) came over ${path.transport.toUpperCase()}, which ISO 13400-2 does not foresee`,
      )
    }
    this.#tell(body, message, path)
  }

  /** `count` bytes that are no DoIP message. */
  unreadable(count: number, reason: string, mark: Mark, path: DoipPath): void {
    this.#finding(
      'doip-unreadable',
      'warning',
      mark,
      `${count} bytes from ${path.from} to ${path.to} are no DoIP message: ${reason}`,
      'Nothing to do when the recording began or lost data here; otherwise record again.',
      { bytes: count, from: path.from, to: path.to },
    )
  }

  /** One UDP datagram on the DoIP port, `bytes[from..to)`: normally one message, but several are read. */
  datagram(bytes: Uint8Array, from: number, to: number, mark: Mark, path: DoipPath): void {
    let at = from
    while (at < to) {
      if (to - at < HEADER_LENGTH) {
        this.unreadable(to - at, 'too short for a header', mark, path)
        return
      }
      const fault = headerFault(bytes, at)
      if (fault !== undefined) {
        this.unreadable(to - at, fault, mark, path)
        return
      }
      const { version, type, length } = readHeader(bytes, at)
      const end = Math.min(at + HEADER_LENGTH + length, to)
      const payload = new Uint8Array(bytes.subarray(at + HEADER_LENGTH, end))
      const complete = payload.length === length
      this.message({ version, type, claimed: length, payload, complete, first: mark, last: mark }, path)
      at = end
    }
  }

  #tell(body: DoipBody, message: StreamedMessage, path: DoipPath): void {
    const { first, last } = message
    switch (body.kind) {
      case 'diagnostic':
        this.#sink.doip({
          time: last.time,
          startTime: first.time,
          channel: path.channel,
          source: body.source,
          target: body.target,
          payload: body.userData,
          complete: true,
          where: first.where,
        })
        break
      case 'announcement':
        this.#sink.announcement({
          time: last.time,
          channel: path.channel,
          vin: body.vin,
          source: body.source,
          eid: body.eid,
          gid: body.gid,
          where: first.where,
        })
        if (body.vin.includes('\uFFFD')) {
          this.#once(
            `vin ${body.source}`,
            'doip-vin-unreadable',
            first,
            `the vehicle announcement of ${body.source} holds a VIN with bytes that are no characters`,
          )
        }
        break
      case 'malformed':
        this.#finding(
          'doip-wrong-length',
          'error',
          first,
          `a ${nameOf(message.type)} (${hexWord(message.type)}) has ${message.payload.length} bytes of payload, which its type does not allow`,
          'Nothing to do; the message is left out.',
          { type: hexWord(message.type), bytes: message.payload.length },
        )
        break
      case 'header-nack':
        this.#finding(
          'doip-header-refused',
          'warning',
          first,
          `${path.from} refused a DoIP message of ${path.to}: ${body.meaning}`,
          'Look at the message before it: the vehicle did not act on it.',
          { code: hexByte(body.code), from: path.from, to: path.to },
        )
        break
      case 'activation-response':
        if (activationGranted(body.code)) break
        this.#finding(
          'doip-activation-refused',
          'warning',
          first,
          `${body.source} did not open the way for ${body.tester}: ${body.meaning}`,
          'Nothing sent after this reached the vehicle on this connection.',
          { code: hexByte(body.code), source: body.source, tester: body.tester },
        )
        break
      case 'diagnostic-nack':
        this.#finding(
          'doip-diagnostic-refused',
          'warning',
          first,
          `a diagnostic message of ${body.target} was not passed on by ${body.source}: ${body.meaning}`,
          'The request before it was not delivered: do not wait for its answer.',
          { code: hexByte(body.code), source: body.source, target: body.target },
        )
        break
      default:
    }
  }

  #cut(message: StreamedMessage, path: DoipPath): void {
    const { type, payload, claimed, first, last } = message
    this.#finding(
      'doip-cut-message',
      'error',
      first,
      `a ${nameOf(type)} (${hexWord(type)}) from ${path.from} to ${path.to} is cut: ${payload.length} of ${claimed} bytes`,
      'Record again if this message matters.',
      { type: hexWord(type), bytes: payload.length, claimed },
    )
    if (type !== 0x8001 || payload.length < 4) return
    const address = (at: number): string => hexWord(((payload[at] ?? 0) << 8) | (payload[at + 1] ?? 0))
    this.#sink.doip({
      time: last.time,
      startTime: first.time,
      channel: path.channel,
      source: address(0),
      target: address(2),
      payload: payload.subarray(4),
      complete: false,
      where: first.where,
    })
  }

  #once(key: string, code: DoipFindingCode, mark: Mark, what: string): void {
    // The keys are at most 65,536 types, 256 versions and 65,536 addresses: bounded by the format.
    if (this.#remarked.has(key)) return
    this.#remarked.add(key)
    this.#finding(code, 'note', mark, what, 'Nothing to do; said once per recording.')
  }

  #finding(
    code: DoipFindingCode,
    severity: Severity,
    mark: Mark,
    what: string,
    doNext: string,
    params?: Readonly<Record<string, string | number>>,
  ): void {
    const finding: Finding<DoipFindingCode> = { code, severity, where: mark.where, what, doNext }
    this.#sink.finding(params === undefined ? finding : { ...finding, params })
  }
}

function nameOf(type: number): string {
  return PAYLOAD_TYPES.get(type)?.name ?? 'message'
}
