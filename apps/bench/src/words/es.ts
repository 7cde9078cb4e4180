/** @module The Spanish catalogue of the bench. */
import { captureWords } from './es/capture.ts'
import { custodyWords } from './es/custody.ts'
import { factWords } from './es/facts.ts'
import { faultWords } from './es/faults.ts'
import { handoverWords } from './es/handover.ts'
import { identityWords } from './es/identity.ts'
import { invoiceWords } from './es/invoice.ts'
import { jobWords } from './es/job.ts'
import { keyWords } from './es/keys.ts'
import { manyScansWords } from './es/many-scans.ts'
import { offlineWords } from './es/offline.ts'
import { packTextWords } from './es/pack-texts.ts'
import { photoWords } from './es/photos.ts'
import { policyWords } from './es/policy.ts'
import { powerWords } from './es/power.ts'
import { practiceWords } from './es/practice.ts'
import { recordingWords } from './es/recording.ts'
import { remoteWords } from './es/remote.ts'
import { reportWords } from './es/reports.ts'
import { sheetWords } from './es/sheets.ts'
import { shellWords } from './es/shell.ts'
import { signingWords } from './es/signing.ts'
import { tagWords } from './es/tags.ts'
import { teachingWords } from './es/teaching.ts'
import { teachingGuideWords } from './es/teaching-guide.ts'
import { teachingRehearsalWords } from './es/teaching-rehearsal.ts'
import { teachingRuleWords } from './es/teaching-rule.ts'
import { vaultWords } from './es/vault.ts'
import { verifyPageWords } from './es/verify-page.ts'
import type { BenchWords } from './index.ts'

export const es = {
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
