/** @module Every string of the bench, by key, in the language of the person who works with it. */
import { setupI18n } from '@lingui/core'
import { compileMessage } from '@lingui/message-utils/compileMessage'
import { en } from './en.ts'

export type WordKey = keyof typeof en
export type WordValues = Readonly<Record<string, string | number>>

const i18n = setupI18n({ locale: 'en', messages: { en } })
i18n.setMessagesCompiler(compileMessage)

/** The language the bench speaks now (BCP 47). */
export function language(): string {
  return i18n.locale
}

/** The form dates and numbers are written in: the person's own variant of the language, as the browser states it. */
export function region(): string {
  const own = navigator.languages.find((one) => one === i18n.locale || one.startsWith(`${i18n.locale}-`))
  return own ?? i18n.locale
}

/** The words of a key with its values filled in (ICU message format). */
export function t(key: WordKey, values?: WordValues): string {
  return i18n._(key, values === undefined ? {} : { ...values })
}
