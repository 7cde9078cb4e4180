import type { Collected } from './collect.ts'
import type { JobState, SecretOnRecord } from './state.ts'

type Agreed = Pick<
  JobState,
  | 'call'
  | 'appointment'
  | 'quote'
  | 'policyAnswers'
  | 'planAccepted'
  | 'steps'
  | 'photos'
  | 'signatures'
  | 'handedOver'
  | 'secrets'
>

/** What was agreed, shown and signed, and the sealed secrets with every opening of them. */
export function foldAgreed(facts: Collected): Agreed {
  const made = facts.last('appointment-made')
  const ended = facts.last('appointment-ended')
  const handed = facts.last('vehicle-handed-over')
  return {
    call: facts.last('call-taken')?.body ?? null,
    appointment:
      made === null
        ? null
        : { made: made.body, ended: ended !== null && ended.order > made.order ? ended.body : null },
    quote: facts.last('quote-given')?.body ?? null,
    policyAnswers: facts.all('policy-answered').map((entry) => entry.body),
    planAccepted: facts.last('plan-accepted')?.body ?? null,
    steps: facts.all('step-done').map((entry) => entry.body),
    photos: facts.all('photo-attached').map((entry) => ({ ...entry.body, at: entry.at })),
    signatures: facts.all('signature-drawn').map((entry) => entry.body),
    handedOver: handed === null ? null : { ...handed.body, at: handed.at },
    secrets: foldSecrets(facts),
  }
}

function foldSecrets(facts: Collected): readonly SecretOnRecord[] {
  const openings = facts.all('secret-opened')
  return facts.all('secret-sealed').map(({ at, body }) => ({
    what: body.what,
    blob: body.blob,
    sealedAt: at,
    opened: openings
      .filter((opening) => opening.body.blob === body.blob)
      .map((opening) => ({ at: opening.at, by: opening.by, reason: opening.body.reason })),
  }))
}
