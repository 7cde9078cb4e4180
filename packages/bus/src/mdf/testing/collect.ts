/** @module A capture sink for CAN frames, for tests. */

import type { CaptureSink } from '../../capture/contract.ts'
import type { Finding } from '../../finding/index.ts'
import type { CanFrame } from '../../frame/index.ts'

/** A sink that hands frames to `onFrame` and keeps findings; anything else is an error here. */
export function collectFrames(onFrame: (frame: CanFrame) => void): {
  sink: CaptureSink
  findings: Finding[]
} {
  const findings: Finding[] = []
  const unexpected = (): never => {
    throw new Error('only CAN frames are expected here')
  }
  return {
    sink: {
      frame: onFrame,
      finding: (finding) => findings.push(finding),
      doip: unexpected,
      announcement: unexpected,
    },
    findings,
  }
}

export function hex(bytes: Uint8Array): string {
  let text = ''
  for (const byte of bytes) text += byte.toString(16).padStart(2, '0')
  return text
}
