/** @module Sends a large blob in parts and goes on where it stopped (see docs/decisions/0014). */
import { ask, Refused, Unreachable } from './remote.ts'

/** Bytes of one part: small enough to show progress on a slow line. What came of a broken part is not lost. */
const partBytes = 2 << 20
/** Smaller blobs go in one piece: asking first would cost more than sending twice. */
const onePiece = 1 << 20
/** How often the server may name another offset before this is taken for a fault. */
const mostTurns = 8

interface Progress {
  readonly received: number
  readonly complete: boolean
}

/** Sends a blob unless the server has it; `onProgress` hears how many bytes are there. */
export async function upload(sha256: string, blob: Blob, onProgress: (bytes: number) => void): Promise<void> {
  const address = `/api/blobs/${sha256}`
  const type = { 'content-type': blob.type || 'application/octet-stream' }
  if (blob.size <= onePiece) {
    await ask(address, { method: 'PUT', body: blob, headers: type })
    return
  }
  let { received, complete } = (await ask(`${address}/parts`)) as Progress
  let turns = 0
  while (!complete) {
    onProgress(Math.min(received, blob.size))
    const end = Math.min(blob.size, received + partBytes)
    const last = end >= blob.size
    try {
      const answer = (await ask(`${address}/parts`, {
        method: 'PATCH',
        body: blob.slice(Math.min(received, blob.size), end),
        headers: { ...type, 'upload-offset': String(received), 'upload-complete': last ? '?1' : '?0' },
      })) as Progress
      received = answer.received
      complete = answer.complete
    } catch (error) {
      // Another page or device sends the same bytes, or what the server held hashed to something else.
      const next = error instanceof Refused ? placeNamed(error) : null
      if (next === null || ++turns > mostTurns) throw error
      received = next
    }
  }
}

/** Where the server wants the upload to go on, when its refusal says so. */
function placeNamed({ refusal, answer }: Refused): number | null {
  if (refusal.code === 'hash-differs') return 0
  if (refusal.code !== 'wrong-offset') return null
  const { received } = (answer as { readonly error: { readonly received?: unknown } }).error
  if (typeof received !== 'number') throw new Unreachable('an offset without a place')
  return received
}
