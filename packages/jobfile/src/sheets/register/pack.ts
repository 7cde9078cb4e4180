/** @module Which fields a scheme's register wants, as data: a pack names its source and its date. */
import { z } from 'zod'
import { type FieldName, fieldNames } from './fields.ts'

const words = z.string().trim().min(1).max(2000)

const packForm = z.strictObject({
  /** Lower-case letters, digits, hyphens. */
  id: z.string().regex(/^[a-z0-9][a-z0-9-]{0,63}$/, 'lower-case letters, digits and hyphens'),
  title: words,
  /** Day the pack was written or last checked against its source, `2026-01-31`. */
  date: z.iso.date(),
  /** Where the list of fields comes from. */
  source: words,
  fields: z
    .array(
      z.strictObject({
        /** Heading of the column, as the scheme calls it. */
        column: words,
        from: z.enum(fieldNames as unknown as readonly [FieldName, ...FieldName[]]),
        required: z.boolean(),
      }),
    )
    .min(1)
    .max(100)
    .refine(
      (list) => new Set(list.map(({ column }) => column)).size === list.length,
      'two columns of one name',
    ),
})

/** A list of fields that a register asks for. */
export type RegisterPack = z.infer<typeof packForm>

/** Reads a pack from parsed JSON. Says which place does not fit; never throws. */
export function readRegisterPack(
  value: unknown,
):
  | { readonly ok: true; readonly pack: RegisterPack }
  | { readonly ok: false; readonly path: string; readonly what: string } {
  const read = packForm.safeParse(value)
  if (read.success) return { ok: true, pack: read.data }
  const [issue] = read.error.issues
  return { ok: false, path: issue?.path.join('.') ?? '', what: issue?.message ?? 'not a pack' }
}

/** A pack to begin with. No scheme's form: what a register of key work can hold at most without a document number. */
export const plainRegister: RegisterPack = {
  id: 'plain',
  title: 'Plain register of key work',
  date: '2026-01-12',
  source: 'Common practice, no source. Local law and the scheme you belong to decide what must be kept.',
  fields: [
    { column: 'job', from: 'job', required: true },
    { column: 'opened', from: 'opened-at', required: true },
    { column: 'handed_over', from: 'handed-over-at', required: false },
    { column: 'place', from: 'place', required: true },
    { column: 'work', from: 'work', required: true },
    { column: 'customer_kind', from: 'customer', required: true },
    { column: 'vehicle', from: 'vehicle', required: true },
    { column: 'vin', from: 'vin', required: true },
    { column: 'keys_here', from: 'keys-here', required: true },
    { column: 'keys_new', from: 'keys-new', required: true },
    { column: 'keys_absent', from: 'keys-absent', required: false },
    { column: 'identity_seen', from: 'identity-document', required: true },
    { column: 'identity_ends_in', from: 'identity-ends-in', required: true },
    { column: 'entitlement_seen', from: 'entitlement-document', required: true },
    { column: 'checked_by', from: 'identity-checked-by', required: true },
    { column: 'decision', from: 'decision', required: false },
    { column: 'record_sha256', from: 'record-sha256', required: true },
  ],
}
