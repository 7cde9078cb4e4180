import { Readable } from 'node:stream'
import type { Store } from '@shearline/store'
import type { Context } from 'hono'
import { Problem } from '../problem/index.ts'

/** Answers with the bytes of a blob as a stream, or with its headers alone when only those were asked for. */
export async function streamBlob(
  c: Context,
  store: Store,
  sha256: string,
  headers: Readonly<Record<string, string>>,
): Promise<Response> {
  const entry = await store.blobEntry(sha256)
  const asked = c.req.method === 'HEAD'
  const opened = asked ? null : await store.openBlob(sha256)
  if (entry === null || (opened === null && !asked)) throw unknownBlob(sha256)
  const body = opened === null ? null : (Readable.toWeb(opened.stream) as ReadableStream<Uint8Array>)
  return new Response(body, {
    headers: { 'Content-Type': entry.mediaType, 'Content-Length': String(entry.bytes), ...headers },
  })
}

/** For bytes that are not here. */
export function unknownBlob(sha256: string): Problem {
  return new Problem(404, 'unknown-blob', {
    what: 'These bytes are not here.',
    where: sha256,
    doNext: 'Send them with PUT from the device that has them.',
  })
}
