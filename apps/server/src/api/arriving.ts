import { Readable } from 'node:stream'
import type { ReadableStream as NodeReadableStream } from 'node:stream/web'
import { createRoute, z } from '@hono/zod-openapi'
import { sha256Hex } from '@shearline/jobfile'
import { Problem, take } from '../problem/index.ts'
import { address, json, problems } from './describe.ts'
import { mediaTypeOf } from './media-type.ts'
import { PartFiles } from './part-files.ts'
import type { ApiParts } from './parts.ts'
import { problemSchema, sha256Param } from './schemas.ts'

const offsetHeader = 'Upload-Offset'

/** How far an upload has come: the header names are those of draft-ietf-httpbis-resumable-upload. */
const progress = z.object({
  sha256: sha256Hex,
  /** Bytes that are here; the next part begins there. */
  received: z.number().int(),
  /** The whole blob is kept under its hash. */
  complete: z.boolean(),
})

/**
 * Large blobs in parts, so that a lost line or a restarted server costs no byte twice. Modelled on
 * draft-ietf-httpbis-resumable-upload (offset asked for, appended to, refused with 409 when it differs); the
 * address is the content's own hash, so nothing has to be created first. See docs/decisions/0014.
 */
export function arrivingRoutes({ store, maxBlobBytes, partsFolder }: ApiParts) {
  const parts = new PartFiles(partsFolder, maxBlobBytes)
  return [
    address({
      route: createRoute({
        method: 'get',
        path: '/api/blobs/{sha256}/parts',
        summary: 'How many bytes of a blob are here, counted from its first; HEAD answers in Upload-Offset.',
        request: { params: sha256Param },
        responses: { 200: json(progress, 'The next part begins at `received`.'), ...problems },
      }),
      handler: async (c) => {
        const { sha256 } = c.req.valid('param')
        const whole = await store.blobEntry(sha256)
        const received = whole?.bytes ?? (await parts.received(sha256))
        c.header(offsetHeader, String(received))
        return c.json({ sha256, received, complete: whole !== null }, 200)
      },
    }),
    address({
      route: createRoute({
        method: 'patch',
        path: '/api/blobs/{sha256}/parts',
        summary:
          'Adds the body at Upload-Offset. With `Upload-Complete: ?1` the whole is hashed and kept under its SHA-256.',
        request: {
          params: sha256Param,
          headers: z.object({
            'upload-offset': z.string().regex(/^\d{1,15}$/, 'a number of bytes'),
            'upload-complete': z.enum(['?0', '?1']).default('?0'),
          }),
        },
        responses: {
          200: json(progress, 'The part is on the disk.'),
          409: json(problemSchema, 'Another offset: `error.received` says how many bytes are here.'),
          413: json(problemSchema, 'Larger than this server accepts.'),
          507: json(problemSchema, 'No room left.'),
          ...problems,
        },
      }),
      handler: async (c) => {
        const { sha256 } = c.req.valid('param')
        const headers = c.req.valid('header')
        const whole = await store.blobEntry(sha256)
        if (whole !== null) return c.json({ sha256, received: whole.bytes, complete: true }, 200)
        const body = c.req.raw.body as NodeReadableStream<Uint8Array> | null
        const source = body === null ? Readable.from([]) : Readable.fromWeb(body)
        const added = await appendOrExplain(() =>
          parts.append(sha256, Number(headers['upload-offset']), source),
        )
        if (added.outcome === 'wrong-offset') throw wrongOffset(sha256, added.at)
        if (added.outcome === 'line-broken') throw lineBroken(sha256, added.at)
        if (added.outcome === 'too-large') {
          await parts.drop(sha256)
          throw tooLarge(sha256, maxBlobBytes)
        }
        if (headers['upload-complete'] === '?0') {
          c.header(offsetHeader, String(added.at))
          return c.json({ sha256, received: added.at, complete: false }, 200)
        }
        const kept = await store.putBlob(
          sha256,
          mediaTypeOf(c.req.header('content-type')),
          parts.read(sha256),
          { maxBytes: maxBlobBytes },
        )
        // Kept under its hash or found to be other bytes: either way the parts are of no more use.
        await parts.drop(sha256)
        const { bytes } = take(kept)
        return c.json({ sha256, received: bytes, complete: true }, 200)
      },
    }),
  ] as const
}

/** The store explains its own disk; the parts lie beside it. */
async function appendOrExplain<T>(append: () => Promise<T>): Promise<T> {
  try {
    return await append()
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : ''
    if (code !== 'ENOSPC' && code !== 'EDQUOT') throw error
    throw new Problem(507, 'disk-full', {
      what: 'The disk of the server is full.',
      doNext: 'Free space there. The device keeps everything and sends it later by itself.',
    })
  }
}

function wrongOffset(sha256: string, received: number): Problem {
  return new Problem(
    409,
    'wrong-offset',
    {
      what: `${received} bytes of these are here, so the next part must begin there.`,
      where: sha256,
      doNext: `Send what follows byte ${received}.`,
    },
    { received },
  )
}

/** Nobody hears this answer; what arrived before is kept. */
function lineBroken(sha256: string, received: number): Problem {
  return new Problem(400, 'line-broken', {
    what: `The line broke after ${received} bytes.`,
    where: sha256,
    doNext: `Send what follows byte ${received}.`,
  })
}

function tooLarge(sha256: string, limit: number): Problem {
  return new Problem(413, 'too-large', {
    what: `It is larger than the ${limit} bytes that are accepted.`,
    where: sha256,
    doNext: 'Split the recording, or raise the limit where the server is started.',
  })
}
