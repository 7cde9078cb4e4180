/** @module CAN frames as records of one layout, for tests. */

import { channels, conversion, type Draft, fields } from './build.ts'

/** A frame to be written. `ticks` are microseconds since the start of the recording. */
export interface Sample {
  readonly ticks: number
  readonly id: number
  readonly extended: boolean
  readonly fd: boolean
  readonly sent: boolean
  readonly bus: number
  readonly data: Uint8Array
}

export const HEAD_BYTES = 13

/** The part of a record before its data bytes: time (6 bytes), identifier and marks (4), bus and DLC (1), length (2). */
export function recordHead(sample: Sample): Uint8Array {
  const marks = (sample.extended ? 1 : 0) + (sample.fd ? 2 : 0) + (sample.sent ? 4 : 0)
  return fields(
    [6, sample.ticks],
    [4, sample.id + marks * 2 ** 29],
    [1, sample.bus * 16 + Math.min(sample.data.length, 15)],
    [2, sample.data.length],
  )
}

/** A whole record of `longest` data bytes. */
export function record(sample: Sample, longest: number): Uint8Array {
  const bytes = new Uint8Array(HEAD_BYTES + longest)
  bytes.set(recordHead(sample))
  bytes.set(sample.data, HEAD_BYTES)
  return bytes
}

/** The channels of such records; with `elsewhere` the data bytes are a reference into that block. */
export function frameChannels(longest: number, elsewhere?: Draft): Draft | undefined {
  const member = (name: string, byteOffset: number, bitOffset: number, bitCount: number) => ({
    name: `CAN_DataFrame.${name}`,
    byteOffset,
    bitOffset,
    bitCount,
  })
  const bytes = { name: 'CAN_DataFrame.DataBytes', dataType: 10, byteOffset: HEAD_BYTES }
  const members = channels([
    member('ID', 6, 0, 29),
    member('IDE', 9, 5, 1),
    member('EDL', 9, 6, 1),
    member('Dir', 9, 7, 1),
    member('DLC', 10, 0, 4),
    member('BusChannel', 10, 4, 4),
    member('DataLength', 11, 0, 16),
    elsewhere === undefined
      ? { ...bytes, bitCount: longest * 8 }
      : { ...bytes, type: 1, bitCount: 64, link: elsewhere },
  ])
  return channels([
    { name: 't', type: 2, bitCount: 48, conversion: conversion(1, [0, 1e-6]) },
    {
      name: 'CAN_DataFrame',
      dataType: 10,
      byteOffset: 6,
      bitCount: (HEAD_BYTES - 6 + longest) * 8,
      ...(members === undefined ? {} : { members }),
    },
  ])
}

/** Frames of a plausible bus, the same for the same seed. */
export function samples(count: number, seed = 1): Sample[] {
  let state = seed
  const draw = (below: number): number => {
    state = (state * 1_103_515_245 + 12_345) % 2 ** 31
    return Math.floor((state / 2 ** 31) * below)
  }
  let ticks = 0
  return Array.from({ length: count }, () => {
    ticks += 1 + draw(5000)
    const extended = draw(2) === 1
    return {
      ticks,
      id: draw(extended ? 2 ** 29 : 2 ** 11),
      extended,
      fd: false,
      sent: draw(4) === 0,
      bus: 1 + draw(2),
      data: Uint8Array.from({ length: draw(9) }, () => draw(256)),
    }
  })
}
