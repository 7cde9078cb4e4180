import type { SessionRehearsal, TeachingPlan } from '@shearline/keywork'
import { useEffect, useState } from 'react'
import { rehearseBeside, type Unrehearsed } from './work.ts'

interface Answer {
  readonly name: string
  /** Null: too much is unknown. */
  readonly rehearsal: SessionRehearsal | null
}

/**
 * The rehearsal of a plan, worked out beside the page. `undefined` while it is; null when too much is unknown to
 * answer, or when there is no plan.
 */
export function useRehearsed(
  plan: TeachingPlan | null,
  order: Unrehearsed['order'],
): SessionRehearsal | null | undefined {
  const name = plan === null ? '' : JSON.stringify([plan, order])
  const [answer, setAnswer] = useState<Answer | null>(null)
  useEffect(() => {
    if (name === '') return
    const [asked, how] = JSON.parse(name) as [TeachingPlan, Unrehearsed['order']]
    let live = true
    rehearseBeside(asked, how).then(
      (rehearsal) => live && setAnswer({ name, rehearsal }),
      () => live && setAnswer({ name, rehearsal: null }),
    )
    return () => {
      live = false
    }
  }, [name])
  if (name === '') return null
  return answer?.name === name ? answer.rehearsal : undefined
}
