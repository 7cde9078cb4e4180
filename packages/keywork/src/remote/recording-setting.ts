/** @module Sample rate, centre and format of a recording: what was given by hand, then SigMF, then the name. */

import { findingOf } from './findings.ts'
import { readRecordingName } from './recording-name.ts'
import type { SampleFormat } from './sample-format.ts'
import type { RecordingSetting } from './sender-measurement.ts'
import { readSigmf, type SigmfRecording } from './sigmf.ts'
import type { RemoteFinding } from './types.ts'

/** Everything that may say how a recording was made. */
export interface SettingSources {
  readonly name: string
  /** Values given by hand: they go before all others. */
  readonly given?: {
    readonly sampleRateHz?: number
    readonly centreHz?: number
    readonly format?: SampleFormat
  }
  /** Text of the `.sigmf-meta` file. */
  readonly sigmf?: string
}

/** How to read a recording. */
export interface ResolvedSetting {
  /** null when rate or format is not known: it cannot be read. */
  readonly setting: RecordingSetting | null
  /** Each value by itself, so that a form can ask for what is missing. */
  readonly sampleRateHz: number | null
  readonly centreHz: number | null
  readonly format: SampleFormat | null
  readonly headerBytes: number
  readonly findings: readonly RemoteFinding[]
}

/** Decides each value by its first source. No value is assumed. */
export function resolveSetting({ name, given, sigmf }: SettingSources): ResolvedSetting {
  const named = readRecordingName(name)
  const read = sigmf === undefined ? null : readSigmf(sigmf)
  const said: SigmfRecording | null = read?.recording ?? null
  const sampleRateHz = given?.sampleRateHz ?? said?.sampleRateHz ?? named.sampleRateHz
  const centreHz = given?.centreHz ?? said?.centreHz ?? named.centreHz
  const format = given?.format ?? said?.format ?? named.format
  const findings: RemoteFinding[] = [...(read?.findings ?? [])]
  if (sampleRateHz === null) findings.push(findingOf('rate-unknown', {}))
  if (format === null) findings.push(findingOf('format-unknown', {}))
  return {
    setting: sampleRateHz === null || format === null ? null : { sampleRateHz, centreHz },
    sampleRateHz,
    centreHz,
    format,
    headerBytes: said?.headerBytes ?? 0,
    findings,
  }
}
