/** @module Hands out the verify page: one HTML file that proves documents without us. */
import { copyFile, readFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { CouldNot } from '../output/answer.ts'

/** Where the build puts it, seen from `src` and from `dist` alike. */
const built = fileURLToPath(new URL('../../../verify-page/dist/verify.html', import.meta.url))

const notBuilt = () =>
  new CouldNot('The verify page has not been built yet.', 'Run "npm start" or "npm run build" once.')

/** The bytes of the verify page. Throws CouldNot when it is not built. */
export async function verifyPage(): Promise<Uint8Array> {
  return await readFile(built).catch(() => {
    throw notBuilt()
  })
}

/** Writes the verify page to a file. Throws CouldNot when it is not built or the place cannot be written to. */
export async function writeVerifyPage(file: string): Promise<void> {
  await verifyPage()
  await copyFile(built, file).catch((error: NodeJS.ErrnoException) => {
    throw new CouldNot(`${file} could not be written (${error.message}).`, 'Choose another place.')
  })
}
