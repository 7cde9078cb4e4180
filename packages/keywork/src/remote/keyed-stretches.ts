/** @module Every keyed sender in every stretch of a recording. */

import type { KeyedStretch } from './keyed.ts'
import { measureStretch } from './keyed-stretch.ts'
import { type LevelMap, levelSteps } from './level-map.ts'
import type { SampleSource } from './sample-source.ts'
import { findLobes, findStretches, type Lobe } from './segments.ts'
import type { Sender } from './senders.ts'

/** Tones of one sender differ in level by no more than this, so that one channel serves both ... */
const TONE_RANGE = 0.1
/** ... or, where the receiver's slope favours one of them, by no more than this. */
const PARTNER_RANGE = 10 ** (-20 / 10)
const MOST_PARTNERS = 2
/** Frames by which things that start or end together may differ, and the same as a share of the length. */
const SAME_FRAMES = 6
const SAME_SHARE = 0.03
const TOGETHER = 0.7
const HALF_TOGETHER = 0.35
const MOST_SENDERS = 3
/** A further sender this much weaker than the strongest of its stretch is left out. */
const RIVAL_RANGE = 10 ** (-20 / 10)

/** What was found, and whether another sender lies over one of them. */
export interface KeyedStretches {
  readonly stretches: readonly KeyedStretch[]
  readonly overlapping: (sender: Sender) => boolean
}

/** Measures each stretch: the strongest lobe with its tones first, then what is up at other times than it. */
export function findKeyedStretches(
  source: SampleSource,
  map: LevelMap,
  active: Uint8Array,
  sampleRateHz: number,
): KeyedStretches {
  const stretches: KeyedStretch[] = []
  const contested = new Set<KeyedStretch>()
  for (const stretch of findStretches(map, active, sampleRateHz)) {
    let lobes = findLobes(map, active, stretch)
    const strongest = lobes[0]?.energy ?? 0
    for (let found = 0; found < MOST_SENDERS; found += 1) {
      const first = lobes[0]
      if (first === undefined || first.energy < RIVAL_RANGE * strongest) break
      const tones = lobes.filter((lobe) => lobe.energy > TONE_RANGE * first.energy && together(lobe, first))
      const partners = lobes.filter(
        (lobe) => lobe !== first && lobe.energy > PARTNER_RANGE * first.energy && together(lobe, first),
      )
      const keyed = measureStretch(source, map, sampleRateHz, tones, partners.slice(0, MOST_PARTNERS))
      lobes = lobes.filter((lobe) => !belongsTo(lobe, first, keyed, tones))
      if (keyed === null || stretches.some((known) => isPartOf(keyed, known))) continue
      stretches.push(keyed)
      if (lobes.some((lobe) => contests(lobe, first, map))) contested.add(keyed)
    }
  }
  return {
    stretches,
    overlapping: (sender) =>
      sender.stretches.some((own) => contested.has(own)) ||
      stretches.some((stretch) => liesOver(stretch, sender)),
  }
}

/** A lobe that is neither tone nor image of a sender, nearly as strong, beside it and up for a good part of its time. */
const CONTESTS_BELOW = levelSteps(10)
const CONTESTS_HZ = 60_000
const CONTESTS_SHARE = 0.25

function contests(lobe: Lobe, first: Lobe, map: LevelMap): boolean {
  const both = Math.min(lobe.end, first.end) - Math.max(lobe.first, first.first)
  return (
    lobe.level >= first.level - CONTESTS_BELOW &&
    Math.abs(lobe.peak - first.peak) * map.binHz < CONTESTS_HZ &&
    both > CONTESTS_SHARE * (first.end - first.first)
  )
}

function sameTime(a: Lobe, b: Lobe): boolean {
  const allowed = SAME_FRAMES + SAME_SHARE * (b.end - b.first)
  return Math.abs(a.first - b.first) <= allowed && Math.abs(a.end - b.end) <= allowed
}

const SAME_TONE_HZ = 6000
/** What is this much weaker than a sender and never up without it is its image, its splatter or a side band. */
const IMAGE_BELOW = levelSteps(8)

/** The sender just measured, its tones, or what its strength brings about elsewhere in the band. */
function belongsTo(lobe: Lobe, first: Lobe, keyed: KeyedStretch | null, tones: readonly Lobe[]): boolean {
  if (lobe === first || sameTime(lobe, first)) return true
  if (keyed !== null && keyed.tonesHz !== null && tones.includes(lobe)) return true
  const allowed = SAME_FRAMES + SAME_SHARE * (first.end - first.first)
  const inside = lobe.first >= first.first - allowed && lobe.end <= first.end + allowed
  return inside && lobe.level < first.level - IMAGE_BELOW
}

/** A channel beside a sender that only heard that sender. */
function isPartOf(keyed: KeyedStretch, known: KeyedStretch): boolean {
  const from = Math.max(keyed.spans[0]?.fromSeconds ?? 0, known.spans[0]?.fromSeconds ?? 0)
  const to = Math.min(keyed.spans.at(-1)?.toSeconds ?? 0, known.spans.at(-1)?.toSeconds ?? 0)
  const near = [known.carrierHz, ...(known.tonesHz ?? [])].some(
    (hertz) => Math.abs(hertz - keyed.carrierHz) < SAME_TONE_HZ,
  )
  return near && to - from > 0.5 * ((keyed.spans.at(-1)?.toSeconds ?? 0) - (keyed.spans[0]?.fromSeconds ?? 0))
}

/** Up at the same time for the most part: one tone may lead or trail for a while, or be rare at one end. */
function together(a: Lobe, b: Lobe): boolean {
  const both = Math.min(a.end, b.end) - Math.max(a.first, b.first)
  const either = Math.max(a.end, b.end) - Math.min(a.first, b.first)
  const shorter = Math.min(a.end - a.first, b.end - b.first)
  return sameTime(a, b) || (both > TOGETHER * shorter && both > HALF_TOGETHER * either)
}

/** Power from which a sender beside another one disturbs it, and the share of time it may do so. */
const DISTURBS = 0.1
const MOST_OVERLAP = 0.1

function liesOver(stretch: KeyedStretch, sender: Sender): boolean {
  if (sender.stretches.includes(stretch) || stretch.modulation === 'unsure') return false
  return sender.stretches.some((own) => {
    const near = Math.abs(own.carrierHz - stretch.carrierHz) < own.channelHalfWidthHz + 8000
    if (!near || stretch.power < DISTURBS * own.power) return false
    const from = own.spans[0]?.fromSeconds ?? 0
    const to = own.spans.at(-1)?.toSeconds ?? 0
    const over =
      Math.min(to, stretch.spans.at(-1)?.toSeconds ?? 0) - Math.max(from, stretch.spans[0]?.fromSeconds ?? 0)
    return over > MOST_OVERLAP * (to - from)
  })
}
