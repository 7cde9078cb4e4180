import { createRoute, z } from '@hono/zod-openapi'
import { recordText, sha256Hex } from '@shearline/jobfile'
import { recordOf, writersOf } from '@shearline/store'
import { seal, unknownJob } from '../seal/index.ts'
import { address, json, jsonBody, problems } from './describe.ts'
import type { ApiParts } from './parts.ts'
import {
  deviceSchema,
  factSchema,
  jobParam,
  notInLineSchema,
  problemSchema,
  recordSchema,
  stateSchema,
  summarySchema,
} from './schemas.ts'

const unknown = json(problemSchema, 'No fact of this job is here.')

/** Jobs folded from their facts, their records, and sealing. */
export function jobRoutes(parts: ApiParts) {
  const { store, board, clock } = parts

  async function factsOf(job: string) {
    const facts = await store.factsOfJob(job)
    if (facts.length === 0) throw unknownJob(job)
    return { facts: [...facts], devices: [...(await writersOf(store, facts))] }
  }

  return [
    address({
      route: createRoute({
        method: 'get',
        path: '/api/jobs',
        summary: 'Lists every opened job as the board shows it.',
        responses: {
          200: json(z.object({ jobs: z.array(summarySchema) }), 'Latest instant first.'),
          ...problems,
        },
      }),
      handler: async (c) => c.json({ jobs: [...(await board.summaries())] }, 200),
    }),
    address({
      route: createRoute({
        method: 'get',
        path: '/api/jobs/{job}',
        summary: 'Folds a job, its chain verified.',
        request: { params: jobParam },
        responses: { 200: json(z.object({ state: stateSchema }), 'The job.'), 404: unknown, ...problems },
      }),
      handler: async (c) => {
        const { job } = c.req.valid('param')
        const state = await board.state(job)
        if (state === null) throw unknownJob(job)
        return c.json({ state }, 200)
      },
    }),
    address({
      route: createRoute({
        method: 'get',
        path: '/api/jobs/{job}/facts',
        summary: 'The facts of a job in fold order, and the devices that wrote them.',
        request: { params: jobParam },
        responses: {
          200: json(z.object({ facts: z.array(factSchema), devices: z.array(deviceSchema) }), 'The facts.'),
          404: unknown,
          ...problems,
        },
      }),
      handler: async (c) => c.json(await factsOf(c.req.valid('param').job), 200),
    }),
    address({
      route: createRoute({
        method: 'get',
        path: '/api/jobs/{job}/record',
        summary: 'The signed record of a job, in the bytes that are hashed (RFC 8785).',
        request: { params: jobParam },
        responses: { 200: json(recordSchema, 'The record.'), 404: unknown, ...problems },
      }),
      handler: async (c) => {
        const { job } = c.req.valid('param')
        const { facts } = await factsOf(job)
        const text = recordText(await recordOf(store, job, facts))
        return new Response(text, { headers: { 'Content-Type': 'application/json' } }) as never
      },
    }),
    address({
      route: createRoute({
        method: 'post',
        path: '/api/jobs/{job}/seal',
        summary: 'Seals a job as it stands and makes its document.',
        request: {
          params: jobParam,
          body: jsonBody(
            z.strictObject({
              language: z.string().min(2).max(35).optional(),
              by: z.string().trim().min(1).max(120),
              evenIfNotReady: z.boolean().optional(),
            }),
          ),
        },
        responses: {
          200: json(
            z.object({
              document: z.object({ sha256: sha256Hex, bytes: z.number().int() }),
              ready: z.boolean(),
            }),
            'The document is kept; `ready` says whether everything was in line.',
          ),
          404: unknown,
          409: json(notInLineSchema, 'Not in line: `error.needs` says what is open.'),
          ...problems,
        },
      }),
      handler: async (c) => {
        const wish = { ...c.req.valid('json'), now: clock() }
        return c.json(await seal(store, c.req.valid('param').job, wish), 200)
      },
    }),
  ] as const
}
