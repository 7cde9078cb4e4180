/** @module What comes with the program as English data, in the bench's language: sources, names and places of rule packs. */
import { packLabel, shippedPacks } from '@shearline/jobfile'
import { packTextWords } from '../words/en/pack-texts.ts'
import { t } from '../words/index.ts'

type PackText = keyof typeof packTextWords extends `pack-text.${infer Code}` ? Code : never

const codes: ReadonlyMap<string, PackText> = new Map(
  Object.entries(packTextWords).map(([key, text]) => [text, key.slice('pack-text.'.length) as PackText]),
)

/** A text of a shipped pack or band in the bench's language. What a firm wrote itself stays as it wrote it. */
export function packText(text: string): string {
  const code = codes.get(text)
  return code === undefined ? text : t(`pack-text.${code}`)
}

/** The label a pack stands under on record, as people read it. */
export function packLabelWords(label: string): string {
  const pack = shippedPacks.find((one) => packLabel(one) === label)
  // Older records hold the name alone.
  if (pack === undefined) return packText(label)
  return t('rules.label', { name: packText(pack.name), region: packText(pack.region), dated: pack.dated })
}
