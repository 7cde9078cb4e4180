/** @module The Arabic catalogue of the bench. */
import { captureWords } from './ar/capture.ts'
import { custodyWords } from './ar/custody.ts'
import { factWords } from './ar/facts.ts'
import { faultWords } from './ar/faults.ts'
import { handoverWords } from './ar/handover.ts'
import { identityWords } from './ar/identity.ts'
import { invoiceWords } from './ar/invoice.ts'
import { jobWords } from './ar/job.ts'
import { keyWords } from './ar/keys.ts'
import { manyScansWords } from './ar/many-scans.ts'
import { offlineWords } from './ar/offline.ts'
import { packTextWords } from './ar/pack-texts.ts'
import { photoWords } from './ar/photos.ts'
import { policyWords } from './ar/policy.ts'
import { powerWords } from './ar/power.ts'
import { practiceWords } from './ar/practice.ts'
import { recordingWords } from './ar/recording.ts'
import { remoteWords } from './ar/remote.ts'
import { reportWords } from './ar/reports.ts'
import { sheetWords } from './ar/sheets.ts'
import { shellWords } from './ar/shell.ts'
import { signingWords } from './ar/signing.ts'
import { tagWords } from './ar/tags.ts'
import { teachingWords } from './ar/teaching.ts'
import { teachingGuideWords } from './ar/teaching-guide.ts'
import { teachingRehearsalWords } from './ar/teaching-rehearsal.ts'
import { teachingRuleWords } from './ar/teaching-rule.ts'
import { vaultWords } from './ar/vault.ts'
import { verifyPageWords } from './ar/verify-page.ts'
import type { BenchWords } from './index.ts'

export const ar = {
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
