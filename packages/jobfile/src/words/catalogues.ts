import { en } from './en/index.ts'

/** A code that the catalogue has words for. */
export type Code = keyof typeof en

/** Words of one language in ICU message format, by code. */
export type Catalogue = Readonly<Record<Code, string>>

/** Words of one topic in another language: the same codes as the English ones. */
export type SameCodes<Words> = Readonly<Record<keyof Words, string>>

/** Every language there is a whole catalogue for, as BCP 47 primary language subtags. */
export const languages = ['en', 'de', 'fr', 'es', 'pl', 'ar'] as const
export type Language = (typeof languages)[number]

/**
 * English is always there. The others are a hundred kilobytes together, so a page that speaks one language brings
 * that one only: `addCatalogue(await import('@shearline/jobfile/words/de'))`.
 */
const held = new Map<Language, Catalogue>([['en', en]])

/** Makes the words of a language known. Adding them again changes nothing. */
export function addCatalogue(language: Language, catalogue: Catalogue): void {
  held.set(language, catalogue)
}

/** The words of a language, or undefined when they have not been added. */
export function catalogueOf(language: Language): Catalogue | undefined {
  return held.get(language)
}

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

/** Languages of ours that are written from right to left. */
const rightToLeft: ReadonlySet<string> = new Set(['ar'])

/** The direction a language is written in. */
export function directionOf(language: Language): 'ltr' | 'rtl' {
  return rightToLeft.has(language) ? 'rtl' : 'ltr'
}
