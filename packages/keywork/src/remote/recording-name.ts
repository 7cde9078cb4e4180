/** @module What a recording's name says: sample rate, centre frequency, sample format. */

import type { SampleFormat } from './sample-format.ts'

/** What was found in the name. null: the name does not say. */
export interface RecordingName {
  readonly sampleRateHz: number | null
  readonly centreHz: number | null
  readonly format: SampleFormat | null
  /** The data file of a SigMF pair: its metadata file says the rest. */
  readonly sigmf: boolean
}

const FORMAT_OF_ENDING: Readonly<Record<string, SampleFormat>> = {
  cu8: 'cu8',
  cs8: 'cs8',
  cs16: 'cs16',
  cf32: 'cf32',
}

const FACTOR: Readonly<Record<string, number>> = { '': 1, k: 1e3, K: 1e3, M: 1e6, G: 1e9 }

/** The lowest band a remote is received in lies above every sample rate of a general receiver. */
const LOWEST_CENTRE_HZ = 100e6

/**
 * Reads the parts of a name between `_`, `-` or spaces: `g001_433.92M_250k.cu8`. A part is a number with `k`, `M`
 * or `G`; `Hz` makes it a frequency and `sps` or `S/s` a rate, otherwise 100 MHz and more is the centre frequency
 * and less the sample rate. Folders in front are ignored. Numbers without any unit are not read.
 */
export function readRecordingName(name: string): RecordingName {
  const file = name.split(/[\\/]/).at(-1) ?? ''
  const ending = /\.([A-Za-z0-9-]+)$/.exec(file)?.[1]?.toLowerCase() ?? ''
  const stem = file.slice(0, file.length - (ending === '' ? 0 : ending.length + 1))
  let sampleRateHz: number | null = null
  let centreHz: number | null = null
  for (const part of stem.split(/[_\s]|-(?=\d)/)) {
    const found = /^(\d{1,12}(?:\.\d{1,9})?)([kKMG]?)(Hz|sps|S)?$/.exec(part)
    if (found === null || (found[2] === '' && found[3] === undefined)) continue
    const hertz = Number(found[1]) * (FACTOR[found[2] ?? ''] ?? 1)
    if (!(hertz > 0)) continue
    const centre = found[3] === 'Hz' || (found[3] === undefined && hertz >= LOWEST_CENTRE_HZ)
    if (centre) centreHz ??= round(hertz)
    else sampleRateHz ??= round(hertz)
  }
  return {
    sampleRateHz,
    centreHz,
    format: FORMAT_OF_ENDING[ending] ?? null,
    sigmf: ending === 'sigmf-data' || ending === 'sigmf-meta',
  }
}

/** 433.92 * 1e6 is not a whole number of hertz in binary; the name means one. */
function round(hertz: number): number {
  return Math.round(hertz * 1000) / 1000
}
