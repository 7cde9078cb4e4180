import type { Tumbler } from '../fold/state.ts'
import { rewritesList } from '../fold/teaching.ts'
import type { Explained, Known } from './evidence.ts'
import { stand, type Want } from './want.ts'

/** Keys: said, on the bench, stored before and after reconcile; every function answered before and after. */
export function keys(job: Known, explained: Explained): Tumbler {
  const { tally, grid } = job
  const wants: Want[] = [
    { code: 'keys-not-asked', chapter: 'call', met: tally.saidToExist !== null },
    { code: 'no-key-labelled', chapter: 'arrival', met: job.keys.length > 0 },
    { code: 'count-before-missing', chapter: 'arrival', met: job.countRead.before },
    {
      code: 'tests-before-open',
      chapter: 'arrival',
      met: job.keys.length > 0 && grid.completeBefore,
      params: { count: grid.openBefore },
    },
    {
      code: 'tests-after-open',
      chapter: 'prove',
      met: job.keys.length > 0 && grid.completeAfter,
      params: { count: grid.openAfter },
    },
    { code: 'count-after-missing', chapter: 'prove', met: job.countRead.after },
  ]
  // With no key labelled yet nothing was held against the numbers: that is a gap, not a contradiction.
  for (const difference of job.keys.length === 0 ? [] : tally.differences) {
    wants.push({
      code: 'difference-unexplained',
      chapter:
        difference.code.startsWith('after') || difference.code === 'stored-key-does-not-start'
          ? 'prove'
          : 'arrival',
      met: difference.reason !== null,
      conflict: true,
      params: { difference: difference.code, count: difference.count },
    })
  }
  for (const { key, done } of job.retest) {
    wants.push({ code: 'retest-after-break', chapter: 'prove', met: done, params: { key } })
  }
  for (const cell of grid.lost) {
    const met = explained.has(`function-lost:${cell.key}:${cell.function}`)
    wants.push({
      code: 'function-lost',
      chapter: 'prove',
      met,
      conflict: true,
      params: { key: cell.key, function: cell.function },
    })
  }
  return stand('keys', wants)
}

/** Labels of the keys a session has to take: new ones always, existing ones too when the list is rewritten. */
export function keysToTeach(job: Known): readonly string[] {
  const rewrites = rewritesList(job.teaching.rule)
  return job.keys
    .filter((key) => key.onBench && key.cloneOf === null && (key.origin === 'new' || rewrites))
    .map((key) => key.id)
}

/** Teaching: rule chosen, rehearsal read, backup proven, every key taught, session closed, no open break-off. */
export function teaching(job: Known): Tumbler {
  const { rule, rehearsal, backup, backupWaived, sessionOpen, sessionClosed, taught, breakOff } = job.teaching
  const opened = sessionOpen || sessionClosed || taught.length > 0 || breakOff !== null
  const wants: Want[] = [
    { code: 'rule-not-chosen', chapter: 'plan', met: rule !== null },
    { code: 'rehearsal-not-read', chapter: 'plan', met: rehearsal !== null },
    { code: 'backup-not-proven', chapter: 'backup', met: backup !== null || backupWaived !== null },
    { code: 'session-not-opened', chapter: 'teach', met: opened },
  ]
  if (backup !== null) {
    wants.push({
      code: 'backup-reads-differ',
      chapter: 'backup',
      met: backup.firstRead === backup.secondRead,
      conflict: true,
    })
  }
  const toTeach = keysToTeach(job)
  const order = rehearsal?.order.filter((key) => toTeach.includes(key)) ?? []
  for (const key of [...order, ...toTeach.filter((label) => !order.includes(label))]) {
    wants.push({ code: 'key-not-taught', chapter: 'teach', met: taught.includes(key), params: { key } })
  }
  wants.push({ code: 'session-not-closed', chapter: 'teach', met: sessionClosed })
  if (breakOff !== null) {
    wants.push({
      code: 'break-off-open',
      chapter: 'teach',
      met: false,
      conflict: true,
      params: { after: breakOff.after },
    })
  }
  return stand('teaching', wants)
}

/** Record: chain intact, cautions read, price and retention set, document sealed over everything recorded. */
export function record(job: Known): Tumbler {
  const wants: Want[] = [{ code: 'chain-broken', chapter: 'handover', met: !job.chainBroken, conflict: true }]
  // Which cautions apply hangs on these answers.
  for (const { question, stands } of job.policy?.questions ?? []) {
    if (!question.startsWith('site.')) continue
    const params = { question, what: question }
    wants.push({ code: 'site-question-open', chapter: 'arrival', met: stands === 'met', params })
  }
  for (const caution of job.cautionsWanted) {
    wants.push({
      code: 'caution-not-read',
      chapter: 'handover',
      met: job.cautionsRead.includes(caution),
      params: { caution },
    })
  }
  wants.push({ code: 'retention-not-set', chapter: 'handover', met: job.retention !== null })
  wants.push({ code: 'price-not-agreed', chapter: 'handover', met: job.price !== null })
  wants.push({ code: 'not-sealed', chapter: 'handover', met: job.seal !== null })
  if (job.seal !== null) {
    wants.push({
      code: 'changed-since-seal',
      chapter: 'handover',
      met: job.factsSinceSeal === 0,
      params: { count: job.factsSinceSeal },
    })
  }
  return stand('record', wants)
}
