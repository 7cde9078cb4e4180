/** @module Sentences as earlier editions of the document said them, so that documents already handed over stay verifiable. */
import type { Catalogue, Code, Language } from './catalogues.ts'

/** A sentence that was changed: what it was, and the last edition of the document that said it so. */
export interface PastWord {
  readonly language: Language
  readonly code: Code
  readonly until: number
  readonly text: string
}

/** Append-only. Who changes a sentence that documents print puts the old one here (decision 0018). */
export const pastWords: readonly PastWord[] = [
  {
    language: 'en',
    code: 'doc.verify-print',
    until: 1,
    text: 'A print on paper proves nothing by itself: keep the file.',
  },
  {
    language: 'en',
    code: 'doc.verify-how',
    until: 1,
    text: 'Run "shearline verify" with this file. It needs no network and no account. It says "proven", or names the fact or the page that was changed.',
  },
]

/** A language as an edition of the document spoke it: `en@1`. The language itself when none of its words changed. */
export function languageAsOf(
  language: Language,
  edition: number,
  past: readonly PastWord[] = pastWords,
): Language {
  const changed = past.some((word) => word.language === language && word.until >= edition)
  return changed ? (`${language}@${edition}` as Language) : language
}

/** Takes `en@1` apart. */
export function spokenAs(language: Language): {
  readonly language: Language
  readonly edition: number | null
} {
  const [plain = language, edition] = language.split('@')
  return { language: plain as Language, edition: edition === undefined ? null : Number(edition) }
}

/** A catalogue with the sentences of an edition: of each code the first that held at or after it. */
export function catalogueAsOf(
  catalogue: Catalogue,
  language: Language,
  edition: number | null,
  past: readonly PastWord[] = pastWords,
): Catalogue {
  if (edition === null) return catalogue
  const held = past
    .filter((word) => word.language === language && word.until >= edition)
    .sort((a, b) => b.until - a.until)
  return { ...catalogue, ...Object.fromEntries(held.map(({ code, text }) => [code, text])) }
}
