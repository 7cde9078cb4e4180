/**
 * A second reading of the rehearsal rules, for comparison only: every order written out, every break point replayed
 * from the first state with names instead of numbers, nothing remembered between replays.
 */

import type { Rehearsal, TeachingPlan } from '../types.ts'

type Loose = Record<string, unknown>

interface Settled {
  kind: string
  capacity: number
  leastKeys: number
  mostKeys: number
  opensWith: string
  erases: string
  commits: string
  sameKeyTwice: string
  onBreak: string
  accepts: string[]
}
interface Key {
  id: string
  identity: string
  state: string
  onBench: boolean
}
/** One settled plan. */
export interface World {
  rule: Settled
  keys: Key[]
  stored: string[]
  equipment: boolean
  backup: boolean
}
interface Left {
  list: string[]
  known: Set<string>
}
interface Seen {
  accepted: string[]
  starts: string[]
  dropped: string[]
  stranded: boolean
  wayBack: string
}

const WAYS = ['not-needed', 'reopen', 'restore', 'none']

/** Every world that fits a plan, with wider ranges than needed and with values that do the same. */
export function worldsOf(plan: TeachingPlan): World[] {
  const wide = plan.stored.length + (plan.teach?.length ?? plan.keys.length) + plan.keys.length + 3
  const numbers = (from: number): number[] => Array.from({ length: wide }, (_, index) => from + index)
  const occurring = ['known', 'blank', 'prepared', 'locked-elsewhere']
  const domains: Record<string, unknown[]> = {
    kind: ['replace-all', 'append', 'append-drop-oldest'],
    capacity: numbers(1).filter((n) => n >= plan.stored.length),
    leastKeys: numbers(1),
    mostKeys: numbers(1),
    opensWith: ['equipment', 'accepted-key', 'two-accepted-keys'],
    erases: ['at-close', 'at-open', 'never'],
    commits: ['at-close', 'each-key'],
    sameKeyTwice: ['refused', 'ignored', 'counts'],
    onBreak: ['revert', 'keep-so-far'],
    accepts: Array.from({ length: 15 }, (_, mask) =>
      occurring.filter((_each, bit) => ((mask + 1) >> bit) & 1),
    ),
  }
  let rules: Loose[] = [{}]
  for (const [name, values] of Object.entries(domains)) {
    const given = (plan.rule as unknown as Loose)[name]
    const choices = given === 'unknown' ? values : [given]
    rules = rules.flatMap((rule) => choices.map((value) => ({ ...rule, [name]: value })))
  }
  const raw = plan.rule as unknown as Loose
  if (['kind', 'capacity', 'leastKeys', 'mostKeys'].some((name) => raw[name] === 'unknown')) {
    const fitting = rules.filter((rule) => {
      const { kind, capacity, leastKeys, mostKeys } = rule as unknown as Settled
      return leastKeys <= mostKeys && !(kind === 'replace-all' && leastKeys > capacity)
    })
    if (fitting.length > 0) rules = fitting
  }
  let benches: Key[][] = [[]]
  for (const key of plan.keys) {
    const states =
      key.state !== 'unknown' ? [key.state] : plan.stored.includes(key.identity) ? ['known'] : occurring
    const places = key.onBench === 'unknown' ? [true, false] : [key.onBench]
    benches = benches.flatMap((bench) =>
      states.flatMap((state) => places.map((onBench) => [...bench, { ...key, state, onBench }])),
    )
  }
  const yesNo = (value: unknown): boolean[] => (value === 'unknown' ? [true, false] : [value as boolean])
  return rules.flatMap((rule) =>
    benches.flatMap((keys) =>
      yesNo(plan.means.equipment).flatMap((equipment) =>
        yesNo(plan.means.backup).map((backup) => ({
          rule: rule as unknown as Settled,
          keys,
          stored: [...plan.stored],
          equipment,
          backup,
        })),
      ),
    ),
  )
}

const keyOf = (world: World, id: string): Key => world.keys.find((key) => key.id === id) as Key
const stateNow = (world: World, known: Set<string>, id: string): string =>
  known.has(id) ? 'known' : keyOf(world, id).state
const takeable = (world: World, known: Set<string>, id: string): boolean =>
  keyOf(world, id).onBench &&
  stateNow(world, known, id) !== 'locked-elsewhere' &&
  world.rule.accepts.includes(stateNow(world, known, id))
const starting = (world: World, list: string[]): string[] =>
  world.keys.filter((key) => key.onBench && list.includes(key.identity)).map((key) => key.id)

/** ENR-01 for a list. */
export function opensNow(world: World, list: string[]): boolean {
  const identities = new Set(starting(world, list).map((id) => keyOf(world, id).identity))
  switch (world.rule.opensWith) {
    case 'equipment':
      return world.equipment
    case 'accepted-key':
      return identities.size > 0
    default:
      return identities.size > 1
  }
}

function put(world: World, list: string[], identity: string): boolean {
  if (list.includes(identity)) return true
  if (list.length >= world.rule.capacity) {
    if (world.rule.kind === 'append') return false
    list.shift()
  }
  list.push(identity)
  return true
}

/** Plays one session from its opening: shows these keys and then breaks off or closes. */
export function play(world: World, shown: readonly string[], ending: 'break' | 'close'): Left {
  const { rule } = world
  let list = rule.erases === 'at-open' ? [] : [...world.stored]
  const known = new Set<string>()
  const session: string[] = []
  for (const id of shown) {
    if (!takeable(world, known, id)) continue
    const { identity } = keyOf(world, id)
    if (session.includes(identity) && ['refused', 'ignored'].includes(rule.sameKeyTwice)) continue
    if (session.length >= rule.mostKeys) continue
    if (rule.kind === 'replace-all' && session.length >= rule.capacity) continue
    if (rule.commits === 'each-key' && rule.kind !== 'replace-all' && !put(world, list, identity)) continue
    session.push(identity)
    if (rule.commits === 'each-key' && rule.kind === 'replace-all') list = [...session]
    known.add(id)
  }
  const commits =
    rule.commits === 'at-close' &&
    (ending === 'close' && session.length >= rule.leastKeys
      ? true
      : rule.onBreak === 'keep-so-far' && session.length > 0)
  if (commits) {
    if (rule.kind === 'replace-all') list = [...session]
    else for (const identity of session) put(world, list, identity)
  }
  return { list, known }
}

function look(world: World, left: Left, teach: readonly string[]): Seen {
  const starts = starting(world, left.list)
  const canTake = world.keys.filter((key) => takeable(world, left.known, key.id))
  const amount =
    world.rule.sameKeyTwice === 'counts' ? canTake.length : new Set(canTake.map((key) => key.identity)).size
  let wayBack = world.equipment && world.backup ? 'restore' : 'none'
  if (opensNow(world, left.list) && amount >= world.rule.leastKeys) wayBack = 'reopen'
  if (starts.length > 0 && teach.every((id) => starts.includes(id))) wayBack = 'not-needed'
  return {
    accepted: left.list,
    starts,
    dropped: world.stored.filter(
      (each, at) => world.stored.indexOf(each) === at && !left.list.includes(each),
    ),
    stranded: starts.length === 0,
    wayBack,
  }
}

function merge(all: Seen[], stored: readonly string[], keyIdentities: readonly string[]): Seen {
  const first = all[0] as Seen
  const sameEverywhere = new Set(all.map((seen) => JSON.stringify(seen.accepted))).size === 1
  // The common part, taken out of a copy of every list; listed by identity where the lists differ.
  const left = all.map((seen) => [...seen.accepted])
  const common: string[] = []
  for (const identity of new Set([...stored, ...keyIdentities])) {
    while (left.every((list) => list.includes(identity))) {
      common.push(identity)
      for (const list of left) list.splice(list.indexOf(identity), 1)
    }
  }
  return {
    accepted: sameEverywhere ? first.accepted : common,
    starts: first.starts.filter((id) => all.every((seen) => seen.starts.includes(id))),
    dropped: stored.filter(
      (each, at) => stored.indexOf(each) === at && all.some((seen) => seen.dropped.includes(each)),
    ),
    stranded: all.some((seen) => seen.stranded),
    wayBack: WAYS[Math.max(...all.map((seen) => WAYS.indexOf(seen.wayBack)))] as string,
  }
}

/** Every order of a list, the given order first; equal entries give equal orders more than once. */
export function ordersOf<T>(list: readonly T[]): T[][] {
  if (list.length === 0) return [[]]
  return list.flatMap((each, at) =>
    ordersOf(list.filter((_, other) => other !== at)).map((rest) => [each, ...rest]),
  )
}

/** The rehearsal by brute force; `explored` is left out, as it counts the searcher's own steps. */
export function bruteForce(
  plan: TeachingPlan,
  mode: 'best' | 'given',
): Omit<Rehearsal, 'explored' | 'provenBest'> {
  const worlds = worldsOf(plan)
  const none = new Set<string>()
  const identities = plan.keys.map((key) => key.identity)
  const given =
    plan.teach ?? plan.keys.map((key) => key.id).filter((id) => worlds.some((w) => takeable(w, none, id)))
  const opened = worlds.every((world) => opensNow(world, world.stored))
  const startsFirst = (id: string): boolean =>
    worlds.every((world) => starting(world, world.stored).includes(id))

  const points = (order: readonly string[]): (Seen & { after: string; lost: boolean })[] =>
    ['open', ...order].map((after, at) => {
      const seen = worlds.map((world) => look(world, play(world, order.slice(0, at), 'break'), given))
      const lost = worlds.some((world, index) =>
        starting(world, world.stored).some((id) => !(seen[index] as Seen).starts.includes(id)),
      )
      return { after, ...merge(seen, plan.stored, identities), lost }
    })
  const rank = (positions: readonly number[]): number[] => {
    const order = positions.map((position) => given[position] as string)
    const costs = opened ? points(order) : []
    return [
      costs.filter((point) => point.stranded).length,
      costs.filter((point) => point.lost).length,
      ...order.map((id) => (startsFirst(id) ? 0 : 1)),
      ...positions,
    ]
  }
  let order = given
  if (mode === 'best') {
    let best: { rank: number[]; order: readonly string[] } | null = null
    for (const positions of ordersOf([...given.keys()])) {
      const ranked = rank(positions)
      const at = best === null ? -1 : ranked.findIndex((value, index) => value !== best?.rank[index])
      if (best === null || (at >= 0 && (ranked[at] as number) < (best.rank[at] as number))) {
        best = { rank: ranked, order: positions.map((position) => given[position] as string) }
      }
    }
    order = best?.order ?? given
  }
  const ends = worlds.map((world) =>
    opened
      ? look(world, play(world, order, 'close'), given)
      : look(world, { list: [...world.stored], known: none }, given),
  )
  return {
    order,
    opened,
    breaks: opened ? points(order).map(({ lost: _lost, ...point }) => point) : [],
    end: merge(ends, plan.stored, identities),
  } as Omit<Rehearsal, 'explored' | 'provenBest'>
}
