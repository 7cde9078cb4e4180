/** @module The handover document as this server makes it: jobfile's maker with the open fonts it is set in. */
import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { type Fonts, makeHandover } from '@shearline/jobfile'
import type { MakeHandover } from '../seal/index.ts'

const { resolve } = createRequire(import.meta.url)
let fonts: Promise<Fonts> | undefined

/** Makes the document of a sealed record; the fonts are read once, at the first one. */
export const makeDocument: MakeHandover = async (input) => {
  fonts ??= readFonts()
  return await makeHandover({ ...input, fonts: await fonts })
}

async function readFonts(): Promise<Fonts> {
  const [regular, bold, mono] = await Promise.all(
    ['DejaVuSansCondensed', 'DejaVuSansCondensed-Bold', 'DejaVuSansMono'].map(fontFile),
  )
  if (regular === undefined || bold === undefined || mono === undefined)
    throw new Error('three fonts were read')
  return { regular, bold, mono }
}

async function fontFile(name: string): Promise<Uint8Array> {
  return new Uint8Array(await readFile(resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`)))
}
