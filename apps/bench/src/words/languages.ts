/** @module Which language the bench speaks: chosen on this device, else the first of the browser's that we have. */

import { addCatalogue, type Catalogue, directionOf, type Language, languages } from '@shearline/jobfile'
import { en } from './en.ts'
import { activate, type BenchWords, language } from './index.ts'

/** What each language calls itself. Never translated: whoever looks for his language must be able to read it. */
export const ownNames: Readonly<Record<Language, string>> = {
  en: 'English',
  de: 'Deutsch',
  fr: 'Français',
  es: 'Español',
  pl: 'Polski',
  ar: 'العربية',
}

interface Spoken {
  readonly bench: BenchWords
  readonly engine: Catalogue
}

/** One language is brought at a time; all of them lie in the device's cache for a place without a signal. */
const others: Readonly<Partial<Record<Language, () => Promise<Spoken>>>> = {
  de: async () => {
    const [bench, engine] = await Promise.all([import('./de.ts'), import('@shearline/jobfile/words/de')])
    return { bench: bench.de, engine: engine.de }
  },
  fr: async () => {
    const [bench, engine] = await Promise.all([import('./fr.ts'), import('@shearline/jobfile/words/fr')])
    return { bench: bench.fr, engine: engine.fr }
  },
  es: async () => {
    const [bench, engine] = await Promise.all([import('./es.ts'), import('@shearline/jobfile/words/es')])
    return { bench: bench.es, engine: engine.es }
  },
  pl: async () => {
    const [bench, engine] = await Promise.all([import('./pl.ts'), import('@shearline/jobfile/words/pl')])
    return { bench: bench.pl, engine: engine.pl }
  },
  ar: async () => {
    const [bench, engine] = await Promise.all([import('./ar.ts'), import('@shearline/jobfile/words/ar')])
    return { bench: bench.ar, engine: engine.ar }
  },
}

/** Makes what the engines say known in a language, whatever the bench itself speaks: what a customer signs needs it. */
export async function bringEngineWords(wanted: Language): Promise<void> {
  const bring = others[wanted]
  if (bring !== undefined) addCatalogue(wanted, (await bring()).engine)
}

const place = 'shearline-language'

/** The language chosen on this device, else the first of the browser's languages that we have, else English. */
export function chosenLanguage(): Language {
  const wanted = [localStorage.getItem(place) ?? '', ...navigator.languages]
  for (const tag of wanted) {
    const found = languages.find((one) => one === tag.split('-')[0]?.toLowerCase())
    if (found !== undefined) return found
  }
  return 'en'
}

/** Remembers a language and speaks it. Throws when its words cannot be brought; the former one then goes on. */
export async function chooseLanguage(chosen: Language): Promise<void> {
  await speak(chosen)
  localStorage.setItem(place, chosen)
}

const listeners = new Set<() => void>()

/** Calls back after every change of the language. Returns what ends that. */
export function onLanguage(changed: () => void): () => void {
  listeners.add(changed)
  return () => listeners.delete(changed)
}

/** Brings the words of a language and shows the page in it and in its direction. */
export async function speak(wanted: Language): Promise<void> {
  const bring = others[wanted]
  if (bring === undefined) activate('en', en)
  else {
    const { bench, engine } = await bring()
    addCatalogue(wanted, engine)
    activate(wanted, bench)
  }
  document.documentElement.lang = language()
  document.documentElement.dir = directionOf(language())
  for (const changed of listeners) changed()
}
