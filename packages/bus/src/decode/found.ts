/** @module What the decoder finds wrong, in words: each says what, where and what to do. */

import type { Finding } from '../finding/index.ts'
import { type CanFrame, type RecordedTime, secondsBetween } from '../frame/index.ts'
import { explainIncomplete } from '../isotp/incomplete.ts'
import { nameOfService } from '../message/interpret.ts'
import { hexByte } from '../uds/reader.ts'
import type { Received, Understood } from './present.ts'
import type { Waiting } from './segment.ts'

/** An error frame of the recorder. */
export function errorFrame(frame: CanFrame): Finding {
  return {
    code: 'error-frame',
    severity: 'note',
    where: { ...frame.where },
    what: 'an error frame: the recorder noted a bus error, it holds no data',
    doNext: 'Many error frames mean bad wiring, a wrong bit rate or a missing terminator.',
  }
}

/** More channels than are followed. */
export function tooManyChannels(where: Finding['where'], most: number): Finding {
  return {
    code: 'too-many-channels',
    severity: 'error',
    where: { ...where },
    what: `there are more than ${most} channels; further ones are not followed`,
    doNext: 'The recording is damaged. Record it again, or cut out the part that is sound.',
  }
}

/** More identifiers than are followed. */
export function tooManyIdentifiers(frame: CanFrame): Finding {
  return {
    code: 'too-many-identifiers',
    severity: 'error',
    where: { ...frame.where },
    what: 'there are more different identifiers than any vehicle has; further new ones are not followed',
    doNext: 'The recording is damaged or no vehicle bus. Name the identifiers that matter.',
  }
}

/** A frame's time is before the one of the frame before it. */
export function timeBackwards(frame: CanFrame, before: RecordedTime): Finding {
  return {
    code: 'time-backwards',
    severity: 'note',
    where: { ...frame.where },
    what: `the time stamp is ${secondsBetween(frame.time, before).toFixed(6)} s earlier than the one before it`,
    doNext: 'Nothing, unless it happens often: then the recording is not in order.',
  }
}

/** A pause longer than N_Cr stands in a message. */
export function silence({ from, expected }: Waiting, late: NonNullable<Waiting['late']>): Finding {
  const { received, where } = late
  return {
    code: 'isotp-timeout',
    severity: 'warning',
    where,
    what: `${from.id}: ${explainIncomplete('timeout')}: ${received} of ${expected} bytes had arrived, then ${late.gap.toFixed(3)} s of silence`,
    doNext: 'The message is listed as incomplete. Record the exchange again if its content matters.',
    params: { id: from.id, channel: from.channel, received, length: expected },
  }
}

/** What a message says does not agree with its service. */
export function malformed(
  { from, where }: Received,
  { kind, service, protocol }: Understood,
  problem: string,
): Finding {
  return {
    code: 'message-malformed',
    severity: 'warning',
    where,
    what: `${from.id}: ${hexByte(service)} ${nameOfService(protocol, service)} (${kind}): ${problem}`,
    doNext: 'The message is listed as it is; do not rely on what is read from it.',
    params: { id: from.id, service: hexByte(service) },
  }
}
