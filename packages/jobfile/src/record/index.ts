/** @module The signed record of one job: what the handover document carries inside and `verify` proves. */
import type { Finding } from '@shearline/bus'
import { z } from 'zod'
import { canonicalJson } from '../chain/bytes.ts'
import {
  type ChainFindingCode,
  type Device,
  factName,
  treeHeadOfHashes,
  type Verifier,
  verifyFacts,
} from '../chain/index.ts'
import { compareFacts, type Fact } from '../facts/index.ts'

/** Everything a stranger needs to prove one job: its facts in fold order and the keys of the devices. */
export interface JobRecord {
  readonly format: 'shearline-record'
  readonly version: 1
  readonly job: string
  readonly facts: readonly Fact[]
  readonly devices: readonly Device[]
  /** The firm's device facts: who enrolled the devices, which were replaced or revoked. Left out when none are known. */
  readonly register?: readonly Fact[]
}

const recordForm = z.strictObject({
  format: z.literal('shearline-record'),
  version: z.literal(1),
  job: z.string(),
  facts: z.array(z.unknown()),
  devices: z.array(z.strictObject({ device: z.string(), name: z.string(), publicKey: z.string() })),
  register: z.array(z.unknown()).exactOptional(),
})

export type RecordFindingCode =
  | ChainFindingCode
  | 'not-a-record'
  | 'not-sealed'
  | 'facts-missing'
  | 'facts-added'
  | 'tree-head-wrong'
  | 'after-seal'

export interface RecordCheck {
  readonly proven: boolean
  readonly facts: number
  readonly signatures: number
  readonly links: number
  readonly sealed: boolean
  readonly record: JobRecord | null
  readonly findings: readonly Finding<RecordFindingCode>[]
}

/**
 * Makes the record of a job from its facts and the devices that wrote them. `register` is the facts of the job
 * `registerJob`; with them the record says which devices were enrolled and revoked.
 */
export function makeRecord(
  job: string,
  facts: readonly Fact[],
  devices: readonly Device[],
  register: readonly Fact[] = [],
): JobRecord {
  const own = facts.filter((fact) => fact.job === job).sort(compareFacts)
  const used = new Set(own.map((fact) => fact.device))
  const listed = devices
    .filter((device) => used.has(device.device))
    .sort((a, b) => (a.device < b.device ? -1 : 1))
  const record: JobRecord = { format: 'shearline-record', version: 1, job, facts: own, devices: listed }
  return register.length === 0 ? record : { ...record, register: [...register].sort(compareFacts) }
}

/** The record's bytes: RFC 8785 canonical JSON, so that the same record has the same hash everywhere. */
export function recordText(record: JobRecord): string {
  return canonicalJson(record)
}

/**
 * Proves a record: every fact well formed and signed, links whole, and the latest seal's count and tree head
 * matching the facts before it. Facts written after the seal are named. Never throws.
 */
export async function verifyRecord(value: unknown, verifier: Verifier): Promise<RecordCheck> {
  const form = recordForm.safeParse(value)
  if (!form.success) {
    const issue = form.error.issues[0]
    const finding: Finding<RecordFindingCode> = {
      code: 'not-a-record',
      severity: 'error',
      where: { part: 'record' },
      what: `This is not a Shearline record at ${issue?.path.join('.') || '(whole)'}: ${issue?.message ?? ''}.`,
      doNext: 'Ask for the document or record again.',
    }
    return {
      proven: false,
      facts: 0,
      signatures: 0,
      links: 0,
      sealed: false,
      record: null,
      findings: [finding],
    }
  }
  const check = await verifyFacts(form.data.facts, form.data.devices, verifier, {
    ...(form.data.register === undefined ? {} : { register: form.data.register }),
  })
  const findings: Finding<RecordFindingCode>[] = [...check.findings]
  const { register: _raw, ...plain } = form.data
  const register = check.registerFacts
  const record: JobRecord = { ...plain, facts: check.facts, ...(register.length === 0 ? {} : { register }) }
  const sealAt = check.facts.findLastIndex((fact) => fact.kind === 'document-sealed')
  const seal = check.facts[sealAt]
  if (check.facts.some((fact) => fact.job !== record.job)) {
    findings.push({
      code: 'other-job',
      severity: 'error',
      where: { part: 'record' },
      what: `The record names job ${record.job}, its facts name another.`,
      doNext: 'Ask for the record again.',
    })
  }
  if (seal === undefined) {
    findings.push({
      code: 'not-sealed',
      severity: 'error',
      where: { part: 'record' },
      what: 'The record holds no seal, so nothing proves that it is whole.',
      doNext: 'Seal the job and export it again.',
    })
  } else {
    const before = check.hashes.slice(0, sealAt)
    const part = factName(sealAt + 1, seal.kind)
    const counted = seal.body.count
    if (counted !== before.length) {
      const missing = typeof counted === 'number' && counted > before.length
      findings.push({
        code: missing ? 'facts-missing' : 'facts-added',
        severity: 'error',
        where: { part },
        what: `The seal counts ${String(counted)} facts, the record holds ${before.length} before it.`,
        doNext: 'Fetch the record again from the device that sealed it.',
      })
    } else if (seal.body.root !== treeHeadOfHashes(before)) {
      findings.push({
        code: 'tree-head-wrong',
        severity: 'error',
        where: { part },
        what: 'The facts are not the ones that were sealed.',
        doNext: 'Fetch the record again from the device that sealed it.',
      })
    }
    if (sealAt < check.facts.length - 1) {
      findings.push({
        code: 'after-seal',
        severity: 'warning',
        where: { part: factName(sealAt + 2, check.facts[sealAt + 1]?.kind ?? '') },
        what: 'Facts were recorded after the seal; the document does not cover them.',
        doNext: 'Seal the job again.',
      })
    }
  }
  return {
    proven: !findings.some((finding) => finding.severity === 'error'),
    facts: check.facts.length,
    signatures: check.signaturesRight,
    links: check.linksRight,
    sealed: seal !== undefined,
    record,
    findings,
  }
}
