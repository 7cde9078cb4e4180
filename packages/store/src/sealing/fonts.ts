import { readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import type { Fonts } from '@shearline/jobfile'

let loaded: Promise<Fonts> | undefined

/** The fonts of the document (DejaVu, free licence), read once from their package. */
export function documentFonts(): Promise<Fonts> {
  loaded ??= readFonts()
  return loaded
}

async function readFonts(): Promise<Fonts> {
  const { resolve } = createRequire(import.meta.url)
  const font = (name: string) => readFile(resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`))
  const [regular, bold, mono] = await Promise.all([
    font('DejaVuSans'),
    font('DejaVuSans-Bold'),
    font('DejaVuSansMono'),
  ])
  return { regular, bold, mono }
}
