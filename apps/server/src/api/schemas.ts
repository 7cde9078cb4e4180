import { z } from '@hono/zod-openapi'
import {
  bodySchemas,
  chapterNames,
  type Device,
  deviceId,
  envelope,
  type JobState,
  type JobSummary,
  sha256Hex,
  tumblerNames,
} from '@shearline/jobfile'
import { problemCodes } from '../problem/index.ts'

/** Identifier of a job in an address. */
export const jobParam = z.object({ job: envelope.shape.job })

export const sha256Param = z.object({ sha256: sha256Hex })

export const factSchema = z
  .strictObject(envelope.shape)
  .openapi('Fact', { description: 'A signed fact: envelope checked, body as its kind and version say.' })

export const deviceSchema: z.ZodType<Device> = z
  .strictObject({
    device: deviceId,
    name: z.string().trim().min(1).max(120),
    publicKey: z.string().regex(/^[A-Za-z0-9_-]{43}$/, '43 base64url characters'),
  })
  .openapi('Device', { description: 'A device and its Ed25519 public key, 32 bytes in base64url.' })

const params = z.record(z.string(), z.union([z.string(), z.number()]))

const nextStep = z
  .object({
    code: z.string() as unknown as z.ZodType<JobSummary['next']['code']>,
    params,
    chapter: z.enum(chapterNames),
    tumbler: z.enum(tumblerNames),
  })
  .openapi('NextStep')

const need = z
  .object({
    code: z.string() as unknown as z.ZodType<JobState['tumblers'][number]['needs'][number]['code']>,
    params,
    chapter: z.enum(chapterNames),
    conflict: z.boolean(),
  })
  .openapi('Need')

const standing = z.object({
  name: z.enum(tumblerNames),
  state: z.enum(['low', 'in-line', 'high']),
  done: z.number().int(),
  of: z.number().int(),
})

export const summarySchema: z.ZodType<JobSummary> = z
  .object({
    job: envelope.shape.job,
    title: z.string(),
    place: z.string(),
    zone: z.string(),
    demo: z.boolean(),
    vehicle: z.string(),
    vinTail: z.string(),
    openedAt: z.string(),
    lastAt: z.string(),
    tumblers: z.array(standing),
    inLine: z.boolean(),
    next: nextStep,
  })
  .openapi('JobSummary')

const stateForm = z.looseObject({
  job: envelope.shape.job,
  opened: bodySchemas['job-opened'].nullable(),
  openedAt: z.string().nullable(),
  lastAt: z.string().nullable(),
  factCount: z.number().int(),
  vin: z.string().nullable(),
  inLine: z.boolean(),
  chainBroken: z.boolean(),
  factsSinceSeal: z.number().int(),
  tumblers: z.array(standing.extend({ needs: z.array(need) })),
  next: nextStep,
})

/** The folded job. The form names its head; the rest is as packages/jobfile types it. */
export const stateSchema: z.ZodType<JobState> = (stateForm as unknown as z.ZodType<JobState>).openapi(
  'JobState',
)

export const recordSchema = z
  .object({
    format: z.literal('shearline-record'),
    version: z.literal(1),
    job: envelope.shape.job,
    facts: z.array(factSchema),
    devices: z.array(deviceSchema),
  })
  .openapi('JobRecord')

const error = z.object({
  code: z.enum(problemCodes),
  what: z.string(),
  where: z.string().optional(),
  doNext: z.string(),
})

export const problemSchema = z.object({ error }).openapi('Problem')

export const notInLineSchema = z
  .object({ error: error.extend({ needs: z.array(need).optional() }) })
  .openapi('NotInLine')
