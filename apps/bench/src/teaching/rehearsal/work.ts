import type { SessionRehearsal, TeachingPlan } from '@shearline/keywork'

/** What the page asks of the worker, and what comes back under the same number. */
export interface Unrehearsed {
  readonly id: number
  readonly plan: TeachingPlan
  readonly order: 'best' | 'given'
}
export type Rehearsed =
  | { readonly id: number; readonly rehearsal: SessionRehearsal }
  | { readonly id: number; readonly refused: string }

/** Answers kept for plans asked before; a job goes through a few dozen. */
const kept = 40
const known = new Map<string, Promise<SessionRehearsal>>()
let worker: Worker | undefined
let asked = 0

/** Rehearses in a worker of its own. Rejects when too much of the plan is unknown. Equal plans are worked out once. */
export function rehearseBeside(plan: TeachingPlan, order: Unrehearsed['order']): Promise<SessionRehearsal> {
  const name = JSON.stringify([plan, order])
  const before = known.get(name)
  if (before !== undefined) return before
  const answer = ask(plan, order)
  known.set(name, answer)
  answer.catch(() => known.delete(name))
  const [oldest] = known.keys()
  if (known.size > kept && oldest !== undefined) known.delete(oldest)
  return answer
}

function ask(plan: TeachingPlan, order: Unrehearsed['order']): Promise<SessionRehearsal> {
  worker ??= new Worker(new URL('./rehearse.worker.ts', import.meta.url), { type: 'module' })
  const running = worker
  asked += 1
  const id = asked
  return new Promise((resolve, reject) => {
    const done = () => {
      running.removeEventListener('message', hear)
      running.removeEventListener('error', fail)
    }
    const hear = ({ data }: MessageEvent<Rehearsed>) => {
      if (data.id !== id) return
      done()
      if ('rehearsal' in data) resolve(data.rehearsal)
      else reject(new Error(data.refused))
    }
    const fail = (event: ErrorEvent) => {
      done()
      worker = undefined
      reject(new Error(event.message))
    }
    running.addEventListener('message', hear)
    running.addEventListener('error', fail)
    running.postMessage({ id, plan, order } satisfies Unrehearsed)
  })
}
