import { spawnSync } from 'node:child_process'
import { describe, expect, test } from 'vitest'
import { measureRow, type RadioRow, radioPresent, radioRows, titledRows } from './testing/radio-folder.ts'

/**
 * rtl_433 (https://github.com/merbanan/rtl_433, Debian package rtl-433): its pulse analysis with `-F null`, as `-R 0`
 * would also turn its FM demodulator off. Lines with content are not looked at.
 */
const installed = spawnSync('rtl_433', ['-V']).error === undefined
const why = installed ? '' : ' [skipped: rtl_433 is not installed]'

interface Analysis {
  readonly type: 'OOK' | 'FSK'
  readonly count: number
  readonly pulses: readonly { readonly us: number; readonly count: number }[]
}

/** The largest package that rtl_433 found. */
function analyse(row: RadioRow): Analysis | null {
  const rate = row.cells.sample_rate_hz ?? '250000'
  const run = spawnSync('rtl_433', ['-F', 'null', '-A', '-s', rate, '-r', row.path], {
    encoding: 'utf8',
    maxBuffer: 1 << 26,
  })
  const text = `${run.stdout}${run.stderr}`
  const packages = text.split(/Detected (?=OOK|FSK)/).slice(1)
  const read = packages.map((part): Analysis => {
    const distribution = part.split('Pulse width distribution:')[1]?.split('Gap width')[0] ?? ''
    return {
      type: part.startsWith('FSK') ? 'FSK' : 'OOK',
      count: Number(/Total count:\s*(\d+)/.exec(part)?.[1] ?? 0),
      pulses: [...distribution.matchAll(/count:\s*(\d+),\s*width:\s*(\d+) us/g)].map((match) => ({
        count: Number(match[1]),
        us: Number(match[2]),
      })),
    }
  })
  return read.toSorted((a, b) => b.count - a.count)[0] ?? null
}

// Without its recordings or with packages broken up by noise or a second sender there is nothing to compare.
const compared = radioRows().filter(
  (row) =>
    row.path.endsWith('.cu8') &&
    !['sensor-j-1-noisy', 'sensor-k-1-weak', 'handheld-f-2-foreign', 'meter-o-1'].includes(row.name),
)

describe('rtl_433 on the same recordings', () => {
  test.skipIf(!installed || !radioPresent).each(titledRows(compared))(
    `RAD-07 RAD-09 agrees on keying and common pulse lengths of %s${why}`,
    (_, row) => {
      const said = analyse(row)
      if (said === null) throw new Error(`rtl_433 found no package in ${row.name}`)
      const { sender } = measureRow(row).measurement
      expect(sender?.modulation).toBe(said.type === 'FSK' ? '2-FSK' : 'OOK')
      const all = said.pulses.reduce((sum, pulse) => sum + pulse.count, 0)
      for (const { us, count } of said.pulses) {
        if (count < 0.1 * all || us === 0) continue
        const apart = Math.min(...(sender?.pulses ?? []).map((cluster) => Math.abs(cluster.us - us)))
        expect(apart, `${us} us`).toBeLessThan(Math.max(0.1 * us, 6))
      }
    },
  )
})
