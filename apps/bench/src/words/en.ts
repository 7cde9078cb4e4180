/** @module The English catalogue of the bench. Its keys are the list of keys every language must have. */
import { custodyWords } from './en/custody.ts'
import { factWords } from './en/facts.ts'
import { faultWords } from './en/faults.ts'
import { handoverWords } from './en/handover.ts'
import { jobWords } from './en/job.ts'
import { keyWords } from './en/keys.ts'
import { offlineWords } from './en/offline.ts'
import { powerWords } from './en/power.ts'
import { recordingWords } from './en/recording.ts'
import { remoteWords } from './en/remote.ts'
import { shellWords } from './en/shell.ts'
import { teachingWords } from './en/teaching.ts'
import { teachingGuideWords } from './en/teaching-guide.ts'
import { teachingRehearsalWords } from './en/teaching-rehearsal.ts'
import { teachingRuleWords } from './en/teaching-rule.ts'
import { vaultWords } from './en/vault.ts'

export const en = {
  ...shellWords,
  ...jobWords,
  ...keyWords,
  ...teachingWords,
  ...teachingRuleWords,
  ...teachingRehearsalWords,
  ...teachingGuideWords,
  ...powerWords,
  ...recordingWords,
  ...handoverWords,
  ...factWords,
  ...faultWords,
  ...custodyWords,
  ...offlineWords,
  ...vaultWords,
  ...remoteWords,
} as const
