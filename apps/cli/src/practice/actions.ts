/** @module What a person types at the practice car, as actions. */

import type { Action } from '@shearline/practice-car'

const KEYED = ['show', 'start', 'button', 'fetch', 'cell'] as const
const PLAIN = ['scan', 'open', 'close', 'restore', 'cycle', 'clear', 'code', 'stop'] as const

/** Every action with what it wants, for the help. */
export const ACTION_HELP =
  'scan, supply AMPERES, open, show KEY, close, start KEY, button KEY, cell KEY, fetch KEY, restore, clear, cycle, code, stop, wait MINUTES'

/** The action of a line, or null when it is none. */
export function actionOf(line: string): Action | null {
  const [verb = '', value = '', ...rest] = line.trim().split(/\s+/)
  if (rest.length > 0) return null
  const plain = PLAIN.find((each) => each === verb)
  if (plain !== undefined) return value === '' ? { do: plain } : null
  const keyed = KEYED.find((each) => each === verb)
  if (keyed !== undefined) return value === '' ? null : { do: keyed, key: value.toUpperCase() }
  const number = Number(value)
  if (value === '' || !Number.isFinite(number) || number < 0) return null
  if (verb === 'supply') return { do: 'supply', amperes: Math.min(number, 200) }
  if (verb === 'wait') return { do: 'wait', minutes: Math.min(number, 600) }
  return null
}
