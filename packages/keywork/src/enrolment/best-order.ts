/**
 * @module The best order in which to show the keys (ENR-14), over every settled case at once.
 *
 * Orders grow key by key, layer by layer. Two beginnings that showed the same keys and left every case in the same
 * state have the same future, so only the better one goes on. Small sets are searched whole, state by state as they
 * are; larger ones leave out what cannot matter and beginnings already worse than the order to beat.
 */

import { breakOff, type Car, type CarState, close, open, show } from './car.ts'
import { compareCosts, type PointCost, plainCost } from './order-cost.ts'
import { startsCar } from './outcome.ts'
import { StateTable } from './state-table.ts'

/** An order by key index, whether every other was ruled out, and how many distinct states were looked at. */
export interface OrderFound {
  readonly order: readonly number[]
  readonly proven: boolean
  readonly explored: number
}

/** Up to this many keys every state is looked at as it is. */
const SEARCHED_WHOLE = 6
/** Longer sessions are not searched: the preferred order is given, proven only when it cannot be beaten. */
const MOST_SEARCHED = 30
/** State evaluations after which a layer is cut to its best beginnings. */
const EVALUATIONS = 100_000
/** In place of the keys shown: the session has ended. */
const ENDED = -1

interface Beginning {
  /** Positions of `teach` in the order shown. */
  readonly positions: readonly number[]
  /** The same positions, one bit each. */
  readonly shown: number
  readonly states: readonly CarState[]
  /** What the break points so far cost, first things first. */
  readonly costs: readonly number[]
}

/** A case as the search sees it. */
interface Candidate {
  readonly car: Car
  readonly listOrderMatters: boolean
  readonly taughtOrderMatters: boolean
  readonly explored: StateTable
}

export interface SearchOptions {
  /** Up to this many keys every state is looked at as it is; with one case that is always proven. */
  readonly searchedWhole?: number
  /** What a break point costs; by default what ENR-14 counts. */
  readonly cost?: PointCost
  /** State evaluations after which a layer is cut. */
  readonly evaluations?: number
}

/**
 * Finds the best order. `cars` are the settled cases, all of which open; `teach` the keys to show, by index, in the
 * given order.
 */
export function bestOrder(
  cars: readonly Car[],
  teach: readonly number[],
  options: SearchOptions = {},
): OrderFound {
  return new Search(cars, teach, options).run()
}

class Search {
  private readonly candidates: readonly Candidate[]
  private readonly teach: readonly number[]
  /** For each position of `teach`: 0 when its key starts the car in every case before the work, else 1. */
  private readonly notStarting: readonly number[]
  private readonly whole: boolean
  private readonly cost: PointCost
  private readonly most: number
  private evaluations = 0
  private proven = true

  constructor(cars: readonly Car[], teach: readonly number[], options: SearchOptions) {
    this.teach = teach
    this.whole = teach.length <= (options.searchedWhole ?? SEARCHED_WHOLE)
    this.cost = options.cost ?? plainCost(cars)
    this.most = options.evaluations ?? EVALUATIONS
    this.notStarting = teach.map((key) => (cars.every((car) => startsCar(car, car.first, key)) ? 0 : 1))
    this.candidates = cars.map((car) => ({
      car,
      listOrderMatters: this.whole || listOrderMatters(car),
      taughtOrderMatters: this.whole || taughtOrderMatters(car),
      explored: new StateTable(),
    }))
  }

  run(): OrderFound {
    for (const candidate of this.candidates) this.note(candidate, ENDED, candidate.car.first)
    const opened = this.candidates.map(({ car }) => open(car, car.first))
    const opening = this.weigh({ positions: [], shown: 0, states: opened, costs: [] })
    const preferred = this.preferredPositions().reduce(
      (before, position) => this.grow(before, position),
      opening,
    )
    // Nothing after the opening costs anything, and no order is preferred to this one among equals.
    const cannotBeBeaten = compareCosts(preferred.costs, opening.costs) === 0
    const searched = this.whole || (!cannotBeBeaten && this.teach.length <= MOST_SEARCHED)
    if (!searched) this.proven = false
    const best = searched ? this.layers(opening, preferred) : preferred
    this.noteClosings(best)
    return {
      order: best.positions.flatMap((position) => this.teach[position] ?? []),
      proven: this.proven || cannotBeBeaten,
      explored: this.candidates.reduce((sum, candidate) => sum + candidate.explored.size, 0),
    }
  }

  private layers(opening: Beginning, toBeat: Beginning): Beginning {
    let layer: readonly Beginning[] = [opening]
    for (const step of this.teach.keys()) {
      const next = new Map<string, Beginning>()
      for (const beginning of this.cut(layer, this.teach.length - step)) {
        for (const position of this.following(beginning)) {
          const grown = this.grow(beginning, position)
          if (!this.whole && compareCosts(grown.costs, toBeat.costs) > 0) continue
          const name = this.nameOf(grown)
          const known = next.get(name)
          if (known === undefined || this.compare(grown, known) < 0) next.set(name, grown)
        }
      }
      layer = [...next.values()]
    }
    // Every order of a whole search is closed, so that its ends count among the states.
    if (this.whole) for (const beginning of layer) this.noteClosings(beginning)
    return layer.reduce((best, each) => (this.compare(each, best) < 0 ? each : best), toBeat)
  }

  /** Keeps a layer within the evaluations that are left; cutting it gives up the proof. */
  private cut(layer: readonly Beginning[], stepsLeft: number): readonly Beginning[] {
    const share = Math.max(0, this.most - this.evaluations) / stepsLeft
    const width = Math.max(1, Math.floor(share / (this.candidates.length * stepsLeft)))
    if (layer.length <= width) return layer
    this.proven = false
    return [...layer].sort((a, b) => this.compare(a, b)).slice(0, width)
  }

  /** Positions that can come next; of positions with one key only the first that is left. */
  private following({ shown }: Beginning): readonly number[] {
    const keys = new Set<number>()
    return this.teach.flatMap((key, position) => {
      if (((shown >> position) & 1) === 1 || keys.has(key)) return []
      keys.add(key)
      return [position]
    })
  }

  private grow(beginning: Beginning, position: number): Beginning {
    const key = this.teach[position] ?? -1
    const states = this.candidates.map(({ car }, at) => show(car, beginning.states[at] ?? car.first, key))
    return this.weigh({
      positions: [...beginning.positions, position],
      shown: beginning.shown | (1 << position),
      states,
      costs: beginning.costs,
    })
  }

  /** Adds what a break at this point costs in the worst case (ENR-14, ENR-12, ENR-24). */
  private weigh(beginning: Beginning): Beginning {
    for (const [at, candidate] of this.candidates.entries()) {
      const state = beginning.states[at] ?? candidate.car.first
      this.note(candidate, beginning.shown, state)
      this.note(candidate, ENDED, breakOff(candidate.car, state))
    }
    this.evaluations += this.candidates.length
    const keys = beginning.positions.map((position) => this.teach[position] ?? -1)
    const here = this.cost(beginning.states, keys)
    return { ...beginning, costs: here.map((cost, at) => cost + (beginning.costs[at] ?? 0)) }
  }

  private compare(a: Beginning, b: Beginning): number {
    const flags = (beginning: Beginning): readonly number[] =>
      beginning.positions.map((position) => this.notStarting[position] ?? 1)
    return (
      compareCosts(a.costs, b.costs) ||
      compareSequences(flags(a), flags(b)) ||
      compareSequences(a.positions, b.positions)
    )
  }

  private preferredPositions(): readonly number[] {
    const flag = (position: number): number => this.notStarting[position] ?? 1
    return [...this.teach.keys()].sort((a, b) => flag(a) - flag(b) || a - b)
  }

  private noteClosings(beginning: Beginning): void {
    for (const [at, candidate] of this.candidates.entries()) {
      const state = beginning.states[at] ?? candidate.car.first
      for (const closing of close(candidate.car, state)) this.note(candidate, ENDED, closing.state)
    }
  }

  private note(candidate: Candidate, shown: number, state: CarState): void {
    const { list, taught, taken } = plainest(candidate, state)
    candidate.explored.add(taught, list, shown, taken, 0)
  }

  private nameOf(beginning: Beginning): string {
    const names = this.candidates.map((candidate, at) => {
      const { list, taught, taken } = plainest(candidate, beginning.states[at] ?? candidate.car.first)
      return `${list};${taught};${taken}`
    })
    return `${beginning.shown} ${names.join(' ')}`
  }
}

/** The state with its lists in ascending order where their order cannot matter: equal futures, equal states. */
function plainest(candidate: Candidate, state: CarState): CarState {
  const { lists } = candidate.car
  return {
    list: candidate.listOrderMatters ? state.list : lists.ascending(state.list),
    taught: candidate.taughtOrderMatters ? state.taught : lists.ascending(state.taught),
    taken: state.taken,
  }
}

/** Which entry is oldest matters only where the oldest can be dropped; slots are places by themselves. */
function listOrderMatters(car: Car): boolean {
  const { kind } = car.case.rule
  return kind === 'numbered-slots' || (kind === 'append-drop-oldest' && canOverflow(car))
}

/** In which order keys were taught matters only to a commit that can run out of room. */
function taughtOrderMatters(car: Car): boolean {
  const { commits, onBreak, kind } = car.case.rule
  if (kind === 'numbered-slots') return true
  const commitsEarly = onBreak === 'keep-so-far' || car.closesAt <= car.mostTaught || keepsByCause(car)
  return commits === 'at-close' && commitsEarly && kind !== 'replace-all' && canOverflow(car)
}

/** A cause of a break that keeps what the session taught. */
function keepsByCause(car: Car): boolean {
  return Object.values(car.case.rule.onBreakBy).some((ways) => ways.includes('keep-so-far'))
}

function canOverflow(car: Car): boolean {
  const { rule, keys, stored } = car.case
  const identities = new Set(keys.map((key) => key.identity))
  const kept = rule.erases === 'at-open' ? [] : stored
  const added = [...identities].filter((identity) => !kept.includes(identity))
  return kept.length + added.length > rule.capacity
}

function compareSequences(a: readonly number[], b: readonly number[]): number {
  for (const [index, value] of a.entries()) {
    const difference = value - (b[index] ?? 0)
    if (difference !== 0) return difference
  }
  return 0
}
