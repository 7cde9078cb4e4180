import type { Interruption, Recovery, SessionRehearsal } from '@shearline/keywork'

/** What a stop can do at one step: nothing is lost, some key that started the car does not, or none here does. */
export type Mark = 'safe' | 'loses' | 'stranded'

/** Interruptions of one step that leave the same and are mended the same way. */
export interface Alike {
  readonly first: Interruption
  readonly causes: readonly Interruption[]
}

export interface StepAtRisk {
  /** `open`, or the key shown last. */
  readonly after: string
  readonly mark: Mark
  /** Keys that started the car and may not, if it stops here. */
  readonly lost: readonly string[]
  readonly alike: readonly Alike[]
}

/** The steps of a rehearsal with the worst that any stop right after them leaves. `before`: keys that start the car now. */
export function stepsAtRisk(rehearsal: SessionRehearsal, before: readonly string[]): readonly StepAtRisk[] {
  return ['open', ...rehearsal.order].map((after) => {
    const here = rehearsal.interruptions.filter((each) => each.after === after)
    const over = here.filter((each) => each.sessionOver && each.cause !== 'closed-early')
    const lost = before.filter((key) => over.some((each) => !each.starts.includes(key)))
    const mark = over.some((each) => each.stranded) ? 'stranded' : lost.length > 0 ? 'loses' : 'safe'
    return { after, mark, lost, alike: alikeOf(here) }
  })
}

function alikeOf(here: readonly Interruption[]): readonly Alike[] {
  const groups = new Map<string, Interruption[]>()
  for (const each of here) {
    const { cause: _cause, key: _key, after: _after, ...leaves } = each
    const name = JSON.stringify(leaves)
    const group = groups.get(name)
    if (group === undefined) groups.set(name, [each])
    else group.push(each)
  }
  return [...groups.values()].flatMap((causes) =>
    causes[0] === undefined ? [] : [{ first: causes[0], causes }],
  )
}

const byCause = {
  supply: 'supply-lost',
  link: 'link-lost',
  'time-out': 'time-out',
} as const

/**
 * The interruption a break-off on record was: by its cause where one was named, else the dearest of those that end a
 * session at this step. Null where the rehearsal knows none.
 */
export function interruptionOf(
  rehearsal: SessionRehearsal,
  broke: { readonly why: string; readonly cause?: Interruption['cause'] },
  after: string,
): Interruption | null {
  const here = rehearsal.interruptions.filter((each) => each.after === after)
  const cause = broke.cause ?? byCause[broke.why as keyof typeof byCause]
  const named = here.find((each) => each.cause === cause)
  if (named !== undefined) return named
  const over = here.filter((each) => each.sessionOver && Object.values<string>(byCause).includes(each.cause))
  return over.reduce<Interruption | null>(
    (worst, each) => (worst === null || dearness(each) > dearness(worst) ? each : worst),
    null,
  )
}

function dearness({ stranded, going, finished }: Interruption): number {
  const length = (way: Recovery | null) => (way === null ? 1e8 : (way.seconds ?? 1e7 + way.steps.length))
  return (stranded ? 1e10 : 0) + length(going) + length(finished) / 1e3
}
