/**
 * @module The shortest way back from an ended session (ENR-23): use a key, fetch one, open again and show keys, or put
 * the backup back. Found by the A* search (Hart, Nilsson, Raphael 1968) over the same car that the rehearsal plays:
 * what is left to do is never reckoned longer than it can be, so the first way that is complete is the shortest.
 */

import {
  bitsIn,
  breakOff,
  type Car,
  type CarState,
  canOpen,
  carWithKeysMoved,
  commitAtClose,
  mostLeastKeys,
  open,
  show,
  takeable,
} from './car.ts'
import { Heap } from './heap.ts'
import { isStranded, startsCar } from './outcome.ts'
import { figure, NO_FIGURE, type SessionTimes } from './session-times.ts'
import type { Recovery, RecoveryStep, RecoveryWay } from './session-types.ts'

/** `going`: a key here starts the car. `finished`: every key meant to be taught does. */
export type Goal = 'going' | 'finished'

/** What the way starts from. `waitSeconds`: before a session can be opened at all. */
export interface Plight {
  readonly state: CarState
  readonly waitSeconds: number
  /** A key whose fob cell is flat, by index. */
  readonly flat?: number
}

/** Nodes after which a search gives up; the way found by then is not proven the shortest. */
const MOST_NODES = 1500
/** Of more keys that are away, only each alone and all together are fetched. */
const MOST_AWAY = 4

interface Node {
  readonly car: Car
  /** Keys fetched, one bit each. */
  readonly fetched: number
  readonly state: CarState
  /** Keys shown in the open session, one bit each; -1: no session is open. */
  readonly shown: number
  readonly waited: boolean
  readonly cost: number
  readonly from: Node | null
  readonly step: RecoveryStep | null
  readonly length: number
}

/** The shortest way to a goal, or null where none leads there. `teach`: keys by index. */
export function shortestWayBack(
  car: Car,
  plight: Plight,
  teach: readonly number[],
  goal: Goal,
  times: SessionTimes,
): Recovery | null {
  return new WaySearch(car, plight, teach, goal, times).run()
}

class WaySearch {
  private readonly plight: Plight
  private readonly teach: readonly number[]
  private readonly goal: Goal
  private readonly times: SessionTimes
  private readonly queue: Heap<Node> = new Heap<Node>()
  private readonly best = new Map<string, number>()
  private readonly root: Car
  private readonly restores: boolean
  /** Identities meant to be taught, one bit each. */
  private readonly meant: number

  constructor(car: Car, plight: Plight, teach: readonly number[], goal: Goal, times: SessionTimes) {
    this.root = car
    this.plight = plight
    this.teach = teach
    this.goal = goal
    this.times = times
    this.meant = teach.reduce((set, key) => set | (1 << (car.identityOf[key] ?? 0)), 0)
    this.restores = car.case.means.equipment && car.case.means.backup
  }

  run(): Recovery | null {
    if (this.goal === 'finished' && !this.canFinish()) return null
    for (const away of this.fetchable()) this.begin(away)
    for (let nodes = 0; nodes < MOST_NODES; nodes += 1) {
      const node = this.queue.take()
      if (node === undefined) return null
      if (this.reached(node)) return this.told(node)
      if (this.best.get(nameOf(node)) !== node.cost) continue
      for (const next of this.following(node)) this.put(next)
    }
    return this.anyWay()
  }

  /** False when it is plain without a search that the list cannot come to hold every key that is meant. */
  private canFinish(): boolean {
    const { rule } = this.root.case
    const lists = [this.plight.state.list, ...(this.restores ? [this.root.first.list] : [])]
    if (lists.some((list) => this.missing(this.root.lists.set(list)) === 0)) return true
    // A list that holds more than the capacity now keeps its length while entries are dropped for others.
    const longest = Math.max(rule.capacity, ...lists.map((list) => this.root.lists.size(list)))
    const room = rule.kind === 'replace-all' ? this.root.mostTaught : longest
    if (this.missing(0) > room || !this.teach.every((key) => this.canStartAgain(key))) return false
    return lists.some((list) => this.hasRoom(list))
  }

  /** What only ever adds must have room for the keys that are meant beside the entries that are not. */
  private hasRoom(list: number): boolean {
    const { rule, keys } = this.root.case
    const adds =
      rule.kind === 'append' ||
      (rule.kind === 'numbered-slots' && keys.every((key) => key.slot === undefined))
    if (!adds || rule.erases === 'at-open' || rule.onBreak === 'list-lost') return true
    const hole = this.root.identities.length - 1
    const others = this.root.lists
      .items(list)
      .filter((entry) => entry !== hole && ((this.meant >> entry) & 1) === 0)
    return others.length + this.missing(0) <= rule.capacity
  }

  /** A key that is in no list that can be had, and that no session can take, will not start the car. */
  private canStartAgain(key: number): boolean {
    const { car, state } = { car: this.root, state: this.plight.state }
    const identity = car.identityOf[key] ?? -1
    if (car.lists.holds(state.list, identity)) return true
    if (this.restores && car.lists.holds(car.first.list, identity)) return true
    const all = carWithKeysMoved(car, -1, 0)
    return car.case.keys.some(
      (_, at) => car.identityOf[at] === identity && ((takeable(all, state) >> at) & 1) === 1,
    )
  }

  /** Sets of keys to fetch before anything else, one bit each. */
  private fetchable(): readonly number[] {
    const away = this.root.case.keys.flatMap((key, at) => (key.onBench ? [] : [1 << at]))
    if (away.length > MOST_AWAY) return [0, ...away, away.reduce((all, bit) => all | bit, 0)]
    return away.reduce<readonly number[]>((sets, bit) => sets.concat(sets.map((set) => set | bit)), [0])
  }

  private begin(fetched: number): void {
    const car = fetched === 0 ? this.root : carWithKeysMoved(this.root, fetched, 0)
    let node: Node = {
      ...{ car, fetched, state: this.plight.state, shown: -1, waited: false },
      ...{ cost: 0, from: null, step: null, length: 0 },
    }
    for (const [at, key] of car.case.keys.entries())
      if (((fetched >> at) & 1) === 1)
        node = after(node, { do: 'fetch', key: key.id }, key.awaySeconds ?? NO_FIGURE, {})
    this.put(node)
  }

  private put(node: Node): void {
    const name = nameOf(node)
    const known = this.best.get(name)
    if (known !== undefined && known <= node.cost) return
    this.best.set(name, node.cost)
    this.queue.put(node, node.cost + this.least(node), node.length)
  }

  private reached({ car, state, shown }: Node): boolean {
    if (shown !== -1 || isStranded(car, state)) return false
    return this.goal === 'going' || this.teach.every((key) => startsCar(car, state, key))
  }

  private following(node: Node): readonly Node[] {
    return node.shown === -1 ? this.fromClosed(node) : this.fromOpen(node)
  }

  private fromClosed(node: Node): readonly Node[] {
    const { car, state, waited } = node
    const next: Node[] = []
    if (this.restores && state.list !== car.first.list)
      next.push(
        after(node, { do: 'restore' }, this.times.restore, { state: { ...state, list: car.first.list } }),
      )
    if (!canOpen(car, state.list)) return next
    let opening = node
    if (!waited && this.plight.waitSeconds > 0)
      opening = after(opening, { do: this.times.penaltyStep }, this.plight.waitSeconds, {})
    if (car.case.rule.gated) opening = after(opening, { do: 'enter-code' }, 0, {})
    const opensByWaiting = car.case.rule.opensWith.includes('timed-wait')
    if (opensByWaiting) opening = after(opening, { do: 'wait-ignition-on' }, this.times.wait, {})
    next.push(
      after(opening, { do: 'open' }, this.times.open, { state: open(car, state), shown: 0, waited: true }),
    )
    return next
  }

  private fromOpen(node: Node): readonly Node[] {
    const { car, state, shown } = node
    const next: Node[] = []
    // Of ways that are equally long the one put in last goes first, so the first keys of the plan come last here.
    for (const [at, key] of [...car.case.keys.entries()].reverse()) {
      if (((shown >> at) & 1) === 1) continue
      const then = show(car, state, at)
      if (then === state) continue
      let showing = node
      if (at === this.plight.flat && shown >= 0)
        showing = after(node, { do: 'change-cell', key: key.id }, 0, {})
      next.push(
        after(showing, { do: 'show', key: key.id }, this.times.show, {
          state: then,
          shown: shown | (1 << at),
        }),
      )
    }
    const enough = car.lists.size(state.taught) >= mostLeastKeys(car)
    next.push(
      after(node, { do: 'close' }, this.times.close, {
        state: enough ? commitAtClose(car, state) : breakOff(car, state),
        shown: -1,
      }),
    )
    return next
  }

  /** What at least is left to do, in seconds: sessions from here, or from the list that restoring gives. */
  private least({ car, state, shown }: Node): number {
    const { times } = this
    const restored = this.restores
      ? times.restore + this.leastFrom(car, car.first.list)
      : Number.POSITIVE_INFINITY
    if (shown === -1) return Math.min(this.leastFrom(car, state.list), restored)
    // Slots keep keys rather than identities in an open session, so what it holds is not seen here.
    if (this.goal === 'going' || car.case.rule.kind === 'numbered-slots') return times.close
    const taught = car.lists.set(state.taught)
    const held = car.case.rule.kind === 'replace-all' ? taught : taught | car.lists.set(state.list)
    return times.close + Math.min(this.missing(held) * times.show, restored)
  }

  private leastFrom(car: Car, list: number): number {
    const set = car.lists.set(list)
    if (this.goal === 'going') {
      if ((set & car.identitiesOnBench) !== 0) return 0
      return this.times.open + this.times.show + this.times.close
    }
    const missing = this.missing(set)
    if (missing === 0) return 0
    const shows = car.case.rule.kind === 'replace-all' ? this.missing(0) : missing
    return this.times.open + shows * this.times.show + this.times.close
  }

  /** How many identities meant to be taught are not in a set. */
  private missing(set: number): number {
    return bitsIn(this.meant & ~set)
  }

  /** A search that gave up: the best complete way among what was looked at, or none. */
  private anyWay(): Recovery | null {
    for (let node = this.queue.take(); node !== undefined; node = this.queue.take())
      if (this.reached(node)) return { ...this.told(node), proven: false }
    return null
  }

  private told(node: Node): Recovery {
    const steps: RecoveryStep[] = []
    for (let at: Node | null = node; at !== null; at = at.from) if (at.step !== null) steps.unshift(at.step)
    const { car, state } = node
    const starting = car.case.keys.findIndex((_, key) => startsCar(car, state, key))
    const startingKeys = [...car.case.keys.keys()].filter((key) => startsCar(car, state, key))
    const key = startingKeys.find((each) => each !== this.plight.flat) ?? starting
    const flat = key === this.plight.flat && !steps.some((step) => step.do === 'change-cell')
    const id = car.case.keys[key]?.id ?? ''
    return {
      way: wayOf(steps),
      steps: [...steps, { do: flat ? 'emergency-start-with' : 'start-with', key: id, seconds: 0 }],
      seconds: figure(node.cost),
      proven: true,
    }
  }
}

function after(
  node: Node,
  step: Omit<RecoveryStep, 'seconds'>,
  seconds: number,
  then: Partial<Pick<Node, 'state' | 'shown' | 'waited'>>,
): Node {
  return {
    ...node,
    ...then,
    cost: node.cost + seconds,
    from: node,
    step: { ...step, seconds: figure(seconds) },
    length: node.length + 1,
  }
}

function nameOf({ fetched, state, shown, waited }: Node): string {
  return `${fetched} ${state.list} ${state.taught} ${state.taken} ${shown} ${waited}`
}

function wayOf(steps: readonly RecoveryStep[]): RecoveryWay {
  for (const [done, way] of [
    ['restore', 'restore'],
    ['fetch', 'fetch'],
    ['open', 'reopen'],
  ] as const)
    if (steps.some((step) => step.do === done)) return way
  return 'use-key'
}
