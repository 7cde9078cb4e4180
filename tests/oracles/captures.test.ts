/**
 * @module Real recordings (../shared/captures), read now by tshark, scapy and python-can and by us.
 *
 * Sources of the expectations: the programs themselves, run here. What they and we disagree on stands in README.md
 * beside this file; each row is asserted below, so that a change on either side shows.
 */

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import { captures } from '../support/shearline.ts'
import {
  type Answer,
  pythonPresent,
  readWithPython,
  tsharkFrames,
  tsharkMessages,
  tsharkPresent,
} from './programs.ts'
import { framesOf, messagesOf, missing } from './reading.ts'

const file = (name: string): string => join(captures ?? '', name)
if (captures === null)
  console.warn('skipped: ../shared/captures is not here, so no real recording is compared')

/** The identifiers that carry diagnostics, as the list of the recordings states them. */
function idsOf(name: string): number[] {
  const rows = readFileSync(file('../MANIFEST.tsv'), 'utf8')
    .split('\n')
    .map((line) => line.split('\t'))
  const column = rows[0]?.indexOf('ids') ?? -1
  const ids = rows.find((row) => row[0] === name)?.[column] ?? ''
  return ids.split(',').map((id) => Number.parseInt(id, 16))
}

describe.skipIf(captures === null || !tsharkPresent)('tshark', () => {
  it.each([
    ['01_can11_obd_uds_kwp_scan.log', 1845],
    ['10_can11_uds_scan_be.pcapng', 9434],
    ['16_canfd_sll.pcap', 4],
    ['17_trunc_can.pcap', 9433],
    ['19_can11_obd01_physical_cut.log', 5000],
  ])('sees the same frames in %s', (name, count) => {
    const ours = framesOf(file(name))
    expect(tsharkFrames(file(name))).toEqual(ours)
    expect(ours).toHaveLength(count)
  })

  it('sees the same frames in a capture with swapped identifiers, once it is told that they are', () => {
    const name = '11_can_mixed_uudt_le.pcap'
    expect(tsharkFrames(file(name), true)).toEqual(framesOf(file(name)))
  })

  it.each([
    ['03_can11_uds22_multi_dir.log', [[0x7a0, 0x7b3, 0x7e4], [0x7a8], [0x7bb], [0x7ec]], 223],
    ['05_can11_uds_rsponly_nofc.log', [[0x7bb], [0x7ec]], 270],
    ['11_can_mixed_uudt_be.pcap', [[0x241], [0x641]], 95],
  ] as const)('puts the same messages together in %s', (name, groups, count) => {
    const ours = messagesOf(file(name), groups.flat()).lines
    expect(tsharkMessages(file(name), groups).sort()).toEqual(ours.sort())
    expect(ours).toHaveLength(count)
  })

  it('stops at the first bad line of text, which we pass over', () => {
    const theirs = tsharkFrames(file('20_bad_lines.log'))
    const ours = framesOf(file('20_bad_lines.log'))
    expect(theirs).toEqual(ours.slice(0, theirs.length))
    expect([theirs.length, ours.length]).toEqual([5, 31])
  })
})

describe.skipIf(captures === null || !pythonPresent)('scapy and python-can', () => {
  const text = [
    '01_can11_obd_uds_kwp_scan.log',
    '03_can11_uds22_multi_dir.log',
    '05_can11_uds_rsponly_nofc.log',
    '19_can11_obd01_physical_cut.log',
  ] as const
  const binary = ['10_can11_uds_scan_be.pcap', '11_can_mixed_uudt_be.pcap'] as const
  const large = '06_can29_plain150k_uds.log'
  const bad = '20_bad_lines.log'
  const answers = new Map<string, Answer>()
  const answer = (by: string, name: string): Answer => answers.get(`${by} ${name}`) as Answer

  beforeAll(() => {
    const jobs = [
      ...[...text, large, bad].map((name) => ({ file: file(name), by: 'python-can' as const, name })),
      ...[...text, bad].map((name) => ({
        file: file(name),
        by: 'scapy log' as const,
        ids: name === bad ? [] : idsOf(name),
        name,
      })),
      ...binary.map((name) => ({ file: file(name), by: 'scapy capture' as const, ids: idsOf(name), name })),
    ]
    for (const [index, one] of readWithPython(jobs).entries()) {
      const job = jobs[index]
      if (job !== undefined) answers.set(`${job.by} ${job.name}`, one)
    }
  })

  it.each([...text, large])('python-can sees the same frames in %s', (name) => {
    const { frames, error } = answer('python-can', name)
    expect(error).toBeNull()
    expect(missing(frames, framesOf(file(name)))).toEqual([])
    expect(frames).toHaveLength(framesOf(file(name)).length)
  })

  it.each(text)('scapy sees the same frames in %s', (name) => {
    const { frames, error } = answer('scapy log', name)
    expect([error, frames]).toEqual([null, framesOf(file(name))])
  })

  it.each(binary)('scapy sees the same frames in %s', (name) => {
    const { frames, error } = answer('scapy capture', name)
    expect([error, frames]).toEqual([null, framesOf(file(name))])
  })

  it.each([
    ['scapy log', '01_can11_obd_uds_kwp_scan.log', 0],
    // Consecutive frames are missing in three transfers; scapy does not look at sequence numbers.
    ['scapy log', '03_can11_uds22_multi_dir.log', 3],
    ['scapy log', '05_can11_uds_rsponly_nofc.log', 0],
    ['scapy log', '19_can11_obd01_physical_cut.log', 0],
    ['scapy capture', '10_can11_uds_scan_be.pcap', 0],
    ['scapy capture', '11_can_mixed_uudt_be.pcap', 0],
  ] as const)('%s puts the same messages together in %s, but for %i broken ones', (by, name, broken) => {
    const theirs = answer(by, name).messages
    const ours = messagesOf(file(name), idsOf(name)).lines
    expect(missing(ours, theirs)).toEqual([])
    expect(missing(theirs, ours)).toHaveLength(broken)
    expect(ours.length).toBeGreaterThan(90)
  })

  it('python-can and scapy give up in the middle of a file with bad lines; what they saw, we see', () => {
    const ours = framesOf(file(bad))
    // Lines 6 and 10 have an odd number of digits: python-can makes a byte of the last one, scapy raises, we refuse.
    for (const [by, refused] of [
      ['python-can', 2],
      ['scapy log', 0],
    ] as const) {
      const { frames, error } = answer(by, bad)
      expect([by, error === null]).toEqual([by, false])
      expect(frames.length).toBeLessThan(ours.length)
      expect([by, missing(frames, ours).length]).toEqual([by, refused])
    }
  })
})
