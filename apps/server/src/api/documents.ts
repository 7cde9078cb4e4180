import { webcrypto } from 'node:crypto'
import { buffer } from 'node:stream/consumers'
import { createRoute, z } from '@hono/zod-openapi'
import {
  type Fact,
  factHash,
  type HandoverCheck,
  sha256Hex,
  Verifier,
  verifyHandover,
} from '@shearline/jobfile'
import { documentPolicy } from '../local/headers.ts'
import { Problem } from '../problem/index.ts'
import { unknownJob } from '../seal/index.ts'
import { address, json, jsonBody, problems } from './describe.ts'
import type { ApiParts } from './parts.ts'
import { jobParam, problemSchema } from './schemas.ts'
import { streamBlob, unknownBlob } from './stream.ts'

/** Sealed documents: the latest of a job, and those that were sealed on a device. */
export function documentRoutes({ store }: ApiParts) {
  return [
    address({
      route: createRoute({
        method: 'get',
        path: '/api/jobs/{job}/document',
        summary: 'The document of the latest seal of a job.',
        request: { params: jobParam },
        responses: {
          200: { description: 'The PDF.', content: { 'application/pdf': { schema: z.string() } } },
          404: json(problemSchema, 'The job is unknown or has no document.'),
          ...problems,
        },
      }),
      handler: async (c) => {
        const { job } = c.req.valid('param')
        const [document] = await store.documentsOf(job)
        if (document !== undefined) {
          return await streamBlob(c, store, document.blob, {
            'Content-Type': 'application/pdf',
            'Content-Disposition': `inline; filename="${job}.pdf"`,
            'Content-Security-Policy': documentPolicy,
            'X-Frame-Options': 'SAMEORIGIN',
          })
        }
        if ((await store.jobEntry(job)) === null) throw unknownJob(job)
        throw new Problem(404, 'no-document', {
          what: 'This job has no sealed document.',
          where: job,
          doNext: 'Seal the job first.',
        })
      },
    }),
    address({
      route: createRoute({
        method: 'put',
        path: '/api/jobs/{job}/document',
        summary:
          'Takes a document that a device sealed: its bytes must be here as a blob, proven, and of the record kept here.',
        request: {
          params: jobParam,
          body: jsonBody(z.strictObject({ seal: z.uuid(), blob: sha256Hex })),
        },
        responses: {
          200: json(z.object({ seal: z.uuid(), blob: sha256Hex }), 'It is the document of that seal.'),
          404: json(problemSchema, 'The job or the bytes are not here.'),
          409: json(problemSchema, 'It is not proven, or not of the record kept here.'),
          ...problems,
        },
      }),
      handler: async (c) => {
        const { job } = c.req.valid('param')
        const { seal, blob } = c.req.valid('json')
        const facts = await store.factsOfJob(job)
        if (facts.length === 0) throw unknownJob(job)
        const sealed = facts.find((fact) => fact.id === seal && fact.kind === 'document-sealed')
        if (sealed === undefined) throw differs(job, 'The seal it belongs to is not here.')
        const opened = await store.openBlob(blob)
        if (opened === null) throw unknownBlob(blob)
        const bytes = new Uint8Array(await buffer(opened.stream))
        const check = await verifyHandover(bytes, new Verifier(webcrypto.subtle))
        const wrong = whatDiffers(check, sealed, facts)
        if (wrong !== null) throw differs(job, wrong)
        await store.keepDocument({ job, seal, blob, sealedAt: sealed.at })
        return c.json({ seal, blob }, 200)
      },
    }),
  ] as const
}

/**
 * What keeps a document from being that of a seal, or null. The record inside must be the one kept here, fact by
 * fact by hash: that, and not the bytes of the file, is what two documents of one seal have in common.
 */
function whatDiffers(check: HandoverCheck, sealed: Fact, facts: readonly Fact[]): string | null {
  // A bench of another release words its pages otherwise; they are then not compared, and are no forgery.
  const error = check.findings.find(
    ({ severity, code }) => severity === 'error' && code !== 'page-not-compared',
  )
  if (error !== undefined) return `It is not proven: ${error.what}`
  const inside = check.record?.facts ?? []
  const kept = new Set(facts.map(factHash))
  if (!inside.every((fact) => kept.has(factHash(fact)))) return 'It holds facts that are not kept here.'
  return inside.findLast((fact) => fact.kind === 'document-sealed')?.id === sealed.id
    ? null
    : 'It was sealed with another seal than the one it was sent for.'
}

function differs(job: string, what: string): Problem {
  return new Problem(409, 'document-differs', {
    what,
    where: job,
    doNext: 'The document stays on the device. Seal the job once more there and send it again.',
  })
}
