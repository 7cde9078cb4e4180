/** @module Turns a decoded recording into the facts a job keeps of it: what it is, VINs, scan, events. */
import {
  type DecodeResult,
  type DoipAnnouncement,
  type Finding,
  formatTime,
  type Message,
  messageLine,
  vinsOf,
} from '@shearline/bus'
import { readVin, type ScanPhase } from '@shearline/keywork'
import type { BodyInput, Kind } from '../facts/index.ts'
import { EventGatherer } from './events.ts'
import { ScanGatherer } from './scan.ts'

export { workEventsOf } from './work-events.ts'

/** A fact body with its kind, not yet signed. */
export type IntakeFact = { readonly [K in Kind]: { readonly kind: K; readonly body: BodyInput<K> } }[Kind]

/** The file a recording was read from, and what is kept of it. */
export interface ReadFile {
  readonly name: string
  readonly bytes: number
  /** SHA-256 of the file. */
  readonly sha256: string
  /** SHA-256 of the kept messages: the lines of `keptLine`, each with its line end. */
  readonly keptSha256: string
}

/**
 * One line of what is kept of a recording: the message as `shearline decode --json` writes it, redacted. The frames
 * are not kept, because the bytes of security services stand in them.
 */
export function keptLine(message: Message): string {
  return `${JSON.stringify(messageLine(message))}\n`
}

/** What a recording brought, for a person to look at before it becomes facts. */
export interface IntakeResult {
  readonly recording: BodyInput<'recording-attached'>
  /** Well-formed VINs by who said them. */
  readonly vins: readonly { readonly vin: string; readonly unit: string }[]
  /** Answers to a VIN request that are not well formed: shown, never recorded as a VIN. */
  readonly notVins: readonly { readonly text: string; readonly unit: string }[]
  /** Control units that answered with a fault list, and how many faults they named. */
  readonly scannedUnits: number
  readonly faults: number
  /** The facts for a job; `phase` says which scan it is, null keeps the recording without one. */
  facts(phase: ScanPhase | null): readonly IntakeFact[]
}

/** Listens to a decoding and gathers what a job keeps. Memory grows with units and faults, not with messages. */
export class RecordingIntake {
  readonly #scan = new ScanGatherer()
  readonly #events = new EventGatherer()
  readonly #units = new Set<string>()
  readonly #vins = new Map<string, { vin: string; unit: string }>()
  #from: string | null = null
  #to: string | null = null
  #findings = 0

  readonly message = (message: Message): void => {
    this.#from ??= formatTime(message.startTime)
    this.#to = formatTime(message.time)
    if (message.kind !== 'request' && message.protocol !== 'other') this.#units.add(message.id)
    this.#scan.message(message)
    this.#events.message(message)
    for (const heard of vinsOf([message])) this.#vin(heard.vin, heard.id)
  }

  readonly announcement = (announcement: DoipAnnouncement): void => {
    if (announcement.vin !== '') this.#vin(announcement.vin, announcement.source)
  }

  /** Counts findings; show them where you decode. */
  readonly finding = (_finding: Finding): void => {
    this.#findings++
  }

  #vin(vin: string, unit: string): void {
    this.#vins.set(`${unit} ${vin}`, { vin, unit })
  }

  /** Closes the intake with the file's own data. */
  finish(result: DecodeResult, file: ReadFile): IntakeResult {
    const { summary, recognised } = result
    const recording: BodyInput<'recording-attached'> = {
      blob: file.keptSha256,
      original: file.sha256,
      name: file.name,
      bytes: file.bytes,
      format: recognised.format,
      frames: summary.frames,
      messages: summary.messages,
      incomplete: summary.incomplete,
      negative: summary.negative,
      findings: this.#findings,
      from: this.#from,
      to: this.#to,
      units: [...this.#units].sort(),
      events: this.#events.events,
    }
    const heard = [...this.#vins.values()].map(({ vin, unit }) => ({
      reading: readVin(vin),
      text: vin,
      unit,
    }))
    const vins = heard
      .filter(({ reading }) => reading.wellFormed)
      .map(({ reading, unit }) => ({ vin: reading.vin, unit }))
    const units = this.#scan.units('before')
    return {
      recording,
      vins,
      notVins: heard.filter(({ reading }) => !reading.wellFormed).map(({ text, unit }) => ({ text, unit })),
      scannedUnits: units.length,
      faults: units.reduce((sum, unit) => sum + unit.faults.length, 0),
      facts: (phase) => [
        { kind: 'recording-attached', body: recording },
        ...vins.map(
          ({ vin, unit }): IntakeFact => ({ kind: 'vin-read', body: { source: 'bus', vin, unit } }),
        ),
        ...(phase === null
          ? []
          : [
              {
                kind: 'scan-attached',
                body: { phase, units: mutable(this.#scan.units(phase)), blob: file.keptSha256 },
              } as const,
            ]),
      ],
    }
  }
}

function mutable(units: ReturnType<ScanGatherer['units']>): BodyInput<'scan-attached'>['units'] {
  return units.map(({ unit, time, availability, faults }) => ({
    unit,
    time,
    availability,
    faults: [...faults],
  }))
}
