import type { Fact } from './envelope.ts'
import { fitsOf } from './fits.ts'
import { type Body, bodySchemas, isKnownKind, type Kind, kinds } from './kinds.ts'

type Loose = Readonly<Record<string, unknown>>

/** Makes a body of one version into the next. Pure; it may meet a body that never fitted and must not throw. */
type Upcaster = (body: Loose) => Loose

/**
 * How bodies of older versions are read, by kind: the first entry makes version 1 into 2, and so on. A kind
 * that is not listed is at version 1. Entries are added, never edited: facts are read for ever.
 */
const upcasters: Partial<Record<Kind, readonly Upcaster[]>> = {
  // Version 1 had no trigger: all of its periods were counted from the sealing.
  'retention-set': [
    (body) => ({
      ...body,
      classes: Array.isArray(body.classes)
        ? body.classes.map((one: unknown) =>
            typeof one === 'object' && one !== null ? { ...one, trigger: 'sealed' } : one,
          )
        : body.classes,
    }),
  ],
}

/** The version in which this program writes each kind. */
const versions = Object.fromEntries(
  kinds.map((kind) => [kind, (upcasters[kind]?.length ?? 0) + 1]),
) as Readonly<Record<Kind, number>>

/** The version in which this program writes bodies of a kind; 1 for kinds it does not know. */
export function versionOf(kind: string): number {
  return isKnownKind(kind) ? versions[kind] : 1
}

export type BodyResult<K extends Kind> =
  | { readonly ok: true; readonly body: Body<K> }
  | { readonly ok: false; readonly path: string; readonly what: string }

/**
 * Reads a body of any version up to the present one as the present one. Never throws: says the path of what is
 * wrong and what was expected. A newer version than this program's is refused at `v`: do not guess what it means.
 */
export function readBody<K extends Kind>(kind: K, body: unknown, v: number = versionOf(kind)): BodyResult<K> {
  const steps = upcasters[kind] ?? []
  if (v > steps.length + 1)
    return {
      ok: false,
      path: 'v',
      what: `version ${v} is newer than ${steps.length + 1}, the latest known here`,
    }
  let value = body
  if (typeof body === 'object' && body !== null)
    for (const step of steps.slice(v - 1)) value = step(value as Loose)
  const result = bodySchemas[kind].safeParse(value)
  if (result.success) return { ok: true, body: result.data as Body<K> }
  const issue = result.error.issues[0]
  return {
    ok: false,
    path: issue?.path.join('.') || '(body)',
    what: issue?.message ?? 'does not fit its kind',
  }
}

/**
 * Reads the body of a fact as the present version, without copying one that is already in its form: treat what
 * comes back as read-only. Never throws; see readBody.
 */
export function bodyOf<K extends Kind>(fact: Pick<Fact, 'v' | 'body'>, kind: K): BodyResult<K> {
  const form = formOf(kind)
  if (form !== undefined && fact.v === form.version && form.fits(fact.body))
    return { ok: true, body: fact.body as unknown as Body<K> }
  return readBody(kind, fact.body, fact.v)
}

/** How far this version of the program understands a fact. */
export type Understanding = 'read' | 'unknown-kind' | 'newer-version'

/** Whether a fact's kind and version are known here. What is not known is kept, proven and shown. */
export function understands(fact: { readonly kind: string; readonly v: number }): Understanding {
  if (!isKnownKind(fact.kind)) return 'unknown-kind'
  return fact.v > versionOf(fact.kind) ? 'newer-version' : 'read'
}

/** What reading the facts of a kind takes. */
export interface KindForm {
  readonly kind: Kind
  /** The latest version known here. */
  readonly version: number
  /** True when a body of that version is already in the form its schema would give back. */
  readonly fits: (body: unknown) => boolean
}

const forms: ReadonlyMap<string, KindForm> = new Map(
  kinds.map((kind) => [kind, { kind, version: versions[kind], fits: fitsOf(kind) }]),
)

/** What reading facts of this kind takes, all in one look-up; undefined for kinds this version does not know. */
export function formOf(kind: string): KindForm | undefined {
  return forms.get(kind)
}
