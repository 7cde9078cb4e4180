import type { Finding } from '@shearline/bus'
import type { DurationCluster } from './durations.ts'
import type { Modulation } from './keyed.ts'
import type { RemotePictures } from './pictures.ts'

/** Why a measurement must not decide anything. */
export type LimitCode =
  | 'no-sender'
  | 'weak'
  | 'off-centre'
  | 'clipped'
  | 'foreign-on-top'
  | 'several-senders'
  | 'few-pulses'

/** What can be worth saying about a recording. */
export type RemoteFindingCode =
  | LimitCode
  | 'rate-unknown'
  | 'rate-unusable'
  | 'format-unknown'
  | 'centre-unknown'
  | 'empty-recording'
  | 'cut-sample'
  | 'not-numbers'
  | 'parts-dropped'
  | 'other-sender'
  | 'some-clipping'
  | 'carrier-wanders'
  | 'sigmf-unreadable'
  | 'sigmf-field'
  | 'sigmf-datatype'
  | 'sigmf-channels'
  | 'sigmf-retuned'

export type RemoteFinding = Finding<RemoteFindingCode>

/** Bursts of one sender: how many and how long, never where each one lies. */
export interface BurstSummary {
  readonly count: number
  /** Median length and shortest and longest, and the median pause between; null without a second burst. */
  readonly seconds: number
  readonly shortestSeconds: number
  readonly longestSeconds: number
  readonly pauseSeconds: number | null
  /** How often the same signal comes in a row, over all bursts. */
  readonly repeats: number
  /** Time from one repeat to the next; null when nothing repeats. */
  readonly repeatSeconds: number | null
}

/** Physical parameters of one sender. Nothing here gives the order of symbols. */
export interface SenderMeasurement {
  readonly modulation: Modulation
  /** Carrier from the recording's centre; the middle of the tones for 2-FSK. */
  readonly carrierOffsetHz: number
  /** Absolute carrier; null when the recording's centre is not known. */
  readonly carrierHz: number | null
  /** Carrier at the end less carrier at the start of the recording's bursts. */
  readonly driftHz: number
  /** 2-FSK: half the distance of the tones. */
  readonly deviationHz: number | null
  /** 2-FSK: both tones from the recording's centre. */
  readonly tonesHz: readonly [number, number] | null
  /** Shortest symbols a second; null when the durations keep to no grid (then `pulses` and `gaps` say all). */
  readonly symbolRate: number | null
  /** OOK: times up. 2-FSK: times on the upper tone. Most frequent first. */
  readonly pulses: readonly DurationCluster[]
  /** OOK: times down. 2-FSK: times on the lower tone. Pauses between bursts are not among them. */
  readonly gaps: readonly DurationCluster[]
  readonly bursts: BurstSummary
  /** Width that holds 99 % of the power (ITU-R SM.328). */
  readonly occupiedBandwidthHz: number
  /** Power while up over the noise in the whole recorded band. */
  readonly snrDb: number
  /** Power while up below full scale. */
  readonly levelDbfs: number
  /** Share of stored values at the converter's end while the sender is up. */
  readonly clippedShare: number
}

/** One recording measured. */
export interface RemoteMeasurement {
  readonly sampleRateHz: number
  readonly centreHz: number | null
  readonly seconds: number
  /** The sender with most energy; null when none was found. */
  readonly sender: SenderMeasurement | null
  /** Further senders worth naming, strongest first. */
  readonly others: readonly SenderMeasurement[]
  /** What keeps this measurement from deciding anything. */
  readonly limits: readonly LimitCode[]
  readonly findings: readonly RemoteFinding[]
}

/** A measurement and what can be drawn of it. */
export interface MeasuredRemote {
  readonly measurement: RemoteMeasurement
  /** Draws the pictures from the samples, which are held until then; null when no sender was found. */
  readonly draw: () => RemotePictures | null
}
