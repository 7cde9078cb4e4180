import type { Finding } from '@shearline/bus'
import { compareFacts, type Fact } from '../facts/envelope.ts'
import { instantMilliseconds } from '../words/instants.ts'

export type ClockFindingCode =
  | 'before-its-predecessor'
  | 'before-what-it-names'
  | 'written-after-receipt'
  | 'in-the-future'
  | 'clock-ahead'
  | 'clock-behind'
  | 'clock-changed'

export type ClockFinding = Finding<ClockFindingCode>

/** How far a device's clock is from the reference, milliseconds, positive when it runs ahead; null where unknown. */
export interface DeviceSkew {
  readonly device: string
  readonly atLeast: number | null
  readonly atMost: number | null
}

export interface ClockCheck {
  readonly devices: readonly DeviceSkew[]
  readonly findings: readonly ClockFinding[]
}

export interface ClockOptions {
  /** When facts were received, by identifier: UTC instants of one reference clock, such as the server's. */
  readonly received?: ReadonlyMap<string, string>
  /** A device whose own clock is that reference: its facts are right by definition. */
  readonly reference?: string
  /** The present instant of the reference, milliseconds since 1970 UTC. */
  readonly now?: number
  /** What is taken as jitter, milliseconds; five minutes when left out, the acceptable skew of RFC 4120 section 8.2. */
  readonly tolerance?: number
}

const usualTolerance = 5 * 60_000

/** Members of bodies that name an earlier fact: what is named was written first. */
const naming: ReadonlyMap<string, string> = new Map([
  ['corrected', 'fact'],
  ['hold-lifted', 'hold'],
  ['signature-drawn', 'fact'],
])

/**
 * Finds facts whose `at` contradicts the record, and bounds every device's clock error. A fact cannot be older than
 * the one before it on its device, nor than a fact it names, nor newer than its receipt. Receipts bound a clock from
 * below (it is at least so far ahead), causes from above. Nothing is reordered. Pure.
 */
export function checkClocks(facts: readonly Fact[], options: ClockOptions = {}): ClockCheck {
  const tolerance = options.tolerance ?? usualTolerance
  const ordered = [...facts].sort(compareFacts)
  const findings = [
    ...contradictions(ordered, tolerance),
    ...ordered.flatMap((fact) => outsideFindings(fact, options, tolerance)),
  ]
  const devices = bounds(ordered, options)
  for (const { device, atLeast, atMost } of devices) {
    if (atLeast !== null && atMost !== null && atLeast - atMost > tolerance)
      findings.push(
        finding(
          'clock-changed',
          `device ${device}`,
          'Its clock was set forward or back while it recorded.',
          {},
        ),
      )
    else if (atLeast !== null && atLeast > tolerance)
      findings.push(
        finding('clock-ahead', `device ${device}`, `Its clock runs at least ${minutes(atLeast)} ahead.`, {
          minutes: wholeMinutes(atLeast),
        }),
      )
    else if (atMost !== null && -atMost > tolerance)
      findings.push(
        finding('clock-behind', `device ${device}`, `Its clock runs at least ${minutes(-atMost)} behind.`, {
          minutes: wholeMinutes(-atMost),
        }),
      )
  }
  return { devices, findings }
}

/**
 * The part of checkClocks that the facts of a job show by themselves: a fact older than the one before it on its
 * device, or than a fact it names. Facts must be in fold order.
 */
export function contradictions(ordered: readonly Fact[], tolerance: number = usualTolerance): ClockFinding[] {
  const findings: ClockFinding[] = []
  const newest = new Map<string, Fact>()
  let device = ''
  let top: Fact | undefined
  for (const fact of ordered) {
    // Most facts in a row are of one device: the map is only asked when it changes.
    if (fact.device !== device) {
      if (top !== undefined) newest.set(device, top)
      device = fact.device
      top = newest.get(device)
    }
    // In fold order a smaller number after a larger one means that the later fact says it is older.
    if (top === undefined || fact.seq > top.seq) {
      top = fact
      continue
    }
    const by = gap(top.at, fact.at)
    if (by > tolerance && fact.seq !== top.seq)
      findings.push(
        finding(
          'before-its-predecessor',
          nameOf(top),
          `It says it is ${minutes(by)} older than a fact its device wrote before it (${nameOf(fact)}).`,
          { minutes: wholeMinutes(by), fact: top.id },
        ),
      )
  }
  let byId: Map<string, Fact> | null = null
  for (const fact of ordered) {
    const member = naming.get(fact.kind)
    if (member === undefined) continue
    byId ??= new Map(ordered.map((one) => [one.id, one]))
    const named = byId.get(String(fact.body[member]))
    const by = named === undefined || named.device === fact.device ? 0 : gap(fact.at, named.at)
    if (named !== undefined && by > tolerance)
      findings.push(
        finding(
          'before-what-it-names',
          nameOf(fact),
          `It names a fact that says it was written ${minutes(by)} later (${nameOf(named)}).`,
          { minutes: wholeMinutes(by), fact: fact.id },
        ),
      )
  }
  return findings
}

function outsideFindings(fact: Fact, { received, now }: ClockOptions, tolerance: number): ClockFinding[] {
  const at = instantMilliseconds(fact.at)
  if (at === null) return []
  const arrived = instantMilliseconds(received?.get(fact.id) ?? '')
  if (arrived !== null && at - arrived > tolerance)
    return [
      finding(
        'written-after-receipt',
        nameOf(fact),
        `It says it was written ${minutes(at - arrived)} after it was received.`,
        { minutes: wholeMinutes(at - arrived), fact: fact.id },
      ),
    ]
  if (now !== undefined && at - now > tolerance)
    return [
      finding('in-the-future', nameOf(fact), `It says it will be written in ${minutes(at - now)}.`, {
        minutes: wholeMinutes(at - now),
        fact: fact.id,
      }),
    ]
  return []
}

/**
 * Bounds of each device's error. Written as differences, `skew(b) <= skew(a) + d`, they are shortest paths: a fact of
 * `b` that names one of `a` gives d = at(b) - at(a); a receipt of a fact of `a` gives `0 <= skew(a) + (receipt - at)`.
 */
function bounds(ordered: readonly Fact[], { received, reference }: ClockOptions): readonly DeviceSkew[] {
  const names = [...new Set(ordered.map((fact) => fact.device))].sort()
  const nodes = ['', ...names]
  const place = new Map(nodes.map((name, index) => [name, index]))
  const far = nodes.map((_, row) => nodes.map((_, column) => (row === column ? 0 : Number.POSITIVE_INFINITY)))
  const least = (from: number | undefined, to: number | undefined, by: number) => {
    const row = from === undefined ? undefined : far[from]
    if (row !== undefined && to !== undefined && by < (row[to] ?? 0)) row[to] = by
  }
  if (reference !== undefined) {
    least(place.get(''), place.get(reference), 0)
    least(place.get(reference), place.get(''), 0)
  }
  const byId = new Map(ordered.map((fact) => [fact.id, fact]))
  for (const fact of ordered) {
    const at = instantMilliseconds(fact.at) ?? 0
    const arrived = instantMilliseconds(received?.get(fact.id) ?? '')
    if (arrived !== null) least(place.get(fact.device), 0, arrived - at)
    const member = naming.get(fact.kind)
    const named = member === undefined ? undefined : byId.get(String(fact.body[member]))
    if (named !== undefined && named.device !== fact.device)
      least(place.get(named.device), place.get(fact.device), at - (instantMilliseconds(named.at) ?? 0))
  }
  for (const [middle, through] of far.entries())
    for (const row of far)
      for (const [to, step] of through.entries()) {
        const way = (row[middle] ?? 0) + step
        if (way < (row[to] ?? 0)) row[to] = way
      }
  return names.map((device, index) => {
    const atMost = far[0]?.[index + 1] ?? Number.POSITIVE_INFINITY
    const back = far[index + 1]?.[0] ?? Number.POSITIVE_INFINITY
    return {
      device,
      atLeast: Number.isFinite(back) ? 0 - back : null,
      atMost: Number.isFinite(atMost) ? atMost : null,
    }
  })
}

/** Milliseconds from one instant to another; negative when the other is earlier. */
function gap(from: string, to: string): number {
  return from === to ? 0 : (instantMilliseconds(to) ?? 0) - (instantMilliseconds(from) ?? 0)
}

function nameOf(fact: Fact): string {
  return `fact ${fact.seq} of ${fact.device} (${fact.kind})`
}

function wholeMinutes(milliseconds: number): number {
  return Math.round(milliseconds / 60_000)
}

function minutes(milliseconds: number): string {
  const whole = wholeMinutes(milliseconds)
  return whole === 1 ? '1 minute' : `${whole} minutes`
}

function finding(
  code: ClockFindingCode,
  part: string,
  what: string,
  params: Readonly<Record<string, string | number>>,
): ClockFinding {
  const doNext = 'Look at the clock of the device, set it right, and note in the job which times are meant.'
  return { code, severity: 'warning', where: { part }, what, doNext, params }
}
