/** @module The French catalogue of the bench. */
import { captureWords } from './fr/capture.ts'
import { custodyWords } from './fr/custody.ts'
import { factWords } from './fr/facts.ts'
import { faultWords } from './fr/faults.ts'
import { handoverWords } from './fr/handover.ts'
import { identityWords } from './fr/identity.ts'
import { invoiceWords } from './fr/invoice.ts'
import { jobWords } from './fr/job.ts'
import { keyWords } from './fr/keys.ts'
import { manyScansWords } from './fr/many-scans.ts'
import { offlineWords } from './fr/offline.ts'
import { packTextWords } from './fr/pack-texts.ts'
import { photoWords } from './fr/photos.ts'
import { policyWords } from './fr/policy.ts'
import { powerWords } from './fr/power.ts'
import { practiceWords } from './fr/practice.ts'
import { recordingWords } from './fr/recording.ts'
import { remoteWords } from './fr/remote.ts'
import { reportWords } from './fr/reports.ts'
import { sheetWords } from './fr/sheets.ts'
import { shellWords } from './fr/shell.ts'
import { signingWords } from './fr/signing.ts'
import { tagWords } from './fr/tags.ts'
import { teachingWords } from './fr/teaching.ts'
import { teachingGuideWords } from './fr/teaching-guide.ts'
import { teachingRehearsalWords } from './fr/teaching-rehearsal.ts'
import { teachingRuleWords } from './fr/teaching-rule.ts'
import { vaultWords } from './fr/vault.ts'
import { verifyPageWords } from './fr/verify-page.ts'
import type { BenchWords } from './index.ts'

export const fr = {
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
