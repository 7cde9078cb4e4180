/** @module Every string of the bench, by key, in the language of the person who works with it. */

import { setupI18n } from '@lingui/core'
import { compileMessage } from '@lingui/message-utils/compileMessage'
import type { Language } from '@shearline/jobfile'
import { en } from './en.ts'

export type WordKey = keyof typeof en
export type WordValues = Readonly<Record<string, string | number>>

/** The words of one language, by key. */
export type BenchWords = Readonly<Record<WordKey, string>>

const i18n = setupI18n({ locale: 'en', messages: { en } })
i18n.setMessagesCompiler(compileMessage)

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
  return i18n._(key, values === undefined ? {} : { ...values })
}
