import type { z } from 'zod'
import { bodySchemas, type Kind } from './kinds.ts'

/** Says whether a value is already in the form its schema would give back. False means "ask the schema". */
type Fits = (value: unknown) => boolean

/** What this module reads of a schema's definition (zod 4, `schema._zod.def`). */
interface Definition {
  readonly type: string
  readonly checks?: readonly { readonly _zod: { readonly def: CheckDefinition } }[]
  readonly check?: string
  readonly pattern?: RegExp
  readonly shape?: Readonly<Record<string, z.core.$ZodType>>
  readonly catchall?: z.core.$ZodType
  readonly element?: z.core.$ZodType
  readonly innerType?: z.core.$ZodType
  readonly options?: readonly z.core.$ZodType[]
  readonly entries?: Readonly<Record<string, string | number>>
}

interface CheckDefinition {
  readonly check: string
  readonly format?: string
  readonly pattern?: RegExp
  readonly minimum?: number
  readonly maximum?: number
  readonly value?: number
  readonly inclusive?: boolean
}

const askTheSchema: Fits = () => false
const anything: Fits = () => true

/**
 * Makes a check out of a schema that neither copies nor explains. It is never more lenient than the schema: what it
 * passes, the schema would return unchanged; what it does not pass, or does not know how to check, goes to the schema.
 */
function fitsFor(schema: z.core.$ZodType): Fits {
  const def = schema._zod.def as unknown as Definition
  switch (def.type) {
    case 'object':
      return objectFits(def)
    case 'array':
      return arrayFits(def)
    case 'string':
      return stringFits(def)
    case 'number':
      return numberFits(def)
    case 'boolean':
      return (value) => typeof value === 'boolean'
    case 'unknown':
      return anything
    case 'enum': {
      const entries = new Set<unknown>(Object.values(def.entries ?? {}))
      return (value) => entries.has(value)
    }
    case 'nullable': {
      const inner = innerOf(def)
      return (value) => value === null || inner(value)
    }
    // Optional members are handled by their object; a member that is present has to fit, and a default is filled
    // in by the schema only where a member is absent, which the object sends there.
    case 'optional':
    case 'default':
      return innerOf(def)
    case 'union': {
      const options = (def.options ?? []).map(fitsFor)
      return (value) => options.some((fits) => fits(value))
    }
    default:
      return askTheSchema
  }
}

function innerOf(def: Definition): Fits {
  return def.innerType === undefined ? askTheSchema : fitsFor(def.innerType)
}

function objectFits(def: Definition): Fits {
  if (def.shape === undefined || def.catchall !== undefined) return askTheSchema
  const members = Object.entries(def.shape).sort(([one], [other]) => (one < other ? -1 : 1))
  const names = members.map(([name]) => name)
  const fits = members.map(([, schema]) => fitsFor(schema))
  const optional = members.map(([, schema]) => schema._zod.def.type === 'optional')
  const inAnyOrder = (value: object): boolean => {
    let found = 0
    for (let index = 0; index < names.length; index++) {
      const member = (value as Record<string, unknown>)[names[index] as string]
      if (member === undefined) {
        if (optional[index] !== true) return false
        continue
      }
      if (!(fits[index] as Fits)(member)) return false
      found++
    }
    // A member that the schema does not know would be left out by it.
    for (const _name in value) found--
    return found === 0
  }
  // Facts are kept with their members sorted: then one walk over both lists is enough, and the quickest there is.
  return (value) => {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) return false
    let index = 0
    for (const name in value) {
      while (index < names.length && names[index] !== name) {
        if (optional[index] !== true) return inAnyOrder(value)
        index++
      }
      if (index === names.length) return inAnyOrder(value)
      if (!(fits[index] as Fits)((value as Record<string, unknown>)[name])) return false
      index++
    }
    while (index < names.length && optional[index] === true) index++
    return index === names.length
  }
}

function arrayFits(def: Definition): Fits {
  if (def.element === undefined) return askTheSchema
  const fits = fitsFor(def.element)
  let least = 0
  for (const { _zod } of def.checks ?? []) {
    if (_zod.def.check !== 'min_length' || _zod.def.minimum === undefined) return askTheSchema
    least = Math.max(least, _zod.def.minimum)
  }
  return (value) => {
    if (!Array.isArray(value) || value.length < least) return false
    for (const one of value) if (!fits(one)) return false
    return true
  }
}

function stringFits(def: Definition): Fits {
  let least = 0
  let most = Number.MAX_SAFE_INTEGER
  let trimmed = false
  const patterns: RegExp[] = def.pattern === undefined ? [] : [def.pattern]
  if (def.check !== undefined && def.pattern === undefined) return askTheSchema
  for (const { _zod } of def.checks ?? []) {
    const { check, minimum, maximum, pattern, format } = _zod.def
    if (check === 'min_length' && minimum !== undefined) least = Math.max(least, minimum)
    else if (check === 'max_length' && maximum !== undefined) most = Math.min(most, maximum)
    // The only overwrite in these schemas is `trim`; whatever it were, text without blanks at its ends is checked
    // against zod itself by the tests.
    else if (check === 'overwrite') trimmed = true
    else if (check === 'string_format' && format === 'regex' && pattern !== undefined) patterns.push(pattern)
    else return askTheSchema
  }
  const [pattern, ...more] = patterns
  if (more.length > 0 || pattern?.global === true || pattern?.sticky === true) return askTheSchema
  return (value) => {
    if (typeof value !== 'string' || value.length < least || value.length > most) return false
    if (trimmed && !endsPlain(value)) return false
    return pattern === undefined || pattern.test(value)
  }
}

/** True when a text begins and ends with a visible ASCII character, so that trimming surely changes nothing. */
function endsPlain(text: string): boolean {
  const first = text.charCodeAt(0)
  const last = text.charCodeAt(text.length - 1)
  return first > 0x20 && first < 0x7f && last > 0x20 && last < 0x7f
}

function numberFits(def: Definition): Fits {
  let least = Number.NEGATIVE_INFINITY
  let most = Number.POSITIVE_INFINITY
  let above = Number.NEGATIVE_INFINITY
  let whole = false
  for (const { _zod } of def.checks ?? []) {
    const { check, value, inclusive, format } = _zod.def
    if (check === 'number_format' && format === 'safeint') whole = true
    else if (check === 'greater_than' && value !== undefined && inclusive === true)
      least = Math.max(least, value)
    else if (check === 'greater_than' && value !== undefined) above = Math.max(above, value)
    else if (check === 'less_than' && value !== undefined && inclusive === true) most = Math.min(most, value)
    else return askTheSchema
  }
  return (value) =>
    typeof value === 'number' &&
    Number.isFinite(value) &&
    value >= least &&
    value <= most &&
    value > above &&
    (!whole || Number.isSafeInteger(value))
}

/**
 * The check of a kind's bodies, derived when it is first used: true when a body is already exactly what its schema
 * would give back for it, so it can be used as it is.
 */
export function fitsOf(kind: Kind): Fits {
  let fits: Fits | undefined
  return (body) => {
    fits ??= fitsFor(bodySchemas[kind])
    return fits(body)
  }
}
