/** @module Says the words of the page, by key, in the language that was chosen. */
import { setupI18n } from '@lingui/core'
import { compileMessage } from '@lingui/message-utils/compileMessage'
import { directionOf, type Language } from '@shearline/jobfile'
import type { en } from './words/en.ts'
import { everyLanguage } from './words/languages.ts'

export type WordKey = keyof typeof en

const i18n = setupI18n({ locale: 'en', messages: everyLanguage })
i18n.setMessagesCompiler(compileMessage)

/** The language the page speaks now. */
export function spokenLanguage(): Language {
  return i18n.locale as Language
}

/** Speaks a language from now on, and tells the document which and in what direction it is written. */
export function speak(language: Language): void {
  // European digits in every language: a byte offset must read as in the findings and on the command line.
  i18n.activate(language, `${language}-u-nu-latn`)
  document.documentElement.lang = language
  document.documentElement.dir = directionOf(language)
}

/** First strong isolate and its end (Unicode UAX 9): a file name in Latin letters must not turn an Arabic sentence. */
const isolated = (text: string) => `\u2068${text}\u2069`

/** The words of a key with its values filled in (ICU message format). */
export function t(key: WordKey, values: Readonly<Record<string, string | number>> = {}): string {
  const turned = directionOf(spokenLanguage()) === 'rtl'
  const filled = Object.entries(values).map(([name, value]) => [
    name,
    turned && typeof value === 'string' ? isolated(value) : value,
  ])
  return i18n._(key, Object.fromEntries(filled))
}
