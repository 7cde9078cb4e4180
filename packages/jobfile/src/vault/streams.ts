/** @module The few things the vault does with byte streams. */

/** Gives the same bytes anew each time it is called, as a file does. */
export type ByteSource = () => ReadableStream<Uint8Array>

/** A stream of bytes that are in memory. */
export function streamOf(...pieces: readonly Uint8Array[]): ReadableStream<Uint8Array> {
  let next = 0
  return new ReadableStream<Uint8Array>({
    pull(controller) {
      const piece = pieces[next++]
      if (piece === undefined) controller.close()
      else controller.enqueue(piece)
    },
  })
}

/** The pieces of a stream one after the other. Safari has no iteration of streams, so this asks its reader. */
export async function* piecesOf(stream: ReadableStream<Uint8Array>): AsyncGenerator<Uint8Array> {
  const reader = stream.getReader()
  let whole = false
  try {
    for (;;) {
      const { value, done } = await reader.read()
      if (done) {
        whole = true
        return
      }
      if (value.length > 0) yield value
    }
  } finally {
    if (!whole) await reader.cancel().catch(() => undefined)
  }
}

/** All bytes of a stream; for what is known to be small. */
export async function bytesOf(stream: ReadableStream<Uint8Array>): Promise<Uint8Array> {
  const pieces: Uint8Array[] = []
  for await (const piece of piecesOf(stream)) pieces.push(piece)
  return joinBytes(pieces)
}

export function joinBytes(pieces: readonly Uint8Array[]): Uint8Array {
  const out = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0))
  let at = 0
  for (const piece of pieces) {
    out.set(piece, at)
    at += piece.length
  }
  return out
}

/**
 * A stream fed by a generator, which is asked for the next piece only when one is wanted: a piece that was waiting
 * in a queue would be lost when the next one fails.
 */
export function streamFrom(pieces: AsyncGenerator<Uint8Array>): ReadableStream<Uint8Array> {
  return new ReadableStream<Uint8Array>(
    {
      async pull(controller) {
        const { value, done } = await pieces.next()
        if (done === true) controller.close()
        else controller.enqueue(value)
      },
      async cancel() {
        await pieces.return(undefined)
      },
    },
    { highWaterMark: 0 },
  )
}
