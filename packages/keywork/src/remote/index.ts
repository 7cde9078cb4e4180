/** @module The radio of a remote: measured from short recordings, two of them compared. Never its content. */

export { BAND_ROWS, type BandRow, bandInformation, fieldStrengthLimit, type RadioRegion } from './bands.ts'
export {
  compareRemotes,
  type ReasonCode,
  type RemoteComparison,
  type RemoteReason,
  type RemoteVerdict,
  TOLERANCES,
  type Tolerance,
} from './compare.ts'
export type { DurationCluster } from './durations.ts'
export { type IqBlock, IqReader, type IqSamples } from './iq-reader.ts'
export type { Modulation } from './keyed.ts'
export { measureRemote } from './measure.ts'
export type {
  OutlinePicture,
  PulsePicture,
  RemotePictures,
  SpectrumPicture,
  WaterfallPicture,
} from './pictures.ts'
export { type RecordingName, readRecordingName } from './recording-name.ts'
export { type ResolvedSetting, resolveSetting, type SettingSources } from './recording-setting.ts'
export { bytesPerSample, type SampleFormat } from './sample-format.ts'
export type { RecordingSetting } from './sender-measurement.ts'
export { readSigmf, type SigmfDescription, type SigmfRecording, writeSigmf } from './sigmf.ts'
export { describeReason, type RemoteSummary, summariseRemote } from './summary.ts'
export type {
  BurstSummary,
  LimitCode,
  MeasuredRemote,
  RemoteFinding,
  RemoteFindingCode,
  RemoteMeasurement,
  SenderMeasurement,
} from './types.ts'
