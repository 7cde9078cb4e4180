import { describe, expect, it } from 'vitest'
import type { Finding } from '../finding/index.ts'
import { decodeCapture } from './decode-capture.ts'

describe('channels of a damaged recording', () => {
  it('follows a bounded number of channels, says so once, and still counts every frame', () => {
    const lines = Array.from(
      { length: 5000 },
      (_, index) => `(${index}.000000) noise${index} 7E0#023E000000000000\n`,
    )
    const findings: Finding[] = []
    let messages = 0
    const decoding = decodeCapture({
      finding: (finding) => findings.push(finding),
      message: () => messages++,
    })
    decoding.push(new TextEncoder().encode(lines.join('')))
    const { summary } = decoding.end()
    expect(summary.frames).toBe(5000)
    expect(messages).toBe(256)
    expect(
      findings.filter((finding) => finding.code === 'too-many-channels').map((finding) => finding.where),
    ).toEqual([{ line: 257 }])
  })
})
