/**
 * Reads a file in chunks through one reused buffer, so that a recording of any length takes no more memory
 * than one chunk. The chunk belongs to the reader again when `take` returns.
 */
export async function readFile(file: Blob, take: (chunk: Uint8Array) => void): Promise<void> {
  const reader = file.stream().getReader({ mode: 'byob' })
  let buffer = new ArrayBuffer(1 << 20)
  for (;;) {
    const { value, done } = await reader.read(new Uint8Array(buffer))
    if (value === undefined) return
    if (value.length > 0) take(value)
    if (done) return
    buffer = value.buffer
  }
}
