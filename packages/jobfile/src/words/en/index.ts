/** @module The English catalogue. Its codes are the list of codes that every language must have. */
import { authorityWords, cautionWords } from './authority.ts'
import { custodyWords } from './custody.ts'
import { documentWords } from './document.ts'
import { explanationWords, faultWords, readingWords } from './evidence.ts'
import { needWords, nextWords, tumblerWords } from './job.ts'
import { differenceWords, keyWords, statementWords } from './keys.ts'
import { powerWords } from './power.ts'
import { practiceWords } from './practice.ts'
import { remoteWords } from './remote.ts'
import { teachingWords } from './teaching.ts'

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
  ...custodyWords,
  ...documentWords,
  ...powerWords,
  ...practiceWords,
  ...teachingWords,
  ...remoteWords,
} as const
