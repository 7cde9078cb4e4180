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
  const keepsPart = rule !== null && (rule.commits === 'each-key' || rule.onBreak === 'keep-so-far')
  const addsUp = keepsPart && rule.kind.startsWith('append')
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
  }
}
