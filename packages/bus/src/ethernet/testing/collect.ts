/** @module A capture sink that keeps what it hears, for tests. */

import type { CaptureSink, DoipAnnouncement, DoipMessage } from '../../capture/contract.ts'
import { hex } from '../../doip/testing/build.ts'
import type { Finding } from '../../finding/index.ts'

export interface Collected {
  readonly sink: CaptureSink
  readonly doip: DoipMessage[]
  readonly announcements: DoipAnnouncement[]
  readonly findings: Finding[]
  /** Each diagnostic message as `source>target payload`, with `!` when it is cut. */
  lines(): string[]
  codes(): string[]
}

export function collect(): Collected {
  const doip: DoipMessage[] = []
  const announcements: DoipAnnouncement[] = []
  const findings: Finding[] = []
  return {
    sink: {
      frame: () => {
        throw new Error('no CAN frame is expected here')
      },
      doip: (message) => doip.push(message),
      announcement: (announcement) => announcements.push(announcement),
      finding: (finding) => findings.push(finding),
    },
    doip,
    announcements,
    findings,
    lines: () => doip.map((m) => `${m.source}>${m.target} ${hex(m.payload)}${m.complete ? '' : '!'}`),
    codes: () => findings.map((finding) => finding.code),
  }
}
