import type { Answer, Ask, OpenedSecret, SealedBlob } from './worker-messages.ts'

/** Asks the vault's worker one thing; the worker, and what it held in memory, ends with the answer. */
function ask(question: Ask): Promise<Answer> {
  const worker = new Worker(new URL('./vault.worker.ts', import.meta.url), { type: 'module' })
  return new Promise<Answer>((resolve, reject) => {
    worker.addEventListener('message', (event: MessageEvent<Answer>) => {
      if (event.data.what === 'failed') reject(new Error(event.data.why))
      else resolve(event.data)
    })
    worker.addEventListener('error', (event) => reject(new Error(event.message)))
    worker.postMessage(question)
  }).finally(() => worker.terminate())
}

/** Compares two reads and, when they are equal, seals one to the recipients. Rejects with the vault's words. */
export async function proveReads(
  first: File,
  second: File,
  words: string,
  recipients: readonly string[],
): Promise<Extract<Answer, { what: 'proven' | 'not-proven' }>> {
  const answer = await ask({ what: 'prove', first, second, words, recipients })
  if (answer.what === 'proven' || answer.what === 'not-proven') return answer
  throw new Error(answer.what)
}

/** Seals a whole recording to the recipients; it is read twice. Rejects with the vault's words. */
export async function sealRecording(file: File, recipients: readonly string[]): Promise<SealedBlob> {
  const answer = await ask({ what: 'seal', file, recipients })
  if (answer.what === 'sealed') return answer.one
  throw new Error(answer.what)
}

/** Opens a sealed file with a private key or a passphrase. Rejects with the vault's words. */
export async function openSealed(
  sealed: Blob,
  keys: { readonly identity: string; readonly passphrase: string },
  digest: string | null,
): Promise<OpenedSecret> {
  const answer = await ask({ what: 'open', sealed, ...keys, digest })
  if (answer.what === 'opened') return answer.opened
  throw new Error(answer.what)
}
