import { Readable } from 'node:stream'
import type { ReadableStream as NodeReadableStream } from 'node:stream/web'
import { createRoute, z } from '@hono/zod-openapi'
import { sha256Hex } from '@shearline/jobfile'
import { bytesPolicy } from '../local/headers.ts'
import { take } from '../problem/index.ts'
import { address, json, problems } from './describe.ts'
import { mediaTypeOf } from './media-type.ts'
import type { ApiParts } from './parts.ts'
import { problemSchema, sha256Param } from './schemas.ts'
import { streamBlob } from './stream.ts'

/** Recordings and photos, kept by their content. */
export function blobRoutes({ store, maxBlobBytes }: ApiParts) {
  return [
    address({
      route: createRoute({
        method: 'put',
        path: '/api/blobs/{sha256}',
        summary: 'Keeps the bytes of the body under their SHA-256; the same bytes again change nothing.',
        request: { params: sha256Param },
        responses: {
          200: json(z.object({ sha256: sha256Hex, bytes: z.number().int() }), 'They are on the disk.'),
          413: json(problemSchema, 'Larger than this server accepts.'),
          507: json(problemSchema, 'No room left.'),
          ...problems,
        },
      }),
      handler: async (c) => {
        const { sha256 } = c.req.valid('param')
        const type = mediaTypeOf(c.req.header('content-type'))
        const body = c.req.raw.body as NodeReadableStream<Uint8Array> | null
        const bytes = body === null ? Readable.from([]) : Readable.fromWeb(body)
        const kept = take(await store.putBlob(sha256, type, bytes, { maxBytes: maxBlobBytes }))
        return c.json({ sha256: kept.sha256, bytes: kept.bytes }, 200)
      },
    }),
    address({
      route: createRoute({
        method: 'get',
        path: '/api/blobs/{sha256}',
        summary: 'The bytes under a SHA-256; HEAD tells whether they are here.',
        request: { params: sha256Param },
        responses: {
          200: {
            description: 'The bytes.',
            content: { 'application/octet-stream': { schema: z.string().openapi({ format: 'binary' }) } },
          },
          404: json(problemSchema, 'These bytes are not here.'),
          ...problems,
        },
      }),
      handler: async (c) =>
        await streamBlob(c, store, c.req.valid('param').sha256, {
          'Content-Disposition': 'attachment',
          'Content-Security-Policy': bytesPolicy,
        }),
    }),
  ] as const
}
