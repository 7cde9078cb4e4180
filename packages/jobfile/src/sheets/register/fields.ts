/** @module What a register can ask of a job: each field by name, computed from the job's state. */
import { sha256OfBytes } from '../../chain/index.ts'
import { foldJob, type JobState } from '../../fold/index.ts'
import { type JobRecord, recordText } from '../../record/index.ts'

export type FieldValue = string | number | boolean | null

/** What a field is computed from. */
interface Source {
  readonly state: JobState
  readonly record: JobRecord
}

type Field = (source: Source) => FieldValue

const seen = (
  role: 'identity' | 'entitlement',
  part: 'document' | 'issuer' | 'lastCharacters' | 'checkedBy',
) =>
  (({ state }) =>
    state.authority.seen.findLast((document) => document.role === role)?.[part] ?? null) satisfies Field

/** What was computed of a job for a register. Instants are UTC; names are joined by `; `. Never a whole document number. */
const fields = {
  job: ({ state }) => state.job,
  'opened-at': ({ state }) => state.openedAt,
  'sealed-at': ({ state }) => state.seal?.at ?? null,
  'sealed-by': ({ state }) => state.seal?.by ?? null,
  'handed-over-at': ({ state }) => state.handedOver?.at ?? null,
  'handed-over-to': ({ state }) => state.handedOver?.to ?? null,
  place: ({ state }) => state.opened?.place ?? null,
  zone: ({ state }) => state.opened?.zone ?? null,
  work: ({ state }) => state.opened?.work ?? null,
  customer: ({ state }) => state.opened?.customer ?? null,
  vehicle: ({ state }) => state.opened?.vehicle ?? null,
  vin: ({ state }) => state.vin,
  'vin-sources': ({ state }) => [...new Set(state.vins.map(({ source }) => source))].join('; '),
  'keys-said': ({ state }) => state.tally.saidToExist,
  'keys-here': ({ state }) => state.tally.onBench,
  'keys-new': ({ state }) => state.tally.newKeys,
  'keys-absent': ({ state }) => state.absentKeys.join('; '),
  'stored-before': ({ state }) => state.tally.storedBefore,
  'stored-after': ({ state }) => state.tally.storedAfter,
  'identity-document': seen('identity', 'document'),
  'identity-issuer': seen('identity', 'issuer'),
  'identity-ends-in': seen('identity', 'lastCharacters'),
  'identity-checked-by': seen('identity', 'checkedBy'),
  'entitlement-document': seen('entitlement', 'document'),
  'entitlement-issuer': seen('entitlement', 'issuer'),
  'entitlement-ends-in': seen('entitlement', 'lastCharacters'),
  decision: ({ state }) => state.authority.decision?.decision ?? null,
  'decision-reason': ({ state }) => state.authority.decision?.reason ?? null,
  'in-line': ({ state }) => state.inLine,
  demo: ({ state }) => state.opened?.demo ?? null,
  'record-sha256': ({ record }) => sha256OfBytes(recordText(record)),
} as const satisfies Record<string, Field>

export type FieldName = keyof typeof fields

/** Every field a pack may ask for. */
export const fieldNames = Object.keys(fields) as readonly FieldName[]

/** The wanted fields of one job, in the order asked. An empty text is not known: null. */
export function fieldsOf(record: JobRecord, wanted: readonly FieldName[]): readonly FieldValue[] {
  const source: Source = { state: foldJob(record.job, record.facts), record }
  return wanted.map((name) => {
    const value: FieldValue = fields[name](source)
    return value === '' ? null : value
  })
}
