/**
 * @module Recordings that are far too large, or claim to be: memory, output and places of findings.
 *
 * Each runs in a process of its own whose heap may hold `HEAP_MEGABYTES` of objects: if a reader kept what it reads,
 * that process would end in an exception. Resident memory is the peak of the whole process, Node itself included
 * (about 60 MB with the sources loaded). With `SHEARLINE_FUZZ_SECONDS` the sizes of the issue are used: 1 GB of
 * zeros, a sparse file of 10 GB.
 */

import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { shearline } from '../support/shearline.ts'
import type { Flooded } from './flood.ts'
import { RECORDINGS } from './recordings.ts'

const long = process.env.SHEARLINE_FUZZ_SECONDS !== undefined
const MEGABYTES = long ? 1024 : 64
const HEAP_MEGABYTES = 96
const MOST_RESIDENT_MEGABYTES = 260
const root = join(import.meta.dirname, '..', '..')

function flood(name: string, count: number): Flooded {
  const out = execFileSync(
    process.execPath,
    [
      '--conditions=@shearline/source',
      `--max-old-space-size=${HEAP_MEGABYTES}`,
      '--max-semi-space-size=8',
      join(import.meta.dirname, 'flood.ts'),
      name,
      String(count),
    ],
    { cwd: root, encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] },
  )
  const flooded = JSON.parse(out) as Flooded
  if (long) console.log(`${name} ${count}: ${JSON.stringify(flooded)}`)
  expect(flooded.peakMegabytes).toBeLessThan(MOST_RESIDENT_MEGABYTES)
  for (const { code, line, byteOffset } of flooded.first)
    expect([code, (line ?? byteOffset ?? -1) >= 0]).toEqual([code, true])
  return flooded
}

describe('floods', { timeout: 1_200_000 }, () => {
  it('zeros are no recording', () => {
    const { format, codes } = flood('zeros', MEGABYTES)
    expect([format, codes]).toEqual(['unknown', { 'format-unknown': 1 }])
  })

  it.each([
    ['zeros after text', 500, 501],
    ['zeros after pcapng', 200, undefined],
    ['zeros after a table', 300, 302],
  ] as const)('%s: what came before is read, the zeros are told', (name, frames, line) => {
    const flooded = flood(name, MEGABYTES)
    expect(flooded.frames).toBe(frames)
    expect(flooded.told).toBeGreaterThan(0)
    expect(flooded.told).toBeLessThan(20)
    if (line !== undefined) expect(flooded.first.map((one) => one.line)).toContain(line)
  })

  it('zeros after a pcap header are told once', () => {
    const flooded = flood('zeros after pcap', long ? 64 : 8)
    expect([flooded.frames, flooded.told]).toEqual([0, 1])
  })

  it('a line of 1 MB and one of 50 MB are passed over, what follows is read', () => {
    for (const megabytes of [1, 50]) {
      const text = flood('long line', megabytes)
      expect([text.frames, text.messages, text.codes]).toEqual([501, 1, { 'line-too-long': 1 }])
      expect(text.first[0]?.line).toBe(501)
    }
    const table = flood('long line in a table', 50)
    expect([table.frames, table.codes['csv-line-too-long']]).toEqual([8001, 1])
  })

  it('a million distinct identifiers are counted, followed up to a bound, and told once', () => {
    const count = long ? 1_000_000 : 200_000
    const flooded = flood('identifiers', count)
    expect([flooded.frames, flooded.codes]).toEqual([count, { 'too-many-identifiers': 1 }])
  })

  it('100,000 findings are all counted, 10,000 told one by one', () => {
    const flooded = flood('bad lines', 100_002)
    expect([flooded.told, flooded.codes]).toEqual([10_000, { 'bad-line': 100_000 }])
    const table = flood('bad cells', 100_000)
    expect([table.codes['csv-bad-line'], table.told]).toEqual([100_000, 10_001])
  })

  it('a pcapng block and a pcap record that claim 4 GB are not believed', () => {
    const block = flood('block of 4 GB', MEGABYTES)
    expect(block.frames).toBe(200)
    expect(block.codes['block-too-long']).toBe(1)
    const record = flood('record of 4 GB', long ? 64 : 8)
    expect([record.frames, record.told]).toEqual([0, 1])
  })

  it('first frames that claim 4 GB are not believed, and a thousand transfers of 15 MB grow only as they arrive', () => {
    const claimed = flood('first frames of 4 GB', 32_000)
    expect(claimed.frames).toBe(32_000)
    expect(claimed.codes['isotp-too-long']).toBe(2000)
    const open = flood('transfers of 15 MB', long ? 1000 : 100)
    expect(open.codes['isotp-recording-ended']).toBe(1024)
  })
})

describe('a sparse file on the command line', { timeout: 1_200_000 }, () => {
  const folder = mkdtempSync(join(tmpdir(), 'shearline-sparse-'))
  const size = long ? 10 * 2 ** 30 : 256 * 2 ** 20
  // Tells the peak of resident memory when the process ends; the command itself is the built one.
  const peak = `--import=data:text/javascript,${encodeURIComponent("process.on('exit',()=>process.stderr.write('\\npeak '+process.resourceUsage().maxRSS+'\\n'))")}`

  beforeAll(() => {
    const pcapng = RECORDINGS.find(({ name }) => name === 'pcapng of the writer')
    if (pcapng === undefined) throw new Error('the recording is missing')
    writeFileSync(join(folder, 'zeros.bin'), '')
    writeFileSync(join(folder, 'begun.pcapng'), pcapng.bytes)
    for (const name of ['zeros.bin', 'begun.pcapng']) truncateSync(join(folder, name), size)
  })
  afterAll(() => rmSync(folder, { recursive: true }))

  function run(name: string): { code: number | null; out: string; err: string; peakMegabytes: number } {
    const started = Date.now()
    const ran = shearline(['decode', join(folder, name), '--summary', '--json'], {
      env: { NODE_OPTIONS: peak },
    })
    const peaks = [...ran.err.matchAll(/^peak (\d+)$/gm)].map((match) => Number(match[1]) / 1024)
    const peakMegabytes = Math.max(...peaks)
    if (long) console.log(`${name}: ${Date.now() - started} ms, peak ${peakMegabytes.toFixed(0)} MB`)
    expect(peakMegabytes).toBeGreaterThan(30)
    expect(peakMegabytes).toBeLessThan(MOST_RESIDENT_MEGABYTES)
    return { ...ran, peakMegabytes }
  }

  it('of nothing but zeros is refused with exit code 2', () => {
    const { code, out, err } = run('zeros.bin')
    expect([code, out]).toEqual([2, ''])
    expect(err).toMatch(/zero bytes/)
  })

  it('that begins as pcapng gives what it holds', () => {
    const { code, out, err } = run('begun.pcapng')
    expect(code).toBe(0)
    expect((JSON.parse(out) as { messages: number }).messages).toBeGreaterThan(15)
    expect(err).toMatch(/byte \d+/)
  })
})
