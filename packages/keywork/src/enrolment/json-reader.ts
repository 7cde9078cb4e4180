/** @module Reads fields out of JSON and says by path what is wrong with them. */

/** What is wrong, and where: `rule.kind`, `keys[1].state`; an empty path is the whole. */
export class Refused extends Error {
  readonly path: string
  constructor(path: string, what: string) {
    super(what)
    this.path = path
  }
}

export type Fields = Readonly<Record<string, unknown>>
export const UNKNOWN = 'unknown' as const

/** Reads objects and remembers the paths of fields that nobody asked for. */
export class JsonReader {
  readonly ignored: string[] = []

  /** @throws Refused when this is no object. */
  fields(json: unknown, path: string, known: readonly string[]): Fields {
    if (typeof json !== 'object' || json === null || Array.isArray(json)) {
      throw new Refused(path, `must be an object; found ${quoted(json)}`)
    }
    const fields = json as Fields
    for (const name of Object.keys(fields)) {
      if (!known.includes(name)) this.ignored.push(path === '' ? name : `${path}.${name}`)
    }
    return Object.fromEntries(
      known.map((name) => [name, Object.hasOwn(fields, name) ? fields[name] : undefined]),
    )
  }
}

/** @throws Refused when this is no list. */
export function list(json: unknown, path: string): readonly unknown[] {
  if (!Array.isArray(json)) throw new Refused(path, `must be a list; found ${quoted(json)}`)
  return json
}

/** One of some words, or unknown. @throws Refused */
export function choice<T extends string>(
  json: unknown,
  values: readonly T[],
  path: string,
): T | typeof UNKNOWN {
  if (json === UNKNOWN) return UNKNOWN
  const value = values.find((each) => each === json)
  if (value !== undefined) return value
  throw new Refused(path, `must be one of ${values.join(', ')}, unknown; found ${quoted(json)}`)
}

/** A whole number, or unknown. @throws Refused */
export function count(json: unknown, least: number, path: string): number | typeof UNKNOWN {
  if (json === UNKNOWN) return UNKNOWN
  if (typeof json === 'number' && Number.isSafeInteger(json) && json >= least) return json
  throw new Refused(path, `must be a whole number of ${least} or more, or unknown; found ${quoted(json)}`)
}

/** A number from zero up to `most`. @throws Refused */
export function amount(json: unknown, path: string, most: number = Number.MAX_SAFE_INTEGER): number {
  if (typeof json === 'number' && json >= 0 && json <= most) return json
  const upTo = most === Number.MAX_SAFE_INTEGER ? 'of 0 or more' : `from 0 to ${most}`
  throw new Refused(path, `must be a number ${upTo}; found ${quoted(json)}`)
}

/** A number from zero, or unknown. @throws Refused */
export function amountOrUnknown(json: unknown, path: string): number | typeof UNKNOWN {
  return json === UNKNOWN ? UNKNOWN : amount(json, path)
}

/** @throws Refused */
export function yesOrNo(json: unknown, path: string): boolean | typeof UNKNOWN {
  if (json === UNKNOWN) return UNKNOWN
  if (typeof json === 'boolean') return json
  throw new Refused(path, `must be true, false or unknown; found ${quoted(json)}`)
}

/** @throws Refused */
export function label(json: unknown, path: string): string {
  if (typeof json === 'string' && json !== '') return json
  throw new Refused(path, `must be a text that is not empty; found ${quoted(json)}`)
}

/** The fields of a record that are there, each read; absent ones stay absent. */
export function present<T extends object>(
  fields: Fields,
  readers: { readonly [K in keyof T]-?: (json: unknown) => Exclude<T[K], undefined> },
): T {
  const read: Partial<T> = {}
  for (const name of Object.keys(readers) as (keyof T & string)[]) {
    const value = fields[name]
    if (value !== undefined) read[name] = readers[name](value)
  }
  return read as T
}

/** What stands there, short enough for a message. */
export function quoted(json: unknown): string {
  if (json === undefined) return 'nothing'
  if (Array.isArray(json)) return 'a list'
  if (typeof json === 'object' && json !== null) return 'an object'
  const text = JSON.stringify(json) ?? String(json)
  return text.length > 60 ? `${text.slice(0, 60)}...` : text
}
