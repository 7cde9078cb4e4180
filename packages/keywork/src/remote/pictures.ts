/**
 * @module What is drawn of a recording: spectrum, waterfall, the outline of one burst and its average pulse.
 *
 * None of it can give the symbols back. Waterfall and outline hold the peak over a time longer than any gap that
 * carries a symbol (and than 16 symbols of frequency-shift keying), so that every point sees the sender up; the
 * average pulse adds many pulses together, shows at most three symbols and is rounded to twentieths.
 */

import type { Burst } from './bursts.ts'
import { type Channel, openChannel } from './channel.ts'
import { envelopeOf, type Run, runsUp } from './envelope.ts'
import { type LevelMap, levelSteps, POWER_OF_LEVEL } from './level-map.ts'
import { frameAt } from './noise.ts'
import type { MeasuringContext } from './sender-measurement.ts'
import type { Sender } from './senders.ts'
import type { SenderMeasurement } from './types.ts'

/** Power over frequency, strongest bin of the burst at 0 dB; frequencies from the recording's centre. */
export interface SpectrumPicture {
  readonly frequencyHz: readonly number[]
  readonly burstDb: readonly number[]
  readonly quietDb: readonly number[]
}

/** Peak levels, one byte a cell (0 at `lowestDb` or less, 255 at 0 dB), lowest frequency first, column after column. */
export interface WaterfallPicture {
  readonly columns: number
  readonly rows: number
  readonly secondsPerColumn: number
  readonly lowHz: number
  readonly highHz: number
  readonly lowestDb: number
  readonly levels: Uint8Array
}

/** Level of one burst over time, gaps inside it closed over; 0 dB is its strongest point. Starts `leadSeconds` before it. */
export interface OutlinePicture {
  readonly secondsPerPoint: number
  readonly leadSeconds: number
  readonly levelsDb: readonly number[]
}

/** Mean level (0 ... 1) over time around a rising edge, of `pulses` pulses. Starts `leadUs` before the edge. */
export interface PulsePicture {
  readonly usPerPoint: number
  readonly leadUs: number
  readonly pulses: number
  readonly levels: readonly number[]
}

export interface RemotePictures {
  readonly spectrum: SpectrumPicture
  readonly waterfall: WaterfallPicture
  readonly outline: OutlinePicture
  /** OOK only, and only of 16 pulses or more. */
  readonly pulse: PulsePicture | null
}

const MOST_COLUMNS = 240
const MOST_ROWS = 256
const LOWEST_DB = -80
const OUTLINE_POINTS = 200
const OUTLINE_LEAD = 0.05
const SYMBOLS_HELD = 16
const SLOWEST_SYMBOLS = 300
const UNSURE_HOLD_SECONDS = 0.1
const LEAST_PULSES = 16
const PULSE_POINTS = 120
const PULSE_SECONDS = 0.3

/** What the pictures are drawn from. */
export interface PictureInput extends MeasuringContext {
  readonly sender: Sender
  readonly measured: SenderMeasurement
  readonly bursts: readonly Burst[]
  readonly pauseSeconds: number
}

/** Draws all four. */
export function drawPictures(input: PictureInput): RemotePictures {
  const hold = holdSeconds(input)
  return {
    spectrum: spectrumOf(input),
    waterfall: waterfallOf(input, hold),
    outline: outlineOf(input, hold),
    pulse: averagePulse(input),
  }
}

/** Time over which peaks are held. A sender whose keying is not understood is held for long. */
function holdSeconds({ measured, pauseSeconds }: PictureInput): number {
  if (measured.modulation === 'unsure') return Math.max(pauseSeconds, UNSURE_HOLD_SECONDS)
  const symbol = measured.modulation === '2-FSK' ? 1 / (measured.symbolRate ?? SLOWEST_SYMBOLS) : 0
  return Math.max(pauseSeconds, SYMBOLS_HELD * symbol)
}

function spectrumOf({ map, quiet, sender, setting, active }: PictureInput): SpectrumPicture {
  const burst = new Float64Array(map.bins)
  for (const stretch of sender.stretches) {
    const first = frameAt(map, (stretch.spans[0]?.fromSeconds ?? 0) * setting.sampleRateHz)
    const last = frameAt(map, (stretch.spans.at(-1)?.toSeconds ?? 0) * setting.sampleRateHz)
    for (let frame = first; frame <= last; frame += 1) if (active[frame] === 1) addFrame(burst, map, frame)
  }
  const still = new Float64Array(map.bins)
  let frames = 0
  for (let frame = 0; frame < map.frames; frame += 1) {
    if (quiet.frames[frame] !== 1) continue
    addFrame(still, map, frame)
    frames += 1
  }
  const up = burst.reduce((most, value) => Math.max(most, value), 1e-30)
  let burstFrames = 0
  for (let frame = 0; frame < map.frames; frame += 1) burstFrames += active[frame] === 1 ? 1 : 0
  const scale = frames === 0 ? 0 : Math.max(1, burstFrames) / frames
  const half = map.bins / 2
  const turned = Array.from({ length: map.bins }, (_, at) => (at + half) % map.bins)
  const db = (value: number): number => Math.round(10 * Math.max(-12, Math.log10(value / up)) * 10) / 10
  return {
    frequencyHz: turned.map((_, at) => (at - half) * map.binHz),
    burstDb: turned.map((bin) => db(burst[bin] as number)),
    quietDb: turned.map((bin) => db(scale === 0 ? 0 : (still[bin] as number) * scale)),
  }
}

function addFrame(sum: Float64Array, map: LevelMap, frame: number): void {
  for (let bin = 0; bin < map.bins; bin += 1)
    sum[bin] = (sum[bin] as number) + (POWER_OF_LEVEL[map.levels[frame * map.bins + bin] as number] as number)
}

function waterfallOf({ map, setting }: PictureInput, hold: number): WaterfallPicture {
  const total = map.frames === 0 ? 0 : (map.frameStart[map.frames - 1] as number) + map.bins
  const seconds = Math.max(hold, total / setting.sampleRateHz / MOST_COLUMNS)
  const columns = Math.max(1, Math.ceil(total / setting.sampleRateHz / seconds))
  const rows = Math.min(MOST_ROWS, map.bins)
  const peaks = new Uint8Array(columns * rows)
  const rowOf = Uint16Array.from({ length: map.bins }, (_, bin) =>
    Math.floor((((bin + map.bins / 2) % map.bins) * rows) / map.bins),
  )
  for (let frame = 0; frame < map.frames; frame += 1) {
    const column = Math.min(
      columns - 1,
      Math.floor((map.frameStart[frame] as number) / setting.sampleRateHz / seconds),
    )
    for (let bin = 0; bin < map.bins; bin += 1) {
      const row = rowOf[bin] as number
      const level = map.levels[frame * map.bins + bin] as number
      const at = column * rows + row
      if (level > (peaks[at] as number)) peaks[at] = level
    }
  }
  const top = peaks.reduce((most, level) => Math.max(most, level), 0)
  const span = levelSteps(-LOWEST_DB)
  const levels = peaks.map((level) => Math.max(0, Math.round(255 * (1 - (top - level) / span))))
  return {
    columns,
    rows,
    secondsPerColumn: seconds,
    lowHz: -setting.sampleRateHz / 2,
    highHz: setting.sampleRateHz / 2,
    lowestDb: LOWEST_DB,
    levels,
  }
}

/** The longest burst: highest level near the carrier per point, held and let go again over `hold`. */
function outlineOf({ map, sender, bursts, setting }: PictureInput, hold: number): OutlinePicture {
  const burst = bursts.reduce(
    (most, next) => (next.toSeconds - next.fromSeconds > most.toSeconds - most.fromSeconds ? next : most),
    bursts[0] ?? { fromSeconds: 0, toSeconds: 0 },
  )
  const length = burst.toSeconds - burst.fromSeconds
  const lead = Math.max(OUTLINE_LEAD * length, map.bins / setting.sampleRateHz)
  const point = Math.max((length + 2 * lead) / OUTLINE_POINTS, map.bins / setting.sampleRateHz)
  const count = Math.max(1, Math.ceil((length + 2 * lead) / point))
  // Holding and letting go again closes gaps of twice the reach.
  const reach = Math.ceil(hold / 2 / point) + 1
  const levels = new Uint8Array(count + 2 * reach)
  const near = nearBins(map, sender)
  const from = burst.fromSeconds - lead - reach * point
  const last = frameAt(map, (from + levels.length * point) * setting.sampleRateHz)
  for (let frame = frameAt(map, Math.max(0, from) * setting.sampleRateHz); frame <= last; frame += 1) {
    const at = Math.floor(((map.frameStart[frame] ?? 0) / setting.sampleRateHz - from) / point)
    if (at < 0 || at >= levels.length) continue
    for (const bin of near)
      levels[at] = Math.max(levels[at] as number, map.levels[frame * map.bins + bin] as number)
  }
  const closed = slide(slide(levels, reach, Math.max), reach, Math.min).slice(reach, reach + count)
  const top = closed.reduce((most, level) => Math.max(most, level), 0)
  return {
    secondsPerPoint: point,
    leadSeconds: lead,
    levelsDb: Array.from(closed, (level) => Math.round((level - top) / levelSteps(1))),
  }
}

function nearBins(map: LevelMap, sender: Sender): readonly number[] {
  const tones = sender.stretches[0]?.tonesHz ?? [sender.carrierHz, sender.carrierHz]
  const first = Math.round(tones[0] / map.binHz) - 1
  const last = Math.round(tones[1] / map.binHz) + 1
  const bins: number[] = []
  for (let at = first; at <= last; at += 1)
    if (Math.abs(at) < map.bins / 2) bins.push((at + map.bins) % map.bins)
  return bins
}

function slide(levels: Uint8Array, reach: number, pick: (a: number, b: number) => number): Uint8Array {
  return levels.map((level, at) => {
    let held = level
    for (let k = Math.max(0, at - reach); k <= Math.min(levels.length - 1, at + reach); k += 1)
      held = pick(held, levels[k] as number)
    return held
  })
}

/** Mean envelope around the rising edges of the strongest stretch. */
function averagePulse({ source, map, setting, sender }: PictureInput): PulsePicture | null {
  const stretch = sender.stretches.toSorted((a, b) => b.spans.length - a.spans.length)[0]
  if (sender.modulation !== 'OOK' || stretch === undefined || stretch.spans.length < LEAST_PULSES) return null
  const from = Math.floor((stretch.spans[0]?.fromSeconds ?? 0) * setting.sampleRateHz) - 4 * map.bins
  const to = Math.ceil((stretch.spans.at(-1)?.toSeconds ?? 0) * setting.sampleRateHz) + 4 * map.bins
  const count = Math.min(to - from, Math.round(PULSE_SECONDS * setting.sampleRateHz))
  const channel = openChannel(
    source,
    setting.sampleRateHz,
    from,
    count,
    stretch.carrierHz,
    stretch.channelHalfWidthHz,
  )
  const envelope = envelopeOf(channel, map.bins / channel.step)
  const runs = runsUp(envelope, Math.max(2, (1.2 * channel.boxSamples) / channel.step))
  if (runs.length < LEAST_PULSES) return null
  const shortest =
    runs.map((run) => run.to - run.from).toSorted((a, b) => a - b)[Math.floor(runs.length / 10)] ?? 1
  return meanAroundEdges(channel, envelope.amplitude, runs, shortest, envelope.up)
}

function meanAroundEdges(
  channel: Channel,
  amplitude: Float32Array,
  runs: readonly Run[],
  shortest: number,
  up: number,
): PulsePicture {
  const step = (4 * shortest) / PULSE_POINTS
  const lead = shortest
  const sums = new Float64Array(PULSE_POINTS)
  let pulses = 0
  for (const run of runs) {
    if (run.from - lead < 0 || run.from + 3 * shortest >= amplitude.length - 1) continue
    pulses += 1
    for (let at = 0; at < PULSE_POINTS; at += 1)
      sums[at] = (sums[at] as number) + (amplitude[Math.round(run.from - lead + at * step)] as number)
  }
  const us = 1e6 / channel.rateHz
  return {
    usPerPoint: step * us,
    leadUs: lead * us,
    pulses,
    levels: Array.from(sums, (sum) => Math.min(1, Math.round((20 * sum) / Math.max(1, pulses) / up) / 20)),
  }
}
