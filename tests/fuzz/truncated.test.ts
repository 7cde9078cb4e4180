/** @module Recordings that end too soon: at every byte of a small file of each format and layout. */

import { describe, expect, it } from 'vitest'
import { readBytes } from './examine.ts'
import { RECORDINGS } from './recordings.ts'

/** Every byte of the head and the tail of a file, every `STEP`th between; with SHEARLINE_FUZZ_SECONDS every byte. */
const EVERY = 256
const STEP = process.env.SHEARLINE_FUZZ_SECONDS === undefined ? 19 : 1

describe('cut at every byte', () => {
  it.each(RECORDINGS)(
    '$name: ends without an exception, tells the place, shows what came before',
    ({ bytes }) => {
      const whole = readBytes(bytes, bytes.length)
      let most = 0
      for (let length = 0; length <= bytes.length; length++) {
        if (length > EVERY && length < bytes.length - EVERY && length % STEP !== 0) continue
        const cut = readBytes(bytes.subarray(0, length), 4096)
        for (const { where, code } of cut.findings) {
          const place = where.line ?? where.byteOffset ?? -1
          expect([code, place >= 0]).toEqual([code, true])
        }
        // Every frame that was whole before the cut is read, so more bytes never make fewer frames; only the last line
        // of a text may look whole when it is cut.
        if (
          cut.summary.frames < most - 1 &&
          cut.recognised.format !== 'csv' &&
          cut.recognised.format !== 'mdf'
        )
          expect.fail(`${length} bytes give ${cut.summary.frames} frames, fewer bytes gave ${most}`)
        most = Math.max(most, cut.summary.frames)
      }
      expect(most).toBe(whole.summary.frames)
      expect(most).toBeGreaterThan(20)
    },
  )
})
