/** @module Measures the physical parameters of the remote in one recording. */

import { findBursts } from './bursts.ts'
import { railsOf } from './clipping.ts'
import { findingOf } from './findings.ts'
import type { IqSamples } from './iq-reader.ts'
import { findKeyedStretches } from './keyed-stretches.ts'
import { mapLevels } from './level-map.ts'
import { limitParams, limitsOf } from './limits.ts'
import { findQuiet } from './noise.ts'
import { drawPictures, type RemotePictures } from './pictures.ts'
import { SampleSource } from './sample-source.ts'
import { activeFrames } from './segments.ts'
import { type MeasuringContext, measureSender, type RecordingSetting } from './sender-measurement.ts'
import { timingOf } from './sender-timing.ts'
import { groupSenders, type Sender, spansOf } from './senders.ts'
import type { LimitCode, MeasuredRemote, RemoteFinding, SenderMeasurement } from './types.ts'

const SOME_CLIPPED = 0.05
/** Share of the strongest sender's weight from which a further one is named. */
const NAMED_WEIGHT = 0.02
const LEAST_SAMPLES = 512
const LOWEST_RATE_HZ = 10_000
const HIGHEST_RATE_HZ = 100e6
const WANDER_HZ = 15_000

/** Measures a recording. Never throws: what cannot be measured is said in `limits` and `findings`. */
export function measureRemote(iq: IqSamples, setting: RecordingSetting): MeasuredRemote {
  const findings: RemoteFinding[] = readingFindings(iq, setting)
  const rate = setting.sampleRateHz
  const usable = rate >= LOWEST_RATE_HZ && rate <= HIGHEST_RATE_HZ
  if (!usable || iq.samples < LEAST_SAMPLES) {
    findings.push(findingOf(usable ? 'empty-recording' : 'rate-unusable', { rate, samples: iq.samples }))
    return withoutSender(iq, setting, findings)
  }
  const source = new SampleSource(iq)
  const map = mapLevels(source, rate)
  const active = activeFrames(map)
  const quiet = findQuiet(map, active)
  source.offsetI += quiet.offsetI
  source.offsetQ += quiet.offsetQ
  const { stretches, overlapping } = findKeyedStretches(source, map, active, rate)
  const [main, ...rest] = groupSenders(stretches)
  if (main === undefined) return withoutSender(iq, setting, findings)
  const rails = railsOf(iq.blocks, iq.format)
  const context: MeasuringContext = { iq, source, map, active, quiet, setting, rails }
  const timing = timingOf(main)
  const sender = measureSender(context, main, timing)
  const others = rest.filter((other) => other.weight > NAMED_WEIGHT * main.weight && speaks(other))
  const limits = limitsOf(context, main, timing, sender, others, overlapping(main))
  findings.push(...limits.map((code) => findingOf(code, limitParams(sender, code))))
  findings.push(...senderFindings(sender, others, limits))
  const draw = (): RemotePictures => {
    const bursts = findBursts(main, timing.pauseSeconds)
    return drawPictures({
      ...context,
      sender: main,
      bursts,
      pauseSeconds: timing.pauseSeconds,
      measured: sender,
    })
  }
  return {
    measurement: {
      sampleRateHz: rate,
      centreHz: setting.centreHz,
      seconds: iq.samples / rate,
      sender,
      others: others.map((other) => measureSender(context, other, timingOf(other))),
      limits,
      findings,
    },
    draw,
  }
}

function readingFindings(iq: IqSamples, setting: RecordingSetting): RemoteFinding[] {
  const findings: RemoteFinding[] = []
  if (setting.centreHz === null) findings.push(findingOf('centre-unknown', {}))
  if (iq.leftoverBytes > 0) findings.push(findingOf('cut-sample', { bytes: iq.leftoverBytes }))
  if (iq.notNumbers > 0) findings.push(findingOf('not-numbers', { values: iq.notNumbers }))
  if (iq.droppedSamples > 0)
    findings.push(findingOf('parts-dropped', { share: Math.round((100 * iq.droppedSamples) / iq.samples) }))
  return findings
}

function withoutSender(
  iq: IqSamples,
  setting: RecordingSetting,
  findings: readonly RemoteFinding[],
): MeasuredRemote {
  return {
    measurement: {
      sampleRateHz: setting.sampleRateHz,
      centreHz: setting.centreHz,
      seconds: setting.sampleRateHz > 0 ? iq.samples / setting.sampleRateHz : 0,
      sender: null,
      others: [],
      limits: ['no-sender'],
      findings: [...findings, findingOf('no-sender', {})],
    },
    draw: () => null,
  }
}

/** Enough keyed to be a sender and no accident. */
function speaks(sender: Sender): boolean {
  return sender.modulation !== 'unsure' && spansOf(sender).length + sender.stretches.length >= 2
}

function senderFindings(
  measured: SenderMeasurement,
  others: readonly Sender[],
  limits: readonly LimitCode[],
): readonly RemoteFinding[] {
  const findings: RemoteFinding[] = []
  for (const other of others)
    findings.push(findingOf('other-sender', { offsetHz: Math.round(other.carrierHz) }))
  if (measured.clippedShare > SOME_CLIPPED && !limits.includes('clipped'))
    findings.push(findingOf('some-clipping', { percent: Math.round(100 * measured.clippedShare) }))
  if (Math.abs(measured.driftHz) > WANDER_HZ)
    findings.push(findingOf('carrier-wanders', { driftHz: measured.driftHz }))
  return findings
}
