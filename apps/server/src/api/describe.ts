import type { OpenAPIRoute, RouteConfig, z } from '@hono/zod-openapi'
import { problemSchema } from './schemas.ts'

/** An answer in JSON, as OpenAPI describes it. */
export function json<T extends z.ZodType>(schema: T, description: string) {
  return { description, content: { 'application/json': { schema } } }
}

/** A body in JSON that must be there. */
export function jsonBody<T extends z.ZodType>(schema: T) {
  return { required: true, content: { 'application/json': { schema } } }
}

/** The answers every address can give when the request is not as it should be. */
export const problems = {
  403: json(problemSchema, 'Another host was named, or a page of another site sent it.'),
  422: json(problemSchema, 'The request does not fit, or was refused.'),
  500: json(problemSchema, 'The server or its disk failed; `error.code` says how.'),
} as const

/** One address: its description and what answers it, checked against each other by the compiler. */
export function address<R extends RouteConfig>(of: {
  readonly route: R
  readonly handler: OpenAPIRoute<R>['handler']
}) {
  return of
}
