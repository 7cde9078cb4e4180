/** @module The English catalogue of the bench. Its keys are the list of keys every language must have. */
import { captureWords } from './en/capture.ts'
import { custodyWords } from './en/custody.ts'
import { factWords } from './en/facts.ts'
import { faultWords } from './en/faults.ts'
import { handoverWords } from './en/handover.ts'
import { identityWords } from './en/identity.ts'
import { invoiceWords } from './en/invoice.ts'
import { jobWords } from './en/job.ts'
import { keyWords } from './en/keys.ts'
import { manyScansWords } from './en/many-scans.ts'
import { offlineWords } from './en/offline.ts'
import { packTextWords } from './en/pack-texts.ts'
import { photoWords } from './en/photos.ts'
import { policyWords } from './en/policy.ts'
import { powerWords } from './en/power.ts'
import { practiceWords } from './en/practice.ts'
import { recordingWords } from './en/recording.ts'
import { remoteWords } from './en/remote.ts'
import { reportWords } from './en/reports.ts'
import { sheetWords } from './en/sheets.ts'
import { shellWords } from './en/shell.ts'
import { signingWords } from './en/signing.ts'
import { tagWords } from './en/tags.ts'
import { teachingWords } from './en/teaching.ts'
import { teachingGuideWords } from './en/teaching-guide.ts'
import { teachingRehearsalWords } from './en/teaching-rehearsal.ts'
import { teachingRuleWords } from './en/teaching-rule.ts'
import { vaultWords } from './en/vault.ts'
import { verifyPageWords } from './en/verify-page.ts'

export const en = {
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
} as const
