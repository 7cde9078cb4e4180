/** @module The Polish catalogue of the bench. */

import type { BenchWords } from './index.ts'
import { captureWords } from './pl/capture.ts'
import { custodyWords } from './pl/custody.ts'
import { factWords } from './pl/facts.ts'
import { faultWords } from './pl/faults.ts'
import { handoverWords } from './pl/handover.ts'
import { identityWords } from './pl/identity.ts'
import { invoiceWords } from './pl/invoice.ts'
import { jobWords } from './pl/job.ts'
import { keyWords } from './pl/keys.ts'
import { manyScansWords } from './pl/many-scans.ts'
import { offlineWords } from './pl/offline.ts'
import { packTextWords } from './pl/pack-texts.ts'
import { photoWords } from './pl/photos.ts'
import { policyWords } from './pl/policy.ts'
import { powerWords } from './pl/power.ts'
import { practiceWords } from './pl/practice.ts'
import { recordingWords } from './pl/recording.ts'
import { remoteWords } from './pl/remote.ts'
import { reportWords } from './pl/reports.ts'
import { sheetWords } from './pl/sheets.ts'
import { shellWords } from './pl/shell.ts'
import { signingWords } from './pl/signing.ts'
import { tagWords } from './pl/tags.ts'
import { teachingWords } from './pl/teaching.ts'
import { teachingGuideWords } from './pl/teaching-guide.ts'
import { teachingRehearsalWords } from './pl/teaching-rehearsal.ts'
import { teachingRuleWords } from './pl/teaching-rule.ts'
import { vaultWords } from './pl/vault.ts'
import { verifyPageWords } from './pl/verify-page.ts'

export const pl = {
  ...shellWords,
  ...jobWords,
  ...keyWords,
  ...teachingWords,
  ...teachingRuleWords,
  ...teachingRehearsalWords,
  ...teachingGuideWords,
  ...policyWords,
  ...packTextWords,
  ...powerWords,
  ...recordingWords,
  ...handoverWords,
  ...factWords,
  ...faultWords,
  ...identityWords,
  ...reportWords,
  ...practiceWords,
  ...manyScansWords,
  ...custodyWords,
  ...offlineWords,
  ...vaultWords,
  ...remoteWords,
  ...captureWords,
  ...photoWords,
  ...signingWords,
  ...tagWords,
  ...invoiceWords,
  ...sheetWords,
  ...verifyPageWords,
} satisfies BenchWords
