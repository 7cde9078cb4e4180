import type { JobState, Tumbler } from '../fold/state.ts'
import { rewritesList } from '../fold/teaching.ts'
import { stand, type Want } from './want.ts'

/** A job as far as it is folded before its tumblers stand. */
export type Known = Omit<JobState, 'tumblers' | 'inLine' | 'next'>

/** Codes of the differences that somebody explained in writing. */
export type Explained = ReadonlySet<string>

/** Authority: identity and entitlement seen as originals and matched, nobody refused, consents signed. */
export function authority(job: Known): Tumbler {
  const wants: Want[] = [{ code: 'job-not-opened', chapter: 'call', met: job.opened !== null }]
  for (const role of ['identity', 'entitlement'] as const) {
    const seen = job.authority.seen.findLast((document) => document.role === role)
    const code = role === 'identity' ? 'identity-document-missing' : 'entitlement-missing'
    wants.push({ code, chapter: 'authority', met: seen !== undefined })
    if (seen === undefined) continue
    const params = { document: seen.document }
    wants.push({
      code: 'document-not-original',
      chapter: 'authority',
      met: seen.original,
      conflict: true,
      params,
    })
    wants.push({
      code: 'document-not-matched',
      chapter: 'authority',
      met: seen.matched,
      conflict: true,
      params,
    })
  }
  wants.push(...policyWants(job))
  const decision = job.authority.decision
  if (decision?.decision === 'refused') {
    wants.push({
      code: 'work-refused',
      chapter: 'authority',
      met: false,
      conflict: true,
      params: { reason: decision.reason },
    })
  }
  if (decision?.decision === 'held') {
    wants.push({
      code: 'work-held',
      chapter: 'authority',
      met: false,
      conflict: true,
      params: { reason: decision.reason },
    })
  }
  // An unknown rule is treated as replace-all (product.md, 1): absent keys may stop working.
  const mayDrop = rewritesList(job.teaching.rule)
  const someAbsent = job.absentKeys.length > 0 || (job.tally.unaccounted ?? 0) > 0
  if (mayDrop && someAbsent) {
    const consent = job.authority.consents.findLast((given) => given.about === 'absent-keys-stop')
    const named = job.absentKeys.every((name) => consent?.absentKeys.includes(name) ?? false)
    const count = Math.max(job.absentKeys.length, job.tally.unaccounted ?? 0)
    wants.push({
      code: 'consent-absent-keys',
      chapter: 'plan',
      met: consent !== undefined && named,
      params: { count },
    })
  }
  if (job.opened?.work === 'all-keys-lost') {
    const given = job.authority.consents.some((consent) => consent.about === 'no-check-before')
    wants.push({ code: 'consent-no-check-before', chapter: 'authority', met: given })
  }
  return stand('authority', wants)
}

/** What the job's policy pack asks of authority and contract: a yes, or a no with a reason. */
function policyWants(job: Known): readonly Want[] {
  const asked = job.policy?.questions.filter(({ question }) => !question.startsWith('site.')) ?? []
  return asked.map(({ question, words, stands }): Want => {
    const refused = stands === 'refused'
    return {
      code: refused ? 'policy-answer-no' : 'policy-question-open',
      chapter: 'authority',
      met: stands === 'met',
      conflict: refused,
      params: { question, what: words ?? question },
    }
  })
}

/** Identity: two sources of the VIN that agree and are well formed; a blank compared with the car. */
export function identity(job: Known): Tumbler {
  const sources = new Set(job.vins.map((reading) => reading.source))
  const wants: Want[] = [
    { code: 'vin-missing', chapter: 'arrival', met: job.vins.length > 0 },
    { code: 'vin-second-source', chapter: 'arrival', met: sources.size >= 2 },
  ]
  for (const reading of job.vins) {
    if (!reading.wellFormed) {
      wants.push({
        code: 'vin-not-well-formed',
        chapter: 'arrival',
        met: false,
        conflict: true,
        params: { source: reading.source },
      })
    }
  }
  if (job.vins.length > 1) {
    wants.push({ code: 'vin-sources-disagree', chapter: 'arrival', met: job.vin !== null, conflict: true })
  }
  const blank = job.blanks.at(-1)
  wants.push({ code: 'blank-not-chosen', chapter: 'prepare', met: blank !== undefined })
  if (blank !== undefined) {
    wants.push({
      code: 'blank-not-compared',
      chapter: 'prepare',
      met: blank.fits !== null,
      params: { item: blank.item },
    })
    if (blank.fits === false) {
      wants.push({
        code: 'blank-does-not-fit',
        chapter: 'prepare',
        met: false,
        conflict: true,
        params: { item: blank.item },
      })
    }
  }
  return stand('identity', wants)
}

/** Power: above the floor from the first session step to the last, measured before, during and after. */
export function power(job: Known, explained: Explained): Tumbler {
  const { setting, readings, minimumVolts } = job.supply
  const has = (during: string) => readings.some((reading) => reading.during === during)
  const wants: Want[] = [
    { code: 'supply-floor-missing', chapter: 'plan', met: setting !== null },
    { code: 'supply-at-rest-missing', chapter: 'arrival', met: has('rest') },
    { code: 'supply-during-missing', chapter: 'teach', met: has('session') },
    { code: 'supply-after-missing', chapter: 'prove', met: has('after') },
  ]
  if (setting !== null && minimumVolts !== null) {
    const params = { minimum: minimumVolts, floor: setting.floorVolts }
    const met = minimumVolts >= setting.floorVolts || explained.has('supply-below-floor')
    wants.push({ code: 'supply-below-floor', chapter: 'teach', met, conflict: true, params })
  }
  return stand('power', wants)
}

/** Faults: read before and after, every code classed, nothing left that nobody has acknowledged. */
export function faults(job: Known): Tumbler {
  const phases = new Set(job.scans.map((scan) => scan.phase))
  const cleared = phases.has('cleared') || phases.has('cycled')
  const wants: Want[] = []
  // With no working key nothing can be read first; the customer has signed for that (practice.md 2.1, 2).
  const excused =
    job.opened?.work === 'all-keys-lost' &&
    job.authority.consents.some((given) => given.about === 'no-check-before')
  if (!excused) wants.push({ code: 'scan-before-missing', chapter: 'arrival', met: phases.has('before') })
  wants.push({
    code: 'scan-after-missing',
    chapter: 'faults',
    met: phases.has('after') || phases.has('cycled'),
  })
  if (cleared) wants.push({ code: 'scan-cycled-missing', chapter: 'faults', met: phases.has('cycled') })
  if (phases.has('after') || phases.has('cycled')) {
    for (const line of job.faults.faults) {
      if (!line.needsAttention) continue
      const met = job.acknowledged.some((known) => known.unit === line.unit && known.code === line.code)
      const code =
        line.class === 'raised-by-work'
          ? 'fault-from-work-remains'
          : line.class === 'not-comparable'
            ? 'unit-not-compared'
            : 'fault-unexplained'
      wants.push({
        code,
        chapter: 'faults',
        met,
        conflict: true,
        params: { unit: line.unit, code: line.code },
      })
    }
  }
  return stand('faults', wants)
}
