/** @module The English catalogue. Its codes are the list of codes that every language must have. */
import { authorityWords, cautionWords } from './authority.ts'
import { documentWords } from './document.ts'
import { explanationWords, faultWords, readingWords } from './evidence.ts'
import { needWords, nextWords, tumblerWords } from './job.ts'
import { differenceWords, keyWords, statementWords } from './keys.ts'

export const en = {
  ...tumblerWords,
  ...needWords,
  ...nextWords,
  ...keyWords,
  ...differenceWords,
  ...statementWords,
  ...readingWords,
  ...faultWords,
  ...explanationWords,
  ...authorityWords,
  ...cautionWords,
  ...documentWords,
} as const
