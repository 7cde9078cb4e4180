/** @module The English catalogue of the bench. Its keys are the list of keys every language must have. */
import { factWords } from './en/facts.ts'
import { handoverWords } from './en/handover.ts'
import { jobWords } from './en/job.ts'
import { keyWords } from './en/keys.ts'
import { recordingWords } from './en/recording.ts'
import { shellWords } from './en/shell.ts'
import { teachingWords } from './en/teaching.ts'

export const en = {
  ...shellWords,
  ...jobWords,
  ...keyWords,
  ...teachingWords,
  ...recordingWords,
  ...handoverWords,
  ...factWords,
} as const
