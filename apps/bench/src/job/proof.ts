/** @module Whether the facts of a job are as their devices wrote them. */
import { type Device, type Fact, Verifier, verifyFacts } from '@shearline/jobfile'

/** What is to be proven; the answer is whether it is damaged. */
export interface ProofAsked {
  readonly facts: readonly Fact[]
  readonly devices: readonly Device[]
}

/** Findings that mean the record itself is damaged; an unknown device is only not known yet. */
const damaging = new Set([
  'not-a-fact',
  'device-key-mismatch',
  'signature-wrong',
  'link-broken',
  'fact-twice',
])

const verifier = new Verifier(crypto.subtle)

/** True when a form, a signature or a link of these facts is wrong. */
export async function isDamaged(facts: readonly Fact[], devices: readonly Device[]): Promise<boolean> {
  const { findings } = await verifyFacts(facts, devices, verifier)
  return findings.some((finding) => damaging.has(finding.code))
}
