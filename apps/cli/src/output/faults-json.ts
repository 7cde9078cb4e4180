/** @module The comparison of scans as JSON: every text said in English, with the code and parameters beside it. */

import { say, sayEvidence, sayFaultFinding } from '@shearline/jobfile'
import {
  complaints,
  type FaultComparison,
  type FaultLine,
  leastCauses,
  type WorkEvent,
} from '@shearline/keywork'

/** What `shearline faults --json` prints. Fields are added, never changed. */
export function faultsJson(comparison: FaultComparison, events: readonly WorkEvent[]): object {
  const { causes, provenLeast } = leastCauses(comparison, { events })
  return {
    faults: comparison.faults.map(line),
    unitsRead: comparison.unitsRead,
    unitNames: comparison.unitNames,
    causes: {
      causes: causes.map(({ event, explains }) => ({ event: eventJson(event), explains })),
      provenLeast,
    },
    complaints: complaints(comparison),
    findings: comparison.findings.map((finding) => ({ ...finding, ...sayFaultFinding('en', finding) })),
  }
}

/** Why the work raised a fault, in English. */
export function reasonText({ explanation }: FaultLine): string {
  return explanation === null ? '' : say('en', `explanation.${explanation.rule}`)
}

/** What speaks for an event, in English. */
export function eventText({ evidence }: WorkEvent): string {
  return sayEvidence('en', evidence)
}

function line(fault: FaultLine): object {
  const { unit, code, explanation, evidence, life, confidence, airbag, needsAttention } = fault
  return {
    unit,
    code,
    class: fault.class,
    explanation:
      explanation === null
        ? null
        : {
            rule: explanation.rule,
            text: reasonText(fault),
            source: say('en', `explanation-source.${explanation.rule}`),
            code: `explanation.${explanation.rule}`,
            params: {},
          },
    confidence,
    evidence: [
      ...life.map((state) => `${state.phase}: ${state.claims.join(', ')}`),
      ...evidence.map(plainEvidence),
    ],
    evidenceCodes: evidence,
    life,
    airbag,
    needsAttention,
  }
}

/** A phase stands in JSON by its code, as everywhere else in this answer. */
function plainEvidence(evidence: FaultLine['evidence'][number]): string {
  const said = sayEvidence('en', evidence)
  const { phase } = evidence.params
  return typeof phase === 'string' ? `${phase}${said.slice(said.indexOf(':'))}` : said
}

function eventJson(event: WorkEvent): object {
  const { code, params } = event.evidence
  return { ...event, evidence: eventText(event), evidenceCode: code, evidenceParams: params }
}
