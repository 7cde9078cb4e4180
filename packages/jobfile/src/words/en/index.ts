/** @module The English catalogue. Its codes are the list of codes that every language must have. */
import { authorityWords, cautionWords } from './authority.ts'
import { byHandWords } from './by-hand.ts'
import { custodyWords } from './custody.ts'
import { documentWords } from './document.ts'
import { explanationWords, faultWords, readingWords } from './evidence.ts'
import { comparisonWords } from './faults.ts'
import { invoiceWords } from './invoice.ts'
import { invoiceRuleWords } from './invoice-rules.ts'
import { needWords, nextWords, tumblerWords } from './job.ts'
import { differenceWords, keyWords, statementWords } from './keys.ts'
import { pictureWords } from './pictures.ts'
import { policyWords } from './policy.ts'
import { powerWords } from './power.ts'
import { practiceWords } from './practice.ts'
import { remoteWords } from './remote.ts'
import { sheetWords } from './sheets.ts'
import { signedWords } from './signed.ts'
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
  ...comparisonWords,
  ...authorityWords,
  ...cautionWords,
  ...custodyWords,
  ...documentWords,
  ...byHandWords,
  ...invoiceWords,
  ...invoiceRuleWords,
  ...pictureWords,
  ...sheetWords,
  ...policyWords,
  ...powerWords,
  ...practiceWords,
  ...signedWords,
  ...teachingWords,
  ...remoteWords,
} as const
