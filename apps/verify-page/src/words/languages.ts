/** @module The languages of the page: which one it begins in, what each calls itself, and all their words. */
import { type Language, languages } from '@shearline/jobfile'
import { ar } from './ar.ts'
import { de } from './de.ts'
import { en } from './en.ts'
import { es } from './es.ts'
import { fr } from './fr.ts'
import { pl } from './pl.ts'

/** The words of every language: the page is one file and can fetch none later. */
export const everyLanguage: Readonly<Record<Language, Readonly<Record<keyof typeof en, string>>>> = {
  en,
  de,
  fr,
  es,
  pl,
  ar,
}

/** What each language calls itself. Never translated: whoever looks for a language must be able to read its name. */
export const ownNames: Readonly<Record<Language, string>> = {
  en: 'English',
  de: 'Deutsch',
  fr: 'Français',
  es: 'Español',
  pl: 'Polski',
  ar: 'العربية',
}

/** The first of the wanted languages (BCP 47 tags, best first) that the page speaks, else English. */
export function firstSpoken(wanted: readonly string[]): Language {
  for (const tag of wanted) {
    const found = languages.find((one) => one === tag.split('-')[0]?.toLowerCase())
    if (found !== undefined) return found
  }
  return 'en'
}
