/** @module candump text, as the CAN utilities of Linux write it: log layout and console layout. */

import type { CaptureFormat } from '../capture/contract.ts'
import { ScanStore } from '../capture/scan-store.ts'
import { ReusedFrame } from '../frame/reused.ts'
import { LineParser } from './line.ts'
import { openCandump } from './reader.ts'
import { withRelativeTimes } from './relative-times.ts'

/** Recognised by one line in the first bytes that is a frame; text with NUL bytes is not candump. */
export const candump: CaptureFormat = {
  name: 'candump',
  recognise(head) {
    if (head.includes(0)) return undefined
    const parser = new LineParser(new ReusedFrame())
    let start = 0
    for (let line = 1; start < head.length; line++) {
      const newline = head.indexOf(0x0a, start)
      const end = newline === -1 ? head.length : newline
      const stop = end > start && head[end - 1] === 0x0d ? end - 1 : end
      if (parser.parse(head, start, stop) === undefined) {
        return `line ${line} is a frame in candump's ${parser.timeless || head.subarray(start, stop).includes(0x5b) ? 'console' : 'log'} layout`
      }
      start = end + 1
    }
    return undefined
  },
  open: (sink, _, store) => withRelativeTimes(sink, (told) => openCandump(told, store ?? new ScanStore())),
}
