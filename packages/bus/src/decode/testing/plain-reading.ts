/** @module Two ways to read a recording without any shortcut, to check the fast ones against. */

import { plainFrame } from '../../candump/testing/reference.ts'
import { openRecognising } from '../../capture/head-first.ts'
import { READERS } from '../../capture/readers.ts'
import { ScanStore } from '../../capture/scan-store.ts'
import type { Finding } from '../../finding/index.ts'
import type { Message } from '../../message/types.ts'
import { Decoder } from '../decoder.ts'
import type { Summary } from '../summary.ts'

export interface Reading {
  readonly messages: Message[]
  readonly findings: Finding[]
  readonly summary: Summary
}

function listening(): { decoder: Decoder; reading: Reading } {
  const messages: Message[] = []
  const findings: Finding[] = []
  const decoder = new Decoder({
    message: (message) => messages.push(message),
    finding: (finding) => findings.push(finding),
  })
  return { decoder, reading: { messages, findings, summary: decoder.summary } }
}

/** Log text, a line at a time by one pattern; `badLines` are the numbers of the lines that hold no frame. */
export function readPlainly(text: string): Reading & { readonly badLines: number[] } {
  const { decoder, reading } = listening()
  const badLines: number[] = []
  const lines = text.split('\n')
  if (lines.at(-1) === '') lines.pop()
  for (const [index, ended] of lines.entries()) {
    const frame = plainFrame(ended.replace(/\r$/, ''))
    if (frame === undefined) {
      badLines.push(index + 1)
      continue
    }
    const { seconds, fraction, data, ...same } = frame
    decoder.frame({
      ...same,
      time: { seconds, nanoseconds: Number(fraction.padEnd(9, '0')), decimals: fraction.length },
      data: Uint8Array.from(data),
      where: { line: index + 1 },
    })
  }
  decoder.end()
  return { ...reading, badLines }
}

/** Any recording in chunks of the sizes in turn, by loops that are not compiled, as on a host without WebAssembly. */
export function readUncompiled(bytes: Uint8Array, chunks: readonly number[]): Reading {
  const { decoder, reading } = listening()
  const reader = openRecognising(READERS, decoder, {}, new ScanStore(false))
  for (let at = 0, turn = 0; at < bytes.length; turn++) {
    const size = chunks[turn % chunks.length] ?? bytes.length
    reader.push(bytes.subarray(at, at + size))
    at += size
  }
  reader.end()
  decoder.end()
  return reading
}

/** Any recording, by its reader, which is told nothing of what may be skipped and so makes a frame of everything. */
export function readWithoutSkipping(bytes: Uint8Array): Reading {
  const { decoder, reading } = listening()
  const reader = openRecognising(
    READERS,
    {
      frame: (frame) => decoder.frame(frame),
      networkPacket: () => decoder.networkPacket(),
      doip: (message) => decoder.doip(message),
      announcement: (announcement) => decoder.announcement(announcement),
      finding: (finding) => decoder.finding(finding),
    },
    {},
  )
  reader.push(bytes)
  reader.end()
  decoder.end()
  return reading
}
