/** @module Every address under /api, each described once: checked, answered, and listed in the OpenAPI document. */
import { createRoute, OpenAPIHono, z } from '@hono/zod-openapi'
import { methodNotAllowed } from 'hono/method-not-allowed'
import { liveJobs } from '../live/index.ts'
import { Problem, wrongForm } from '../problem/index.ts'
import { arrivingRoutes } from './arriving.ts'
import { blobRoutes } from './blobs.ts'
import { address, problems } from './describe.ts'
import { deviceRoutes } from './devices.ts'
import { documentRoutes } from './documents.ts'
import { factRoutes } from './facts.ts'
import { jobRoutes } from './jobs.ts'
import type { ApiParts } from './parts.ts'
import { recipientRoutes } from './recipients.ts'

export type { ApiParts } from './parts.ts'

/** Builds the API. Its type is what the bench's client is typed by. */
export function createApi(parts: ApiParts) {
  const api = new OpenAPIHono({
    defaultHook: (result) => {
      if (!result.success) throw wrongForm(result.target, result.error)
    },
  })
  api.use('/api/*', async (c, next) => {
    await next()
    // Records and recordings must not outlive their deletion in some cache.
    if (!c.res.headers.has('Cache-Control')) c.res.headers.set('Cache-Control', 'no-store')
  })
  api.use(
    methodNotAllowed({
      app: api,
      onMethodNotAllowed: (c, methods) => {
        const { body, status } = wrongMethod(c.req.method, methods)
        return c.json(body, status, { Allow: methods.join(', ') })
      },
    }),
  )
  api.doc31('/api/openapi.json', {
    openapi: '3.1.0',
    info: {
      title: 'Shearline',
      version: parts.version,
      description: 'The record of key jobs: facts in, folded jobs and sealed documents out.',
      license: { name: 'Apache-2.0' },
    },
  })
  return api.openapiRoutes([
    ...deviceRoutes(parts),
    ...recipientRoutes(parts),
    ...factRoutes(parts),
    ...jobRoutes(parts),
    ...documentRoutes(parts),
    ...blobRoutes(parts),
    ...arrivingRoutes(parts),
    address({
      route: createRoute({
        method: 'get',
        path: '/api/events',
        summary: 'Server-sent events: `{ job }` whenever facts of a job arrive.',
        responses: {
          200: { description: 'The events.', content: { 'text/event-stream': { schema: z.string() } } },
          ...problems,
        },
      }),
      handler: (c) => liveJobs(c, parts.store),
    }),
  ] as const)
}

function wrongMethod(method: string, methods: readonly string[]): Problem {
  return new Problem(405, 'wrong-method', {
    what: `This address does not take ${method}.`,
    where: method,
    doNext: `Use ${methods.join(' or ')}.`,
  })
}
