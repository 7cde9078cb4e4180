import type { RemoteFinding, RemoteMeasurement, RemotePictures, SampleFormat } from '@shearline/keywork'

/** Values given by hand; they go before what the name and SigMF say. */
export interface Given {
  readonly sampleRateHz?: number
  readonly centreHz?: number
  readonly format?: SampleFormat
}

/** What the page asks of the worker. `sigmf` is the metadata file of a SigMF pair. */
export interface Ask {
  readonly file: File
  readonly sigmf: File | null
  readonly given: Given
}

/** What is known of how a recording was made; null: not known. */
export interface Setting {
  readonly sampleRateHz: number | null
  readonly centreHz: number | null
  readonly format: SampleFormat | null
}

/** What is left of a recording once its samples are gone. */
export interface Measured {
  readonly setting: Setting
  readonly measurement: RemoteMeasurement
  /** null when no sender was found. */
  readonly pictures: RemotePictures | null
}

/** What the worker answers. `incomplete`: it cannot be read before rate or format is given. */
export type Answer =
  | { readonly what: 'progress'; readonly bytes: number }
  | { readonly what: 'incomplete'; readonly setting: Setting; readonly findings: readonly RemoteFinding[] }
  | { readonly what: 'measured'; readonly measured: Measured }
  | { readonly what: 'failed'; readonly why: string }
