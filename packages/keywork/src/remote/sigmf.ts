/** @module Core fields of SigMF metadata, read and written (open standard, https://github.com/sigmf/SigMF, version 1.2). */

import { findingOf } from './findings.ts'
import { formatOfSigmfDatatype, SAMPLE_LAYOUTS, type SampleFormat } from './sample-format.ts'
import type { RemoteFinding, RemoteMeasurement } from './types.ts'

/** What the metadata says of its recording. null: not said, or not usable (a finding says so). */
export interface SigmfRecording {
  readonly format: SampleFormat | null
  readonly sampleRateHz: number | null
  readonly centreHz: number | null
  /** Bytes before the first sample. */
  readonly headerBytes: number
}

/** Reads the text of a `.sigmf-meta` file. Extensions and fields that are not needed here are passed over. */
export function readSigmf(text: string): {
  readonly recording: SigmfRecording | null
  readonly findings: readonly RemoteFinding[]
} {
  const root = parseObject(text)
  const global = objectIn(root, 'global')
  if (global === null) return { recording: null, findings: [findingOf('sigmf-unreadable', {})] }
  const findings: RemoteFinding[] = []
  const captures = listIn(root, 'captures')
  const first = captures[0] ?? null
  const centres = captures
    .map((capture) => numberIn(capture, 'core:frequency'))
    .filter((centre) => centre !== null)
  if (new Set(centres).size > 1) findings.push(findingOf('sigmf-retuned', {}))
  const channels = numberIn(global, 'core:num_channels') ?? 1
  if (channels !== 1) findings.push(findingOf('sigmf-channels', { channels }))
  const sampleRateHz = numberIn(global, 'core:sample_rate')
  if (sampleRateHz === null) findings.push(findingOf('sigmf-field', { field: 'core:sample_rate' }))
  if (centres[0] === undefined) findings.push(findingOf('sigmf-field', { field: 'core:frequency' }))
  return {
    recording: {
      format: channels === 1 ? formatIn(global, findings) : null,
      sampleRateHz,
      centreHz: centres[0] ?? null,
      headerBytes: Math.max(0, numberIn(first, 'core:header_bytes') ?? 0),
    },
    findings,
  }
}

function formatIn(global: Json, findings: RemoteFinding[]): SampleFormat | null {
  const datatype = global['core:datatype']
  if (typeof datatype !== 'string') {
    findings.push(findingOf('sigmf-field', { field: 'core:datatype' }))
    return null
  }
  const format = formatOfSigmfDatatype(datatype)
  if (format === null) findings.push(findingOf('sigmf-datatype', { datatype: datatype.slice(0, 40) }))
  return format
}

/** What goes into a new metadata file. */
export interface SigmfDescription {
  readonly format: SampleFormat
  readonly sampleRateHz: number
  readonly centreHz: number | null
  /** Start of the recording, ISO 8601 in UTC. */
  readonly startedAt?: string
  readonly description?: string
  readonly recorder?: string
  /** SHA-512 of the data file, lower-case hex. */
  readonly sha512?: string
  /** Adds one annotation with the sender's band. It gives no times within the recording. */
  readonly measurement?: RemoteMeasurement
}

/** Writes the text of a `.sigmf-meta` file. */
export function writeSigmf(description: SigmfDescription): string {
  const { centreHz, measurement } = description
  const sender = measurement?.sender ?? null
  const global: Record<string, unknown> = {
    'core:datatype': SAMPLE_LAYOUTS[description.format].sigmf,
    'core:sample_rate': description.sampleRateHz,
    'core:version': '1.2.0',
    'core:num_channels': 1,
  }
  if (description.sha512 !== undefined) global['core:sha512'] = description.sha512
  if (description.description !== undefined) global['core:description'] = description.description
  if (description.recorder !== undefined) global['core:recorder'] = description.recorder
  const capture: Record<string, unknown> = { 'core:sample_start': 0 }
  if (centreHz !== null) capture['core:frequency'] = centreHz
  if (description.startedAt !== undefined) capture['core:datetime'] = description.startedAt
  const annotations =
    sender === null || measurement === undefined || sender.carrierHz === null
      ? []
      : [
          {
            'core:sample_start': 0,
            'core:sample_count': Math.round(measurement.seconds * measurement.sampleRateHz),
            'core:freq_lower_edge': sender.carrierHz - sender.occupiedBandwidthHz / 2,
            'core:freq_upper_edge': sender.carrierHz + sender.occupiedBandwidthHz / 2,
            'core:label': sender.modulation,
          },
        ]
  return `${JSON.stringify({ global, captures: [capture], annotations }, null, 2)}\n`
}

type Json = Readonly<Record<string, unknown>>

function parseObject(text: string): Json | null {
  try {
    return asObject(JSON.parse(text))
  } catch {
    return null
  }
}

function asObject(value: unknown): Json | null {
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Json) : null
}

function objectIn(parent: Json | null, field: string): Json | null {
  return parent === null ? null : asObject(parent[field])
}

function listIn(parent: Json | null, field: string): readonly Json[] {
  const list = parent?.[field]
  return Array.isArray(list) ? list.map(asObject).filter((entry) => entry !== null) : []
}

function numberIn(parent: Json | null, field: string): number | null {
  const value = parent?.[field]
  return typeof value === 'number' && Number.isFinite(value) ? value : null
}
