import { z } from 'zod'
import { checkCodes, documentCodes, siteQuestions, situations } from './codes.ts'
import { type PackTrouble, type RetentionPack, readRetentionPack, retentionRule } from './retention-pack.ts'

const words = z.string().trim().min(1).max(2000)
const code = z.string().regex(/^[a-z0-9][a-z0-9.-]{0,63}$/, 'small letters, digits, full stops and hyphens')

/** Where a row comes from, and whether somebody read it there or remembered it. */
const origin = {
  source: words,
  basis: z.enum(['source', 'memory', 'common-practice', 'firm']),
}

/** A document or question by code; one of the firm's own brings its words. */
const named = z.strictObject({ code, words: words.exactOptional() })

const situation = z.strictObject({
  situation: z.enum(situations),
  /** Any one of these shows who the person is. */
  identity: z.array(named).min(1),
  /** Any one of these shows that the person may have a key. */
  entitlement: z.array(named).min(1),
  /** Each wants a yes, or a no with a reason. */
  checks: z.array(named),
  ...origin,
})

const band = z.strictObject({
  words,
  lowMegahertz: z.number().min(0.1).max(6000),
  highMegahertz: z.number().min(0.1).max(6000),
  ...origin,
})

const form = z.strictObject({
  format: z.literal('shearline-policy-pack'),
  version: z.literal(1),
  name: words,
  /** Where it applies: a country or region as people call it; `any` for the neutral default. */
  region: words,
  /** The day its rows were last held against their sources. */
  dated: z.iso.date(),
  authority: z.array(situation).min(1),
  retention: z.strictObject({
    stalledAfterDays: z.number().int().min(1).max(36_500),
    rules: z.array(retentionRule),
  }),
  /** What a contract made away from the firm's premises asks for. */
  contract: z.array(
    z.strictObject({
      customers: z.array(z.enum(['private', 'trade', 'fleet'])).min(1),
      checks: z.array(named).min(1),
      ...origin,
    }),
  ),
  /** Questions about the car and its place, asked on arrival. */
  site: z.array(z.enum(siteQuestions as [string, ...string[]])),
  radio: z.strictObject({
    /** The region whose rows of the program's own band table apply; null for none. */
    region: z
      .enum(['europe', 'north-america', 'japan', 'south-korea', 'china', 'australia-new-zealand'])
      .nullable(),
    /** Bands of the firm's own, beside them. */
    bands: z.array(band),
    ...origin,
  }),
})

/**
 * Rules that local law and the firm decide, as data: which evidence of authority, what is kept how long, what a
 * roadside contract asks for, which radio bands. Every row names its source; the pack its region and day.
 */
export type PolicyPack = z.infer<typeof form>
export type PackSituation = PolicyPack['authority'][number]
export type NamedCode = z.infer<typeof named>
export type Basis = PackSituation['basis']

export type PolicyPackResult =
  | { readonly ok: true; readonly pack: PolicyPack }
  | { readonly ok: false; readonly troubles: readonly PackTrouble[] }

/** Reads a policy pack from parsed JSON. Never throws; names every place that is wrong, not only the first. */
export function readPolicyPack(value: unknown): PolicyPackResult {
  const read = form.safeParse(value)
  if (!read.success) {
    const troubles = read.error.issues.map((issue) => ({
      path: issue.path.join('.') || '(pack)',
      what: issue.message,
      doNext: 'Correct this place and read the pack again.',
    }))
    return { ok: false, troubles }
  }
  const pack = read.data
  const troubles = [...retentionTroubles(pack), ...situationTroubles(pack), ...codeTroubles(pack)]
  pack.radio.bands.forEach((one, index) => {
    if (one.lowMegahertz > one.highMegahertz)
      troubles.push({
        path: `radio.bands.${index}`,
        what: `it ends at ${one.highMegahertz} MHz, below its start at ${one.lowMegahertz} MHz`,
        doNext: 'Write the lower frequency as lowMegahertz.',
      })
  })
  return troubles.length === 0 ? { ok: true, pack } : { ok: false, troubles }
}

function retentionTroubles(pack: PolicyPack): PackTrouble[] {
  const read = readRetentionPack(retentionPackOf(pack))
  return read.ok ? [] : read.troubles.map((one) => ({ ...one, path: `retention.${one.path}` }))
}

function situationTroubles(pack: PolicyPack): PackTrouble[] {
  return pack.authority.flatMap(({ situation: name }, index) =>
    pack.authority.findIndex((one) => one.situation === name) === index
      ? []
      : [
          {
            path: `authority.${index}.situation`,
            what: `"${name}" stands twice`,
            doNext: 'Write each situation once.',
          },
        ],
  )
}

const known: ReadonlySet<string> = new Set([...documentCodes, ...checkCodes])

/** A code without words of its own must be one the program has words for, and a question has to say where it belongs. */
function codeTroubles(pack: PolicyPack): PackTrouble[] {
  const troubles: PackTrouble[] = []
  const look = (rows: readonly NamedCode[], path: string, question: boolean) =>
    rows.forEach((one, index) => {
      const at = `${path}.${index}`
      if (one.words === undefined && !known.has(one.code))
        troubles.push({
          path: `${at}.code`,
          what: `"${one.code}" is not known and has no words`,
          doNext: 'Add "words" that say what it means, or use a known code.',
        })
      if (question && !/^(authority|contract)\./.test(one.code))
        troubles.push({
          path: `${at}.code`,
          what: `the question "${one.code}" does not say where it belongs`,
          doNext: 'Begin its code with "authority." or "contract.".',
        })
    })
  pack.authority.forEach((one, index) => {
    look(one.identity, `authority.${index}.identity`, false)
    look(one.entitlement, `authority.${index}.entitlement`, false)
    look(one.checks, `authority.${index}.checks`, true)
  })
  pack.contract.forEach((one, index) => {
    look(one.checks, `contract.${index}.checks`, true)
  })
  return troubles
}

/** The periods of a policy pack, as what counts deletion clocks reads them. */
export function retentionPackOf(pack: PolicyPack): RetentionPack {
  const { name, region, dated } = pack
  return { format: 'shearline-retention-pack', version: 1, name, region, dated, ...pack.retention }
}

/** How a pack is named on record: name, region and day, so that the rules meant can be found again. */
export function packLabel(pack: Pick<PolicyPack, 'name' | 'region' | 'dated'>): string {
  return `${pack.name}, ${pack.region}, ${pack.dated}`
}
