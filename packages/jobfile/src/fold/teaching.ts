import type { Body } from '../facts/index.ts'
import type { Collected } from './collect.ts'
import type { JobState } from './state.ts'

/** The teaching session as it stands: rule, rehearsal, backup, who was taught since it last opened, open break-off. */
export function foldTeaching(facts: Collected): JobState['teaching'] {
  const opened = facts.last('session-opened')
  const closed = facts.last('session-closed')
  const broke = facts.last('broke-off')
  const mended = facts.last('break-off-mended')
  const closedAfterOpening = opened !== null && closed !== null && closed.order > opened.order
  const brokeAfterOpening = opened !== null && broke !== null && broke.order > opened.order
  const breakOpen = broke !== null && (mended === null || mended.order < broke.order)
  const rule = facts.last('rule-chosen')?.body ?? null
  // A broken session that commits only at its close leaves the car as it was: what it took counts for nothing
  // (rehearsal rules ENR-05, ENR-09). An unknown rule is taken as the worse.
  const keepsPart =
    rule !== null &&
    rule.onBreak !== 'list-lost' &&
    (rule.commits === 'each-key' || rule.onBreak === 'keep-so-far')
  const addsUp = keepsPart && !rewritesList(rule)
  const taught = facts
    .all('key-taught')
    .filter(
      (entry) =>
        addsUp || ((opened === null || entry.order > opened.order) && (keepsPart || !brokeAfterOpening)),
    )
  const lastCount = closedAfterOpening ? closed.body.carCount : undefined
  return {
    rule,
    rehearsal: facts.last('rehearsal-read')?.body ?? null,
    backup: facts.last('backup-proven')?.body ?? null,
    backupWaived: facts.last('backup-waived')?.body.because ?? null,
    sessionOpen: opened !== null && !closedAfterOpening && !brokeAfterOpening,
    sessionClosed: closedAfterOpening,
    taught: [...new Set(taught.map((entry) => entry.body.key))],
    carCount:
      lastCount ?? taught.findLast((entry) => entry.body.carCount !== undefined)?.body.carCount ?? null,
    breakOff: breakOpen && broke !== null ? broke.body : null,
    brokeAt: breakOpen && broke !== null ? broke.at : null,
    shown: facts
      .all('key-taught')
      .filter((entry) => opened === null || entry.order > opened.order)
      .map((entry) => entry.body.key),
    openedAt: opened?.at ?? null,
    stepsSince: facts
      .all('step-done')
      .filter((entry) => entry.order > Math.max(opened?.order ?? -1, broke?.order ?? -1))
      .map((entry) => ({ ...entry.body, at: entry.at })),
  }
}

/** True when a session under this rule leaves only the keys it is shown; a rule that is not known counts as such. */
export function rewritesList(rule: Pick<Body<'rule-chosen'>, 'kind'> | null): boolean {
  return rule === null || rule.kind === 'replace-all' || rule.kind === 'unknown'
}

/**
 * The place in fold order after which a test says what a key does now: where a session had broken off, the last time
 * the list was touched since; -1 when none broke off (what an interruption left is known only by trying every key,
 * practice 1.2.7).
 */
export function touchedSince(facts: Collected): number {
  const broke = facts.last('broke-off')
  if (broke === null) return -1
  const later = (['session-opened', 'key-taught', 'session-closed'] as const).map(
    (kind) => facts.last(kind)?.order ?? -1,
  )
  return Math.max(broke.order, ...later)
}
