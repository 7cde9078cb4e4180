/**
 * @module Puts segmented messages together again (ISO 15765-2), one lane at a time, several lanes at once.
 *
 * The sequence numbers decide first. A transfer that is missing a frame, holds one twice or out of order, or is
 * cut by a new one is told as incomplete, never as a message. A pause longer than N_Cr is noted on the message
 * (`late`) and judged by the listener, because some recordings have clocks that run a thousand times too fast.
 */

import type { Finding, Where } from '../finding/index.ts'
import { type CanFrame, copyTime, copyWhere, keepWhere, type ReusedWhere } from '../frame/index.ts'
import { type Assembled, fillSegmented, fillSingle, newTold, type Told } from './assembled.ts'
import { explainIncomplete, type Incomplete } from './incomplete.ts'
import type { Lane } from './lane.ts'
import {
  CONTINUE_TO_SEND,
  explainPciFault,
  newPci,
  OVERFLOW,
  type Pci,
  type PciFault,
  readPci,
  WAIT,
} from './pci.ts'
import { append, begin, measureGap, newTransfer, type Transfer } from './transfer.ts'

/** Longer messages are not believed: no diagnostic message comes near, and memory stays bounded. */
export const MOST_MESSAGE_BYTES: number = 16 * 1024 * 1024

/** Transfers under way at once; no vehicle has as many, so the oldest is given up. */
const MOST_OPEN = 1024

/** What the assembler tells. */
export interface AssemblerListener {
  assembled(message: Assembled): void
  /** Something is odd on a lane; `finding.where` is the frame. */
  odd(lane: Lane, finding: Finding): void
  /** Which lane's first frame a flow control most likely answers, for lanes whose pairing is not known. */
  peerOf(lane: Lane): Lane | undefined
}

/** Reassembles the transfers of one channel. */
export class Assembler {
  readonly #listener: AssemblerListener
  /** Lanes with a transfer under way, the youngest last. */
  readonly #open: Lane[] = []
  readonly #pci: Pci = newPci()
  #told: Told | undefined

  constructor(listener: AssemblerListener) {
    this.#listener = listener
  }

  /** Takes one data frame of a lane. */
  frame(lane: Lane, frame: CanFrame): void {
    lane.frames++
    const pci = this.#pci
    readPci(frame.data, lane.addressing === 'normal' ? 0 : 1, pci)
    switch (pci.kind) {
      case 'single':
        this.#breakOff(lane, 'new-transfer', frame)
        lane.broken = false
        this.#single(lane, frame, pci.start, pci.length)
        break
      case 'first':
        this.#breakOff(lane, 'new-transfer', frame)
        lane.broken = false
        this.#first(lane, frame, pci.start, pci.length)
        break
      case 'consecutive':
        this.#consecutive(lane, frame, pci.start, pci.sequence)
        break
      case 'flow':
        this.#flow(lane, frame, pci.status)
        break
      default:
        lane.malformed++
        this.#malformed(lane, frame, pci.fault)
    }
  }

  /** The recording is over: transfers under way are told as incomplete. */
  end(): void {
    for (const lane of [...this.#open]) this.#incomplete(lane, 'recording-ended')
  }

  /** Forgets a lane that turned out to carry no diagnostics. */
  forget(lane: Lane): void {
    lane.transfer = undefined
    lane.spent = undefined
    this.#close(lane)
  }

  #single(lane: Lane, frame: CanFrame, start: number, length: number): void {
    this.#told ??= newTold(lane, frame)
    fillSingle(this.#told, lane, frame, start, length)
    this.#listener.assembled(this.#told)
  }

  #first(lane: Lane, frame: CanFrame, start: number, length: number): void {
    const transfer = lane.spent ?? newTransfer()
    lane.spent = undefined
    lane.transfer = transfer
    begin(transfer, frame, start, length)
    this.#open.push(lane)
    const oldest = this.#open[0]
    if (this.#open.length > MOST_OPEN && oldest !== undefined) this.#incomplete(oldest, 'timeout')
    if (length > MOST_MESSAGE_BYTES) this.#incomplete(lane, 'too-long')
  }

  #consecutive(lane: Lane, frame: CanFrame, start: number, sequence: number): void {
    const transfer = lane.transfer
    if (transfer === undefined) {
      this.#odd(
        lane,
        frame.where,
        'isotp-consecutive-without-first',
        lane.broken ? 'note' : 'warning',
        lane.broken
          ? 'a consecutive frame of a transfer that was already broken off'
          : 'a consecutive frame without its first frame',
        'Record the exchange again if its answer matters.',
      )
      return
    }
    if (sequence !== transfer.nextSequence) {
      const repeated = transfer.consecutive > 0 && sequence === ((transfer.nextSequence + 15) & 15)
      this.#incomplete(lane, repeated ? 'sequence-repeated' : 'sequence-missing', frame.where, {
        expected: transfer.nextSequence,
        found: sequence,
      })
      return
    }
    const missing = transfer.expected - transfer.received
    const carried = frame.data.length - start
    if (carried < missing && frame.data.length !== transfer.frameBytes) {
      this.#incomplete(lane, 'short-frame', frame.where)
      return
    }
    measureGap(transfer, frame.time)
    const used = Math.min(missing, carried)
    append(transfer, frame.data, start, used)
    transfer.nextSequence = (sequence + 1) & 15
    transfer.consecutive++
    copyTime(transfer.lastTime, frame.time)
    copyTime(transfer.aliveTime, frame.time)
    copyWhere(transfer.lastWhere, frame.where)
    transfer.flowSinceFrame = 0
    if (transfer.received === transfer.expected) this.#complete(lane, transfer)
  }

  #complete(lane: Lane, transfer: Transfer): void {
    lane.transfer = undefined
    this.#close(lane)
    if (transfer.overflow) {
      this.#odd(
        lane,
        transfer.lastWhere,
        'isotp-overflow-ignored',
        'warning',
        'the receiver refused the message (flow control overflow), but all of it was sent',
        'The message is listed; the receiver most likely did not take it.',
      )
    }
    this.#tell(lane, transfer, undefined)
  }

  #breakOff(lane: Lane, why: Incomplete, frame: CanFrame): void {
    if (lane.transfer !== undefined) this.#incomplete(lane, why, frame.where)
  }

  #incomplete(lane: Lane, why: Incomplete, at?: Where, params?: Readonly<Record<string, number>>): void {
    const transfer = lane.transfer
    if (transfer === undefined) return
    lane.transfer = undefined
    lane.broken = true
    this.#close(lane)
    const reason = transfer.overflow && why !== 'too-long' ? 'overflow' : why
    const where = at ?? transfer.lastWhere
    this.#odd(
      lane,
      where,
      `isotp-${reason}`,
      'warning',
      `${explainIncomplete(reason)}: ${transfer.received} of ${transfer.expected} bytes arrived`,
      'The message is listed as incomplete. Record the exchange again if its content matters.',
      { received: transfer.received, length: transfer.expected, ...params },
    )
    this.#tell(lane, transfer, reason)
  }

  #tell(lane: Lane, transfer: Transfer, incomplete: Incomplete | undefined): void {
    lane.spent = transfer
    this.#told ??= newTold(lane, { time: transfer.lastTime, where: transfer.lastWhere })
    fillSegmented(this.#told, lane, transfer, incomplete)
    this.#listener.assembled(this.#told)
  }

  #flow(lane: Lane, frame: CanFrame, status: number): void {
    const sender = this.#answered(lane)
    const transfer = sender?.transfer
    if (transfer === undefined) {
      this.#odd(
        lane,
        frame.where,
        'isotp-flow-control-alone',
        'note',
        'a flow control frame without a first frame before it',
        'Nothing: some testers send it after single frames too.',
      )
      return
    }
    if (status > OVERFLOW) {
      this.#odd(
        lane,
        frame.where,
        'isotp-flow-status-reserved',
        'warning',
        'a flow control frame with a reserved status',
      )
      return
    }
    if (transfer.flowSinceFrame > 0 && status === CONTINUE_TO_SEND && transfer.consecutive === 0) {
      this.#odd(
        lane,
        frame.where,
        'isotp-flow-control-repeated',
        'note',
        'a flow control frame was sent again',
      )
    }
    // Only a pause that was asked for leaves the count at zero: the next frame still needs its permission.
    if (status !== WAIT) transfer.flowSinceFrame++
    copyTime(transfer.aliveTime, frame.time)
    transfer.flowLane = lane
    if (status === OVERFLOW) transfer.overflow = true
  }

  /** The lane whose transfer a flow control on `lane` answers: its known peer, else the youngest still waiting. */
  #answered(lane: Lane): Lane | undefined {
    const peer = this.#listener.peerOf(lane)
    if (peer?.transfer !== undefined) return peer
    for (let index = this.#open.length - 1; index >= 0; index--) {
      const other = this.#open[index] as Lane
      if (other !== lane && other.transfer?.consecutive === 0 && this.#listener.peerOf(other) === undefined)
        return other
    }
    return undefined
  }

  #close(lane: Lane): void {
    const index = this.#open.lastIndexOf(lane)
    if (index !== -1) this.#open.splice(index, 1)
  }

  #malformed(lane: Lane, frame: CanFrame, fault: PciFault): void {
    this.#odd(lane, frame.where, 'isotp-malformed', 'warning', explainPciFault(fault), undefined, {
      reason: fault,
    })
  }

  #odd(
    lane: Lane,
    where: Where | ReusedWhere,
    code: string,
    severity: Finding['severity'],
    what: string,
    doNext = 'Nothing; the rest was read.',
    params: Readonly<Record<string, string | number>> = {},
  ): void {
    this.#listener.odd(lane, {
      code,
      severity,
      where: keepWhere(where),
      what: `${lane.id}: ${what}`,
      doNext,
      params: { id: lane.id, channel: lane.channel, ...params },
    })
  }
}
