import type { z } from 'zod'
import type { Body, Fact, Kind, retentionClass } from '../facts/index.ts'

export type RetentionClass = z.infer<typeof retentionClass>

/** What has to go when a class is over: the content of facts, or the blobs they name. */
export type HeldAs = 'body' | 'blob'

/** How a fact holds what is kept: its class, and whether its content or its blob is what the clock is for. */
interface Holding {
  readonly class: RetentionClass
  readonly as: HeldAs
  /** Member of the body that names the blob. */
  readonly blob?: string
  /** Member that holds that one, where it is not the body itself. */
  readonly in?: string
}

const body = (name: RetentionClass): Holding => ({ class: name, as: 'body' })
const blob = (name: RetentionClass): Holding => ({ class: name, as: 'blob', blob: 'blob' })

/**
 * What each kind holds; null for kinds whose content proves the rest of the record (seals, deletions, holds,
 * corrections' reasons are job content; periods; devices) and is never deleted by a clock. Keyed by every kind,
 * so that a new one without a class fails to compile.
 */
const holdings: Readonly<Record<Kind, readonly Holding[] | null>> = {
  'job-opened': [body('job-rest')],
  'call-taken': [body('job-rest')],
  'appointment-made': [body('job-rest')],
  'appointment-ended': [body('job-rest')],
  'keys-said': [body('job-rest')],
  'note-written': [body('job-rest')],
  'quote-given': [body('invoice')],
  'price-agreed': [body('invoice')],
  'invoice-issued': [body('invoice')],
  'warranty-given': [body('job-rest')],
  'authority-seen': [body('authority-record')],
  'authority-decided': [body('authority-record')],
  'policy-answered': [body('authority-record')],
  'consent-given': [body('authority-record'), { class: 'authority-record', as: 'blob', blob: 'signature' }],
  'plan-accepted': [body('authority-record'), { class: 'authority-record', as: 'blob', blob: 'signature' }],
  'signature-drawn': [body('authority-record'), blob('authority-record')],
  'photo-attached': [body('job-rest'), blob('photo')],
  'recording-attached': [body('job-rest'), blob('recording')],
  'scan-attached': [body('job-rest'), { class: 'recording', as: 'blob', in: 'source', blob: 'blob' }],
  'vin-read': [body('job-rest')],
  'unit-named': [body('job-rest')],
  'unit-matched': [body('job-rest')],
  'fault-acknowledged': [body('job-rest')],
  'clear-requested': [body('job-rest')],
  'supply-set': [body('job-rest')],
  'supply-read': [body('job-rest')],
  'key-labelled': [body('job-rest')],
  'key-count-read': [body('job-rest')],
  'function-tested': [body('job-rest')],
  'difference-explained': [body('job-rest')],
  'blank-chosen': [body('job-rest')],
  'remote-compared': [body('job-rest')],
  'blank-used': [body('job-rest')],
  'rule-chosen': [body('job-rest')],
  'rehearsal-read': [body('job-rest')],
  'step-done': [body('job-rest')],
  'backup-proven': [body('job-rest')],
  'backup-waived': [body('job-rest')],
  'session-opened': [body('job-rest')],
  'key-taught': [body('job-rest')],
  'session-closed': [body('job-rest')],
  'broke-off': [body('job-rest')],
  'break-off-mended': [body('job-rest')],
  'caution-read': [body('job-rest')],
  'vehicle-handed-over': [body('job-rest')],
  corrected: [body('job-rest')],
  'secret-sealed': [blob('vehicle-secret')],
  'secret-opened': null,
  'purpose-ended': null,
  'retention-set': null,
  'hold-placed': null,
  'hold-lifted': null,
  'deletion-proven': null,
  'document-sealed': null,
  'device-enrolled': null,
  'device-key-rotated': null,
  'device-revoked': null,
}

/** One thing that is kept because of a fact. */
export interface Kept {
  readonly fact: string
  readonly kind: Kind
  readonly class: RetentionClass
  readonly as: HeldAs
  /** SHA-256 of the blob, for blobs. */
  readonly blob: string | null
  /** Instant of the fact. */
  readonly at: string
}

/** What a fact keeps. A correction keeps what it puts in place of the corrected fact, so it goes with that class. */
export function keptBy(fact: Fact, kind: Kind, corrects: ReadonlyMap<string, Kind>): readonly Kept[] {
  const own = holdings[kind]
  if (own === null) return []
  const about = kind === 'corrected' ? corrects.get(String(fact.body.fact)) : undefined
  const all = about === undefined ? own : (holdings[about] ?? own)
  const replacement = kind === 'corrected' ? ((fact.body.body ?? {}) as Record<string, unknown>) : fact.body
  return all.flatMap(({ as, blob: member, in: part, class: named }) => {
    const holder = part === undefined ? replacement : ((replacement[part] ?? {}) as Record<string, unknown>)
    const value = member === undefined ? null : holder[member]
    if (as === 'blob' && typeof value !== 'string') return []
    const name = as === 'blob' ? blobClass(named, replacement) : named
    return [
      { fact: fact.id, kind, class: name, as, blob: typeof value === 'string' ? value : null, at: fact.at },
    ] satisfies Kept[]
  })
}

/** A blob's class, where its fact says more than its kind does. */
function blobClass(named: RetentionClass, about: Readonly<Record<string, unknown>>): RetentionClass {
  if (named === 'photo' && about.shows === 'identity') return 'identity-image'
  return named === 'vehicle-secret' && about.class === 'recording' ? 'recording' : named
}

/** An item of a deletion proof. */
export type DeletedItem = Body<'deletion-proven'>['items'][number]
