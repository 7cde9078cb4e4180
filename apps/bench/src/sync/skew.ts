/** @module How far this device's clock is from the server's, and whose clock runs ahead of what they send. */
import type { Device, Fact } from '@shearline/jobfile'

/** Clocks that differ by less than this are as good as equal. Milliseconds. */
const worthSaying = 2 * 60_000

/** A device whose facts are stamped later than now. */
export interface AheadDevice {
  readonly name: string
  readonly minutes: number
}

/** What is known of clocks. Minutes are whole; 0 is as good as equal. */
export interface Clocks {
  /** How far this device is ahead of the server; negative when it is behind. */
  readonly minutes: number
  readonly others: readonly AheadDevice[]
}

/**
 * How far this device's clock is ahead of the server's, in milliseconds: the server's `Date` (RFC 9110, 6.6.1,
 * whole seconds) against the middle of question and answer here. Null when the header is no date, or the answer
 * took so long that it tells nothing.
 */
export function clockAhead(date: string | null, askedAt: number, answeredAt: number): number | null {
  const server = date === null ? Number.NaN : Date.parse(date)
  if (Number.isNaN(server) || answeredAt - askedAt > worthSaying) return null
  // Half a second: the header is cut off to whole seconds.
  return (askedAt + answeredAt) / 2 - (server + 500)
}

/** Whole minutes worth saying of a difference in milliseconds, else 0. */
export function minutesOf(milliseconds: number): number {
  return Math.abs(milliseconds) < worthSaying ? 0 : Math.round(milliseconds / 60_000)
}

let clocks: Clocks = { minutes: 0, others: [] }
let ahead = 0
const watchers = new Set<() => void>()

/** What is known of clocks; the same object until something changes. */
export function clockState(): Clocks {
  return clocks
}

/** Calls back whenever that changes. */
export function watchClocks(watcher: () => void): () => void {
  watchers.add(watcher)
  return () => watchers.delete(watcher)
}

function show(next: Clocks): void {
  if (next.minutes === clocks.minutes && next.others === clocks.others) return
  clocks = next
  for (const watcher of [...watchers]) watcher()
}

/** Hears the server's clock with an answer. */
export function hearClock(date: string | null, askedAt: number, answeredAt: number): void {
  const heard = clockAhead(date, askedAt, answeredAt)
  if (heard === null) return
  ahead = heard
  show({ ...clocks, minutes: minutesOf(heard) })
}

/** Looks whether other devices stamped facts that just arrived later than the server's now. */
export function hearFacts(facts: readonly Fact[], devices: readonly Device[], own: string | null): void {
  const now = Date.now() - ahead
  let others = clocks.others
  for (const { device, name } of devices) {
    if (device === own) continue
    const last = facts.findLast((fact) => fact.device === device)
    const minutes = last === undefined ? 0 : minutesOf(Date.parse(last.at) - now)
    const known = others.find((other) => other.name === name)
    if (minutes <= (known?.minutes ?? 0)) continue
    others = [...others.filter((other) => other.name !== name), { name, minutes }]
  }
  show({ ...clocks, others })
}
