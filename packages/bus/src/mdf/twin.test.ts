/**
 * @module Real MDF recordings against their candump twins.
 *
 * Source of the expectations: candump logs made from the same recordings beforehand by a script that is not part of
 * this project; recordings of an open collection of logger examples (MIT). Without `../shared/captures` these tests
 * are skipped and say so. The twins hold no direction, so that member is not compared.
 */

import { describe, expect, it } from 'vitest'
import type { Finding } from '../finding/index.ts'
import { formatId, formatTime } from '../frame/index.ts'
import { sharedBytes, sharedPresent } from '../testing/shared.ts'
import { bytesSource, MDF_FORMAT, readMdf } from './index.ts'
import { collectFrames, hex } from './testing/collect.ts'

const NAMES = ['03_can11_uds22_multi_dir', '05_can11_uds_rsponly_nofc', '06_can29_plain150k_uds']

function twin(name: string): string[] {
  return new TextDecoder()
    .decode(sharedBytes(`captures/files/${name}.log`))
    .trimEnd()
    .split('\n')
}

function asLines(bytes: Uint8Array) {
  const lines: string[] = []
  const finer: string[] = []
  const { sink, findings } = collectFrames((frame) => {
    const time = formatTime(frame.time)
    if (!/^\d+\.\d{6}(0{3})?$/.test(time)) finer.push(time)
    lines.push(
      `(${time.slice(0, 17)}) ${frame.channel} ${formatId(frame.id, frame.extended)}#${hex(frame.data).toUpperCase()}`,
    )
  })
  for (const _ of readMdf(bytesSource(bytes), sink));
  return { lines, finer, findings }
}

function codes(findings: readonly Finding[]): string[] {
  return findings.map((finding) => finding.code)
}

describe.skipIf(!sharedPresent)('real MDF recordings, as their candump twins hold them', () => {
  for (const name of NAMES) {
    it(`gives the frames of ${name} in the same order with the same times`, () => {
      const { lines, finer, findings } = asLines(sharedBytes(`captures/files/${name}.MF4`))
      expect(lines).toEqual(twin(name))
      // The twins have six decimals; no frame has a digit beyond them, so nothing was rounded.
      expect(finer).toEqual([])
      expect(codes(findings)).toEqual(['mdf-not-finalised'])
    })

    it(`gives the same for ${name} when it arrives in pieces`, () => {
      const bytes = sharedBytes(`captures/files/${name}.MF4`)
      const got: string[] = []
      const whole = asLines(bytes)
      const { sink, findings } = collectFrames((frame) => {
        got.push(
          `(${formatTime(frame.time).slice(0, 17)}) ${frame.channel} ${formatId(frame.id, frame.extended)}#${hex(frame.data).toUpperCase()}`,
        )
      })
      const reader = MDF_FORMAT.open(sink, {})
      for (let at = 0, size = 1; at < bytes.length; at += size, size = ((size * 7) % 40_009) + 1) {
        reader.push(bytes.subarray(at, at + size))
      }
      reader.end()
      expect(got).toEqual(whole.lines)
      expect(findings).toEqual(whole.findings)
    })
  }

  it('tells sent frames from received ones in 03: 247 of 4024 were sent', () => {
    let sent = 0
    const { sink } = collectFrames((frame) => {
      if ('direction' in frame && frame.direction === 'transmitted') sent += 1
    })
    for (const _ of readMdf(bytesSource(sharedBytes(`captures/files/${NAMES[0]}.MF4`)), sink));
    expect(sent).toBe(247)
  })

  it('gives a prefix of the frames and never throws, cut at any place', () => {
    const bytes = sharedBytes(`captures/files/${NAMES[1]}.MF4`)
    const { lines } = asLines(bytes)
    for (let cut = 0; cut < bytes.length; cut += cut < 8000 ? 97 : 1009) {
      const part = asLines(bytes.subarray(0, cut))
      expect(lines.slice(0, part.lines.length)).toEqual(part.lines)
      if (part.lines.length === 0) expect(part.findings.length).toBeGreaterThan(0)
    }
  })
})
