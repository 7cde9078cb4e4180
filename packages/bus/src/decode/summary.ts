/** @module Counts over a whole recording. */

import { RESPONSE_PENDING } from '../uds/index.ts'
import { hexByte } from '../uds/reader.ts'
import type { Received, Understood } from './present.ts'

/** What a recording held, in numbers (`shearline decode --summary`). */
export interface Summary {
  /** Frames read: CAN frames with remote and error frames, and network packets. */
  readonly frames: number
  readonly remoteFrames: number
  readonly errorFrames: number
  /** Complete diagnostic messages. */
  readonly messages: number
  /** Messages of which a part is missing. */
  readonly incomplete: number
  /** Complete negative responses, those with NRC 78 among them. */
  readonly negative: number
  /** Negative responses with NRC 78: the answer comes later. */
  readonly pending: number
  /** Codes with status that 59 02 and 59 0A responses carried. */
  readonly dtcRecords: number
  /** Findings by code. */
  readonly findings: Readonly<Record<string, number>>
}

/** The counts while they are being made. */
export interface MutableSummary extends Summary {
  frames: number
  remoteFrames: number
  errorFrames: number
  messages: number
  incomplete: number
  negative: number
  pending: number
  dtcRecords: number
  findings: Record<string, number>
}

/** Counts at zero. */
export function newSummary(): MutableSummary {
  return {
    frames: 0,
    remoteFrames: 0,
    errorFrames: 0,
    messages: 0,
    incomplete: 0,
    negative: 0,
    pending: 0,
    dtcRecords: 0,
    findings: {},
  }
}

const READ_DTC_INFORMATION = 0x19

/** Counts one message that is shown. */
export function countMessage(
  summary: MutableSummary,
  { incomplete }: Received,
  { kind, service, protocol, meaning }: Understood,
): void {
  if (incomplete !== undefined) {
    summary.incomplete++
    return
  }
  summary.messages++
  if (kind === 'negative') {
    summary.negative++
    if (meaning.nrc?.code === hexByte(RESPONSE_PENDING)) summary.pending++
  }
  if (kind !== 'response' || service !== READ_DTC_INFORMATION || protocol !== 'uds') return
  const report = meaning.subFunction?.value
  if (report === 0x02 || report === 0x0a) summary.dtcRecords += meaning.dtcs?.length ?? 0
}
