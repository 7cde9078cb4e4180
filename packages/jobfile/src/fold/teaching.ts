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
  const taught = facts.all('key-taught')
  const lastCount = closedAfterOpening ? closed.body.carCount : undefined
  return {
    rule: facts.last('rule-chosen')?.body ?? null,
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
