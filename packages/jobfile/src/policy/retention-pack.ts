import { z } from 'zod'
import { retentionClass, retentionTrigger } from '../facts/index.ts'

const words = z.string().trim().min(1).max(2000)

/** Said of every period that has no published source. */
export const commonPractice = 'common practice, check your law'

/** One class, its period and what starts it. */
export const retentionRule = z.strictObject({
  class: retentionClass,
  /** Days from the trigger until the class is deleted. */
  days: z.number().int().min(0).max(36_500),
  trigger: retentionTrigger,
  /** Where the period comes from: a law with its clause, a scheme, or the words of `commonPractice`. */
  source: words,
})

const packForm = z.strictObject({
  format: z.literal('shearline-retention-pack'),
  version: z.literal(1),
  name: words,
  /** Where it applies: a country or region as people call it; `any` for the neutral default. */
  region: words,
  /** The day its rules were last checked against their sources. */
  dated: z.iso.date(),
  /** A clock whose trigger never comes starts this many days after the last fact of the job. */
  stalledAfterDays: z.number().int().min(1).max(36_500),
  rules: z.array(retentionRule),
})

/** Which class of what a job holds is kept how long, from when. Data: a firm edits it, local law decides. */
export type RetentionPack = z.infer<typeof packForm>
export type RetentionRule = RetentionPack['rules'][number]

/** One thing wrong in a pack: where, what, and what to write instead. */
export interface PackTrouble {
  readonly path: string
  readonly what: string
  readonly doNext: string
}

export type PackResult =
  | { readonly ok: true; readonly pack: RetentionPack }
  | { readonly ok: false; readonly troubles: readonly PackTrouble[] }

/** Reads a pack from parsed JSON. Never throws; names every place that is wrong, not only the first. */
export function readRetentionPack(value: unknown): PackResult {
  const read = packForm.safeParse(value)
  if (!read.success) {
    const troubles = read.error.issues.map((issue) => ({
      path: issue.path.join('.') || '(pack)',
      what: issue.message,
      doNext: 'Correct this place and read the pack again.',
    }))
    return { ok: false, troubles }
  }
  const troubles: PackTrouble[] = []
  for (const name of retentionClass.options) {
    const rules = read.data.rules.filter((one) => one.class === name)
    if (rules.length === 1) continue
    troubles.push({
      path: 'rules',
      what: rules.length === 0 ? `no rule for "${name}"` : `${rules.length} rules for "${name}"`,
      doNext: `Write exactly one rule for "${name}".`,
    })
  }
  return troubles.length === 0 ? { ok: true, pack: read.data } : { ok: false, troubles }
}

/**
 * The default of a firm that has set nothing: no country's law. Every period is common practice without a source
 * and says so. Secrets and identity images are the shortest, because they do most harm when they leak.
 */
export const neutralRetention: RetentionPack = {
  format: 'shearline-retention-pack',
  version: 1,
  name: 'neutral default',
  region: 'any',
  dated: '2026-11-01',
  stalledAfterDays: 180,
  rules: [
    { class: 'invoice', days: 2190, trigger: 'sealed', source: commonPractice },
    { class: 'authority-record', days: 1095, trigger: 'handed-over', source: commonPractice },
    { class: 'identity-image', days: 30, trigger: 'handed-over', source: commonPractice },
    { class: 'photo', days: 30, trigger: 'warranty-ended', source: commonPractice },
    { class: 'recording', days: 30, trigger: 'warranty-ended', source: commonPractice },
    { class: 'vehicle-secret', days: 30, trigger: 'handed-over', source: commonPractice },
    { class: 'job-rest', days: 2190, trigger: 'sealed', source: commonPractice },
  ],
}

/** The body of a `retention-set` fact that puts a pack on record for one job. */
export function retentionSetOf(pack: RetentionPack): {
  pack: string
  classes: {
    class: RetentionRule['class']
    days: number
    trigger: RetentionRule['trigger']
    source: string
  }[]
} {
  const { name, region, dated, rules } = pack
  return { pack: `${name}, ${region}, ${dated}`, classes: rules.map((one) => ({ ...one })) }
}
