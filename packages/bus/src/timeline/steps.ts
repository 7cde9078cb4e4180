/**
 * @module What changed a unit's state: sessions opened, resets, clears, silence and code setting (ISO 14229-1
 * services 10, 11, 14, 28, 85; OBD 04; the same services of ISO 14230-3), with the answers and refusals.
 */

import { formatTime } from '../frame/index.ts'
import type { Message } from '../message/types.ts'

/** What a step does to the unit. */
export type StateStepKind = 'session' | 'reset' | 'clear' | 'communication' | 'code-setting'

/** One step of the timeline. */
export interface StateStep {
  readonly time: string
  readonly channel: string
  readonly id: string
  readonly step: StateStepKind
  readonly kind: Message['kind']
  readonly protocol: Message['protocol']
  readonly service: string
  readonly name: string
  /** Session, reset type, control type, in the standard's word. */
  readonly detail?: string
  readonly nrc?: Message['nrc'] & object
}

const STEPS: Readonly<Record<string, StateStepKind>> = {
  '10': 'session',
  '11': 'reset',
  '14': 'clear',
  '04': 'clear',
  '28': 'communication',
  '85': 'code-setting',
}

/** The steps among messages, in their order. */
export function resetsAndClears(messages: Iterable<Message>): StateStep[] {
  const steps: StateStep[] = []
  for (const message of messages) {
    const step = STEPS[message.service]
    // 20 ends a KWP2000 session, and 29 ends the silence there; in UDS these mean other things.
    const kwpStep =
      message.protocol !== 'kwp'
        ? undefined
        : message.service === '20'
          ? 'session'
          : message.service === '29'
            ? 'communication'
            : undefined
    const known = step ?? kwpStep
    if (known === undefined || !message.complete || message.protocol === 'other') continue
    if (message.service === '04' && message.protocol !== 'obd') continue
    const detail = message.subFunction?.name ?? message.texts?.groupOfDTC
    steps.push({
      time: formatTime(message.time),
      channel: message.channel,
      id: message.id,
      step: known,
      kind: message.kind,
      protocol: message.protocol,
      service: message.service,
      name: message.name,
      ...(detail === undefined ? {} : { detail }),
      ...(message.nrc === undefined ? {} : { nrc: message.nrc }),
    })
  }
  return steps
}
