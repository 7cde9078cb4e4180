import { en } from './en/index.ts'

/** A code that the catalogue has words for. */
export type Code = keyof typeof en

/** Words of one language in ICU message format, by code. */
export type Catalogue = Readonly<Record<Code, string>>

/** A language that has a whole catalogue, as BCP 47 primary language subtag. */
export type Language = 'en'

export const catalogues: Readonly<Record<Language, Catalogue>> = { en }

/** Every language there is a whole catalogue for. */
export const languages = Object.keys(catalogues) as readonly Language[]

/** Every code, in the order of the English catalogue. */
export const codes = Object.keys(en) as readonly Code[]

/** True when the catalogue has words for this code. */
export function isCode(text: string): text is Code {
  return Object.hasOwn(en, text)
}

/** The language to write in for a BCP 47 tag: its primary subtag when we have it, else English. */
export function languageFor(tag: string): Language {
  const primary = tag.split('-')[0]?.toLowerCase() ?? ''
  return languages.find((language) => language === primary) ?? 'en'
}
