/** @module Every string of the bench, by key, in the language of the person who works with it. */

import { setupI18n } from '@lingui/core'
import { compileMessage } from '@lingui/message-utils/compileMessage'
import { directionOf, type Language } from '@shearline/jobfile'
import { en } from './en.ts'
import { ownWay, setApart } from './set-apart.ts'

export type WordKey = keyof typeof en
export type WordValues = Readonly<Record<string, string | number>>

/** The words of one language, by key. */
export type BenchWords = Readonly<Record<WordKey, string>>

const i18n = setupI18n({ locale: 'en', messages: { en } })
// Without this a text is taken apart each time it is said: a hundred times for one dialog.
const compiled = new Map<string, ReturnType<typeof compileMessage>>()
i18n.setMessagesCompiler((text) => {
  const known = compiled.get(text) ?? compileMessage(text)
  compiled.set(text, known)
  return known
})

/** The language the bench speaks now (BCP 47). */
export function language(): Language {
  return i18n.locale as Language
}

/** Speaks a language from now on; its words must be the whole catalogue. */
export function activate(language: Language, words: BenchWords): void {
  i18n.load(language, words)
  i18n.activate(language, [`${language}-u-nu-latn`])
}

/**
 * The form dates and numbers are written in: the person's own variant of the language, as the browser states it.
 * Digits are always the European ones: a VIN, a fault code or a voltage must read the same on the tool beside it.
 */
export function region(): string {
  const own = navigator.languages.find((one) => one === i18n.locale || one.startsWith(`${i18n.locale}-`))
  const tag = own ?? i18n.locale
  return i18n.locale === 'ar' && !tag.includes('-u-') ? `${tag}-u-nu-latn` : tag
}

/** The words of a key with its values filled in (ICU message format). */
export function t(key: WordKey, values?: WordValues): string {
  return readable(i18n._(key, values === undefined ? {} : valuesOf(values)))
}

/** Values as they stand in a text: where people read from the right, names in Latin letters keep their own order. */
function valuesOf(values: WordValues): Record<string, string | number> {
  if (directionOf(language()) !== 'rtl') return { ...values }
  return Object.fromEntries(
    Object.entries(values).map(([name, value]) => [name, typeof value === 'string' ? ownWay(value) : value]),
  )
}

/**
 * A text as it is shown: no line ends before a percent or degree sign, and where people read from the right, numbers
 * with their units are set apart.
 */
export function readable(text: string): string {
  if (directionOf(language()) === 'rtl') return setApart(text)
  return text.replace(/(\d) (?=%|\u00b0C)/g, '$1\u00a0')
}
