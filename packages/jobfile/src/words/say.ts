/** @module Says codes in words: ICU messages through @lingui/core. */
import { type I18n, setupI18n } from '@lingui/core'
import { compileMessageOrThrow } from '@lingui/message-utils/compileMessage'
import { type Code, catalogueOf, type Language } from './catalogues.ts'
import { catalogueAsOf, spokenAs } from './past.ts'

/** What fills a message's places: names, texts, and plain counts. Numbers with a unit come formatted. */
export type Params = Readonly<Record<string, string | number>>

const voices = new Map<Language, I18n>()

/**
 * The compiled catalogue of a language, made once. Throws when a message of ours is not ICU message format, and when
 * the words of the language were not added: a document must not change its language unseen.
 */
function voice(language: Language): I18n {
  const known = voices.get(language)
  if (known !== undefined) return known
  const { language: locale, edition } = spokenAs(language)
  const words = catalogueOf(locale)
  if (words === undefined)
    throw new Error(`The words of "${language}" are not loaded: call addCatalogue or addEveryLanguage first.`)
  const catalogue = catalogueAsOf(words, locale, edition)
  const messages = Object.fromEntries(
    Object.entries(catalogue).map(([code, text]) => [code, compileMessageOrThrow(text)]),
  )
  // European digits in every language and every browser: the same record must give the same page anywhere.
  const made = setupI18n({ locale, locales: [`${locale}-u-nu-latn`], messages: { [locale]: messages } })
  voices.set(language, made)
  return made
}

// @lingui/core decodes \u and \x escapes in the finished text, which would change what a customer wrote.
const heldBackslash = '\uE05C'

/** The words of a code in a language, with its places filled. A place without a value is left empty. */
export function say(language: Language, code: Code, params: Params = {}): string {
  const held = Object.fromEntries(
    Object.entries(params).map(([name, value]) => [
      name,
      typeof value === 'string' ? value.replaceAll('\\', heldBackslash) : value,
    ]),
  )
  return voice(language)._(code, held).replaceAll(heldBackslash, '\\')
}
