/** @module The fewest things the work did that explain every fault it raised, and who complains about whom. */

import { readCode } from './code.ts'
import { LOST_COMMUNICATION, roleOf } from './roles.ts'
import type { CompareOptions, FaultClass, FaultComparison, FaultLine, UnitRole, WorkEvent } from './types.ts'
import { rolesOf } from './units.ts'

/** One cause that was kept, and the raised faults it explains (places in `comparison.faults`). */
export interface Cause {
  readonly event: WorkEvent
  readonly explains: readonly number[]
}

/** The least causes. */
export interface LeastCauses {
  readonly causes: readonly Cause[]
  /** True when no smaller set exists; false when the search was cut short and this is only a good one. */
  readonly provenLeast: boolean
}

/** How many branches are looked at before the search settles for what it has. */
const MOST_BRANCHES = 100_000

/**
 * The smallest set of events that explains every fault classed as raised by the work (a set cover, exact by branch
 * and bound for the sizes met). Of equal sets the one that names earlier events wins.
 */
export function leastCauses(comparison: FaultComparison, options: CompareOptions): LeastCauses {
  const events = options.events ?? []
  const raised = comparison.faults.flatMap((line, at) => (line.class === 'raised-by-work' ? [at] : []))
  const fits = raised.map((at) => {
    const line = comparison.faults[at] as FaultLine
    return line.candidates.map((event) => events.indexOf(event)).filter((place) => place >= 0)
  })
  const { chosen, provenLeast } = leastCover(fits)
  const causes = chosen.map(
    (event): Cause => ({
      event: events[event] as WorkEvent,
      explains: raised.filter((_, index) => fits[index]?.includes(event)),
    }),
  )
  return { causes, provenLeast }
}

/**
 * The least set of numbers that meets every list (each list: the numbers that would do for one thing). Empty lists are
 * left out: nothing does for them.
 */
export function leastCover(lists: readonly (readonly number[])[]): {
  readonly chosen: readonly number[]
  readonly provenLeast: boolean
} {
  const wanted = withoutImplied(
    lists.filter((list) => list.length > 0).map((list) => [...new Set(list)].sort(ascending)),
  )
  let best = greedy(wanted)
  let branches = 0
  const search = (chosen: readonly number[], open: readonly (readonly number[])[]): void => {
    if (++branches > MOST_BRANCHES) return
    if (open.length === 0) {
      if (chosen.length < best.length) best = [...chosen]
      return
    }
    if (chosen.length + leastStill(open) >= best.length) return
    const tightest = open.reduce((least, list) => (list.length < least.length ? list : least))
    for (const number of tightest) {
      search(
        [...chosen, number],
        open.filter((list) => !list.includes(number)),
      )
    }
  }
  search([], wanted)
  return { chosen: [...best].sort(ascending), provenLeast: branches <= MOST_BRANCHES }
}

/** A list that holds another is met whenever that other one is. */
function withoutImplied(lists: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const distinct = [...new Map(lists.map((list) => [list.join(), list])).values()]
  return distinct.filter(
    (list) => !distinct.some((other) => other !== list && other.every((number) => list.includes(number))),
  )
}

/** Lists that share nothing need a number each. */
function leastStill(open: readonly (readonly number[])[]): number {
  const seen = new Set<number>()
  let apart = 0
  for (const list of open) {
    if (list.some((number) => seen.has(number))) continue
    apart++
    for (const number of list) seen.add(number)
  }
  return apart
}

function greedy(lists: readonly (readonly number[])[]): number[] {
  const chosen: number[] = []
  let open = lists
  while (open.length > 0) {
    const counts = new Map<number, number>()
    for (const number of open.flat()) counts.set(number, (counts.get(number) ?? 0) + 1)
    const [most] = [...counts].reduce((best, each) => (each[1] > best[1] ? each : best))
    chosen.push(most)
    open = open.filter((list) => !list.includes(most))
  }
  return chosen
}

function ascending(one: number, other: number): number {
  return one - other
}

/** One unit that misses another. */
export interface Complaint {
  readonly from: string
  readonly about: UnitRole
  /** The unit that is complained of, where its purpose is known. */
  readonly aboutUnit: string | null
  readonly code: string
  readonly class: FaultClass
}

/** Who complains about whom, from the lost-communication codes of a comparison. */
export function complaints(comparison: FaultComparison, options: CompareOptions = {}): readonly Complaint[] {
  const units = [...new Set(Object.values(comparison.unitsRead).flat())]
  const roles = rolesOf(comparison.unitNames, options.roles)
  const unitOf = new Map(units.map((unit) => [roleOf(unit, roles), unit]))
  return comparison.faults.flatMap((line): Complaint[] => {
    const base = readCode(line.code)?.base ?? ''
    const about = Object.hasOwn(LOST_COMMUNICATION, base) ? LOST_COMMUNICATION[base] : undefined
    if (about === undefined) return []
    return [
      { from: line.unit, about, aboutUnit: unitOf.get(about) ?? null, code: line.code, class: line.class },
    ]
  })
}
