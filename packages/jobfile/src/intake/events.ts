import { formatTime, type Message, resetsAndClears, type StateStep } from '@shearline/bus'
import type { BodyInput } from '../facts/index.ts'

type WorkEvent = NonNullable<BodyInput<'recording-attached'>['events']>[number]

/** Most events one recording may bring; a bus that resets units more often is not a key job. */
const mostEvents = 2000

/** ISO 14229-1 control types that silence a unit; the others let it speak again. */
const silencing = new Set([
  'enableRxAndDisableTx',
  'disableRxAndEnableTx',
  'disableRxAndTx',
  'enableRxAndDisableTxWithEnhancedAddressInformation',
])

const kinds: Readonly<Record<StateStep['step'], WorkEvent['what'] | null>> = {
  session: 'session-opened',
  reset: 'reset',
  clear: 'faults-cleared',
  communication: 'muted',
  'code-setting': null,
}

/** Gathers what a recording shows being done to control units: resets, clears, silence, sessions, refusals. */
export class EventGatherer {
  readonly events: WorkEvent[] = []
  /** Events left out because there were too many. */
  leftOut = 0
  readonly #seen = new Set<string>()

  message(message: Message): void {
    for (const step of resetsAndClears([message])) this.#step(step, message)
  }

  #step(step: StateStep, message: Message): void {
    if (step.kind === 'request') return
    const detail = step.kind === 'negative' ? `${step.name}: ${step.nrc?.name ?? 'refused'}` : step.detail
    const what = step.kind === 'negative' ? 'refused' : kinds[step.step]
    if (what === null) return
    if (what === 'muted' && !silencing.has(step.detail ?? '')) return
    // A scan opens a session in every unit and is refused by many: once per unit says it all. What can raise a
    // fault (reset, silence, clear) counts each time, because the time decides.
    if (what === 'session-opened' || what === 'refused') {
      const key = `${message.id} ${what} ${detail ?? ''}`
      if (this.#seen.has(key)) return
      this.#seen.add(key)
    }
    if (this.events.length >= mostEvents) {
      this.leftOut++
      return
    }
    const event = { unit: message.id, what, time: formatTime(message.time) }
    this.events.push(detail === undefined ? event : { ...event, detail })
  }
}
