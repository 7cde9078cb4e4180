/** @module One TCP connection on the DoIP port: both directions, each giving DoIP messages. */

import type { CaptureSink } from '../capture/contract.ts'
import { type DoipPath, type DoipReporter, DoipStream, type Mark } from '../doip/index.ts'
import type { Finding } from '../finding/index.ts'
import { type Segment, TcpDirection } from './reassembly.ts'

/** Findings about TCP itself. */
export type TcpFindingCode = 'tcp-gap' | 'tcp-conflict'

/** A TCP header's numbers and flags, with where its payload stands. */
export interface TcpPacket extends Segment {
  readonly ack: boolean
  readonly acknowledgment: number
}

/** A direction of a connection with the DoIP stream inside. */
class DoipDirection {
  readonly tcp: TcpDirection
  #stream: DoipStream | undefined

  constructor(path: DoipPath, reporter: DoipReporter, sink: CaptureSink) {
    const listener = {
      message: (message: Parameters<DoipReporter['message']>[0]): void => reporter.message(message, path),
      unreadable: (count: number, reason: string, mark: Mark): void =>
        reporter.unreadable(count, reason, mark, path),
    }
    this.tcp = new TcpDirection({
      begin: (fromStart) => {
        this.#stream = new DoipStream(listener, fromStart)
      },
      bytes: (data, from, to, mark) => this.#stream?.feed(data, from, to, mark),
      gap: (lost, streamOffset, mark) => {
        sink.finding(gapFinding(lost, streamOffset, mark, path))
        this.#stream?.gap(lost)
      },
      conflict: (streamOffset, mark) => sink.finding(conflictFinding(streamOffset, mark, path)),
      end: () => {
        this.#stream?.end()
        this.#stream = undefined
      },
    })
  }

  get held(): number {
    return this.tcp.held + (this.#stream?.held ?? 0)
  }
}

/** A connection: `forward` is the direction of the first packet seen. */
export class DoipConnection {
  readonly #forward: DoipDirection
  readonly #backward: DoipDirection

  constructor(path: DoipPath, reporter: DoipReporter, sink: CaptureSink) {
    this.#forward = new DoipDirection(path, reporter, sink)
    this.#backward = new DoipDirection({ ...path, from: path.to, to: path.from }, reporter, sink)
  }

  /** Bytes of memory the connection holds. */
  get held(): number {
    return this.#forward.held + this.#backward.held
  }

  /** Takes a packet of the connection. */
  packet(packet: TcpPacket, forward: boolean): void {
    const mine = forward ? this.#forward : this.#backward
    const other = forward ? this.#backward : this.#forward
    const { time } = packet.mark
    if (packet.ack) other.tcp.acknowledged(packet.acknowledgment, time)
    mine.tcp.segment(packet)
    if (packet.rst) other.tcp.finish()
    mine.tcp.expire(time)
    other.tcp.expire(time)
  }

  /** Nothing more will come. */
  end(): void {
    this.#forward.tcp.finish()
    this.#backward.tcp.finish()
  }
}

function gapFinding(lost: number, streamOffset: number, mark: Mark, path: DoipPath): Finding<TcpFindingCode> {
  return {
    code: 'tcp-gap',
    severity: 'error',
    where: mark.where,
    what: `${lost} bytes from ${path.from} to ${path.to} are missing in the recording, after the first ${streamOffset} of the stream`,
    doNext: 'Messages in the gap are lost; record again with a larger buffer or closer to the vehicle.',
    params: { bytes: lost, streamOffset, from: path.from, to: path.to },
  }
}

function conflictFinding(streamOffset: number, mark: Mark, path: DoipPath): Finding<TcpFindingCode> {
  return {
    code: 'tcp-conflict',
    severity: 'warning',
    where: mark.where,
    what: `two segments from ${path.from} to ${path.to} hold different bytes for the same place (stream byte ${streamOffset} on); the first is kept`,
    doNext: 'Do not rely on the messages at this place.',
    params: { streamOffset, from: path.from, to: path.to },
  }
}
