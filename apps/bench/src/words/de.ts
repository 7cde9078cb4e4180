/** @module The German catalogue of the bench. */
import { captureWords } from './de/capture.ts'
import { custodyWords } from './de/custody.ts'
import { factWords } from './de/facts.ts'
import { faultWords } from './de/faults.ts'
import { handoverWords } from './de/handover.ts'
import { identityWords } from './de/identity.ts'
import { invoiceWords } from './de/invoice.ts'
import { jobWords } from './de/job.ts'
import { keyWords } from './de/keys.ts'
import { manyScansWords } from './de/many-scans.ts'
import { offlineWords } from './de/offline.ts'
import { packTextWords } from './de/pack-texts.ts'
import { photoWords } from './de/photos.ts'
import { policyWords } from './de/policy.ts'
import { powerWords } from './de/power.ts'
import { practiceWords } from './de/practice.ts'
import { recordingWords } from './de/recording.ts'
import { remoteWords } from './de/remote.ts'
import { reportWords } from './de/reports.ts'
import { sheetWords } from './de/sheets.ts'
import { shellWords } from './de/shell.ts'
import { signingWords } from './de/signing.ts'
import { tagWords } from './de/tags.ts'
import { teachingWords } from './de/teaching.ts'
import { teachingGuideWords } from './de/teaching-guide.ts'
import { teachingRehearsalWords } from './de/teaching-rehearsal.ts'
import { teachingRuleWords } from './de/teaching-rule.ts'
import { vaultWords } from './de/vault.ts'
import { verifyPageWords } from './de/verify-page.ts'
import type { BenchWords } from './index.ts'

export const de = {
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
