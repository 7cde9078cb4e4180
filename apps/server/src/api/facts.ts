import { createRoute, z } from '@hono/zod-openapi'
import { envelope } from '@shearline/jobfile'
import { bodyLimit } from 'hono/body-limit'
import { Problem, take } from '../problem/index.ts'
import { address, json, jsonBody, problems } from './describe.ts'
import type { ApiParts } from './parts.ts'
import { factSchema, problemSchema } from './schemas.ts'

/** Bytes of facts in one request; a device sends a long chain in several. */
const maxFactsBytes = 32 * 1024 * 1024

/** Facts coming in from devices, and what tells a device which jobs have facts it lacks. */
export function factRoutes({ store }: ApiParts) {
  return [
    address({
      route: createRoute({
        method: 'post',
        path: '/api/facts',
        summary: 'Appends facts a device signed, all or none; the same facts again change nothing.',
        middleware: bodyLimit({
          maxSize: maxFactsBytes,
          onError: () => {
            throw new Problem(413, 'too-large', {
              what: `A request may carry ${maxFactsBytes} bytes of facts.`,
              doNext: 'Send the facts in several requests, in order.',
            })
          },
        }),
        request: { body: jsonBody(z.object({ facts: z.array(factSchema) })) },
        responses: {
          200: json(
            z.object({ accepted: z.number().int(), already: z.number().int() }),
            'How many were new, and how many were here before.',
          ),
          409: json(problemSchema, 'A fork, a gap or a broken link in the chain of the device.'),
          413: json(problemSchema, 'Too many bytes in one request.'),
          ...problems,
        },
      }),
      handler: async (c) =>
        c.json(take(await store.appendFacts(c.req.valid('json').facts, { from: 'device' })), 200),
    }),
    address({
      route: createRoute({
        method: 'get',
        path: '/api/marks',
        summary: 'A mark for every job that changes exactly when facts of it arrive: what to fetch again.',
        responses: {
          200: json(
            z.object({ marks: z.array(z.object({ job: envelope.shape.job, mark: z.string() })) }),
            'Latest instant first.',
          ),
          ...problems,
        },
      }),
      handler: async (c) => {
        const marks = (await store.jobs()).map(({ job, mark }) => ({ job, mark }))
        return c.json({ marks }, 200)
      },
    }),
  ] as const
}
