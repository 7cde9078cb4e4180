/** @module What noting a fact in the guide means at the practice car, and whether the car agrees. */
import type { Action, Outcome } from '@shearline/practice-car'
import type { Draft } from '../sync/write.ts'

/** What is done at the car when a fact is noted, and whether what came of it is what the fact says. */
export interface Act {
  readonly action: Action
  readonly agrees: (outcome: Outcome) => boolean
}

const starting = ['start', 'emergency-start', 'passive-start']
const buttons = ['lock', 'unlock', 'boot', 'panic', 'passive-entry']

/** The act behind a fact; null for what is only noted. */
export function actOf(draft: Draft): Act | null {
  switch (draft.kind) {
    case 'session-opened':
      return act({ do: 'open' }, 'session-opened')
    case 'key-taught':
      return act({ do: 'show', key: draft.body.key }, 'show-taken')
    case 'session-closed':
      return act({ do: 'close' }, 'session-closed')
    case 'broke-off':
      // One that is open still is stopped by saying so.
      return { action: { do: 'stop' }, agrees: () => true }
    case 'function-tested':
      return tested(draft.body)
    case 'step-done':
      return draft.body.outcome === 'done' ? stepped(draft.body.of) : null
    default:
      return null
  }
}

function act(action: Action, code: string): Act {
  return { action, agrees: (outcome) => outcome.code === code }
}

function tested(body: Extract<Draft, { kind: 'function-tested' }>['body']): Act | null {
  if (body.phase !== 'after' || (body.outcome !== 'works' && body.outcome !== 'fails')) return null
  const works = body.outcome === 'works'
  if (starting.includes(body.function))
    return {
      action: { do: 'start', key: body.key },
      agrees: ({ code }) => (code === 'start-started') === works,
    }
  if (buttons.includes(body.function))
    return {
      action: { do: 'button', key: body.key },
      agrees: ({ code }) => (code === 'button-works') === works,
    }
  return null
}

/** Steps of a way back that are done at the car. Waiting is not: the practice clock says when it is over. */
function stepped(of: Extract<Draft, { kind: 'step-done' }>['body']['of']): Act | null {
  const key = of?.key
  if (of?.code === 'recovery.restore') return act({ do: 'restore' }, 'restored')
  if (of?.code === 'recovery.enter-code') return act({ do: 'code' }, 'code-accepted')
  if (of?.code === 'recovery.fetch' && key !== undefined) return act({ do: 'fetch', key }, 'fetched')
  if (of?.code === 'recovery.change-cell' && key !== undefined) return act({ do: 'cell', key }, 'cell-new')
  return null
}
