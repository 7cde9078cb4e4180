/** @module What a stretch of time says of its sender: the shape that every kind of keying is measured into. */

import type { Channel } from './channel.ts'
import type { Run } from './envelope.ts'

/** How a sender is keyed. */
export type Modulation = 'OOK' | '2-FSK' | 'unsure'

/** What one stretch says of its sender. Frequencies from the recording's centre, times from its start. */
export interface KeyedStretch {
  readonly modulation: Modulation
  readonly carrierHz: number
  /** 2-FSK only. */
  readonly tonesHz: readonly [number, number] | null
  /** Pulses and gaps, or times on the upper and on the lower tone, in no useful order. */
  readonly pulsesUs: readonly number[]
  readonly gapsUs: readonly number[]
  readonly jitterUs: number
  /** Power while up, in the source's scale, and the channel's own idea of the noise in the recorded band. */
  readonly power: number
  /** Share of the recorded band's noise that is in `power`. */
  readonly noiseShare: number
  readonly bandNoise: number | null
  readonly spans: readonly UpSpan[]
  readonly channelHalfWidthHz: number
}

/** A time the sender was up, its frequency and strength. */
export interface UpSpan {
  readonly fromSeconds: number
  readonly toSeconds: number
  readonly carrierHz: number
  readonly weight: number
}

/** What is known of the channel before the keying is. */
export type ChannelFacts = Pick<KeyedStretch, 'channelHalfWidthHz' | 'bandNoise'>

/** A run of channel values in seconds of the recording. */
export function spanSeconds(
  channel: Channel,
  run: Run,
): { readonly fromSeconds: number; readonly toSeconds: number } {
  const rate = channel.rateHz * channel.step
  return {
    fromSeconds: (channel.startSample + run.from * channel.step) / rate,
    toSeconds: (channel.startSample + run.to * channel.step) / rate,
  }
}
