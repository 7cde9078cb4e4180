/** @module The recording itself, kept only sealed (decision 0005: its frames hold what the messages leave out). */
import { stat } from 'node:fs/promises'
import { basename } from 'node:path'
import type { Store } from '@shearline/store'
import { CouldNot } from '../output/answer.ts'
import { fileSource, leaveNoCore, vaultWork } from './files.ts'
import { freshKey, sealIntoJob, sealToOf } from './keep.ts'

/**
 * Makes sure that a recording can be kept sealed, before anything of it is taken in. The answer seals it into a job
 * and gives the SHA-256 of the sealed file. Throws CouldNot.
 */
export async function recordingKeeper(
  store: Store,
  file: string,
): Promise<(job: string, by: string) => Promise<string>> {
  leaveNoCore()
  const found = await stat(file).catch(() => null)
  if (found?.isFile() !== true)
    throw new CouldNot(
      'Only a file can be kept sealed, because it is read twice.',
      'Save it to a file first.',
    )
  const to = await vaultWork(() => sealToOf(store, undefined))
  return (job, by) =>
    vaultWork(async () => {
      const secret = {
        source: fileSource(file),
        class: 'recording',
        what: basename(file),
        bytes: found.size,
        key: freshKey(),
      } as const
      return (await sealIntoJob(store, job, by, secret, to)).blob
    })
}
