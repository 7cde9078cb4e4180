/** @module What may be said to `shearline decode` about a recording, and recordings that do not fit in memory. */

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import * as mdf from '../../packages/bus/src/mdf/testing/build.ts'
import { frameChannels, HEAD_BYTES, record } from '../../packages/bus/src/mdf/testing/frames.ts'
import { lines, shearline } from '../support/shearline.ts'

const folder = mkdtempSync(join(tmpdir(), 'shearline-choices-'))
afterAll(() => rmSync(folder, { recursive: true }))

interface Line {
  readonly id: string
  readonly time: string
  readonly payload: string
  readonly direction?: string
}

function decode(input: string, ...flags: string[]): { code: number | null; err: string; heard: Line[] } {
  const ran = shearline(['decode', '-', '--json', ...flags], { input })
  return { code: ran.code, err: ran.err, heard: lines<Line>(ran.out) }
}

describe('shearline decode --fields', () => {
  const asked = '(1.000000) can0 7E0#0322F190\n(1.010000) can0 7E8#037F2278\n(1.020000) can0 7E8#037F2231\n'

  it('writes a table of what was chosen, its head first', () => {
    const ran = shearline(['decode', '-', '--fields', 'time,id,service,did,nrc'], { input: asked })
    expect([ran.code, ran.out]).toEqual([
      0,
      [
        'time\tid\tservice\tdid\tnrc',
        '1.000000\t7E0\t22\tF190\t',
        '1.010000\t7E8\t22\t\t78',
        '1.020000\t7E8\t22\t\t31',
        '',
      ].join('\n'),
    ])
  })

  it('writes the head alone when nothing was said, and nothing for what is no recording', () => {
    const flags = ['decode', '-', '--fields', 'time,id']
    expect(shearline(flags, { input: '(1.000000) can0 123#00\n' })).toMatchObject({
      code: 0,
      out: 'time\tid\n',
    })
    expect(shearline(flags, { input: 'not a recording at all\n' })).toMatchObject({ code: 2, out: '' })
  })

  it.each([
    [['--fields', 'time,colour'], /"colour" is no field.*time, startTime, channel/s],
    [['--fields', 'time', '--json'], /--fields writes a table/],
    [['--summary', '--fields', 'time'], /--fields writes a table/],
    [['--fields'], /fields/],
  ])('answers 2 for %j and prints nothing', (flags, words) => {
    const ran = shearline(['decode', '-', ...flags], { input: asked })
    expect([ran.code, ran.out]).toEqual([2, ''])
    expect(ran.err).toMatch(words)
  })
})

describe('shearline decode --columns', () => {
  const table = 'Wann,Wer,"Was, genau"\n1000,2016,02 10 03\n1100,2024,06 50 03 00 32 01 F4\n'

  it('reads a table whose header says nothing by the columns that are named', () => {
    const { code, heard } = decode(
      table,
      '--columns',
      'time=Wann,timeUnit=ms,id=Wer,idBase=dec,data=Was, genau',
    )
    expect([code, heard.map(({ time, id, payload }) => [time, id, payload])]).toEqual([
      0,
      [
        ['1.000', '7E0', '1003'],
        ['1.100', '7E8', '5003003201f4'],
      ],
    ])
    expect(decode(table, '--columns', 'time=#1,timeUnit=ms,id=#2,idBase=dec,data=#3').heard).toEqual(heard)
  })

  it.each([
    ['', /names|columns/],
    ['id=Nobody,data=Was, genau', /no column "Nobody".*Wann, Wer/s],
    ['id=#9', /no column "#9"/],
    ['what=Wer', /says no column.*time, id/s],
    ['id=Wer,idBase=octal,data=#3', /"octal" is no idBase.*hex, dec/s],
    ['id=#3,data=#3', /No line of .* gives a frame/s],
  ])('answers 2 for "%s" and prints nothing, naming what there is', (said, words) => {
    const { code, err, heard } = decode(table, ...(said === '' ? [] : ['--columns', said]))
    expect([code, heard]).toEqual([2, []])
    expect(err).toMatch(words)
  })

  it('answers 2 for a recording that is no table', () => {
    const { code, err } = decode('(1.0) can0 7E0#023E00\n', '--columns', 'id=ID')
    expect([code, /no table but candump/.test(err)]).toEqual([2, true])
  })
})

describe('shearline decode --addressing', () => {
  const text = ['6F1#12021003', '612#F1065003003201F4', '6F1#12023E00', '612#F1027E00']
    .map((line, index) => `(${index}.0) can0 ${line}\n`)
    .join('')

  it('finds address bytes by itself and says so, or is told', () => {
    const found = decode(text)
    expect(found.heard.map(({ id, payload }) => `${id} ${payload}`)).toEqual([
      '6F1-12 1003',
      '612-F1 5003003201f4',
      '6F1-12 3e00',
      '612-F1 7e00',
    ])
    expect(found.err).toMatch(/6F1: the first data byte is an address \(extended addressing\)/)
    expect(decode(text, '--ids', '6F1,612', '--addressing', 'extended').heard).toEqual(found.heard)
    expect(decode(text, '--ids', '6F1,612', '--addressing', 'auto').heard).toEqual(found.heard)
    expect(decode(text, '--ids', '6F1,612', '--addressing', 'normal').heard).not.toEqual(found.heard)
  })

  it('answers 2 for a word that is none, and without identifiers', () => {
    expect(decode(text, '--ids', '6F1', '--addressing', 'both').code).toBe(2)
    expect(decode(text, '--addressing', 'mixed').code).toBe(2)
  })
})

describe('shearline decode of MDF', () => {
  it.skipIf(process.platform !== 'linux')(
    'reads a file whose description stands at its end in bounded memory, however large (needs /proc)',
    () => {
      const sample = (ticks: number, id: number, data: number[]) => ({
        ticks,
        id,
        extended: false,
        fd: false,
        sent: id === 0x7e0,
        bus: 1,
        data: Uint8Array.from(data),
      })
      // Data first, as writers that add the description when they finish: a stream would have to keep all of it.
      const room = 2000
      const width = HEAD_BYTES + room
      const count = 60_000
      const rows = new Uint8Array(count * width)
      for (const place of [0, count - 2]) {
        rows.set(record(sample(1_000_000 + place, 0x7e0, [2, 0x10, 3]), room), place * width)
        const answer = [6, 0x50, 3, 0, 0x32, 1, 0xf4]
        rows.set(record(sample(1_100_000 + place, 0x7e8, answer), room), (place + 1) * width)
      }
      const group = mdf.group({ recordBytes: width, channels: frameChannels(room), cycles: count })
      const root = mdf.dataGroup(group, mdf.draft('DT', [], rows), 0)
      const file = join(folder, 'large.mf4')
      writeFileSync(file, mdf.mdfFile({ order: mdf.inOrder(root, false), firstGroup: root }))
      // The peak of this process alone: `maxRSS` counts the one that started it too.
      const tell =
        "import{readFileSync}from'node:fs';process.on('exit',()=>process.stderr.write(readFileSync('/proc/self/status','utf8')))"
      const peak = `--import=data:text/javascript,${encodeURIComponent(tell)}`
      const ran = shearline(['decode', file, '--json', '--ids', '7E0,7E8'], {
        env: { NODE_OPTIONS: `${peak} --max-old-space-size=96` },
      })
      expect(ran.code).toBe(0)
      expect(lines<Line>(ran.out).map(({ id, payload, direction }) => [id, payload, direction])).toEqual(
        [0, 1].flatMap(() => [
          ['7E0', '1003', 'transmitted'],
          ['7E8', '5003003201f4', 'received'],
        ]),
      )
      const peaks = [...ran.err.matchAll(/^VmHWM:\s+(\d+) kB$/gm)].map((match) => Number(match[1]) / 1024)
      expect(rows.length).toBeGreaterThan(120e6)
      expect(Math.max(...peaks)).toBeGreaterThan(30)
      expect(Math.max(...peaks)).toBeLessThan(120)
    },
  )

  it('of version 3 answers 2 and says what to do', () => {
    const file = join(folder, 'old.dat')
    const head = new Uint8Array(256)
    head.set(new TextEncoder().encode('MDF     3.30    '))
    head[28] = 330 & 255
    head[29] = 330 >> 8
    writeFileSync(file, head)
    const ran = shearline(['decode', file, '--json'])
    expect([ran.code, ran.out]).toEqual([2, ''])
    expect(ran.err).toMatch(/MDF version 3\.30 is not read.*Export the raw bus traffic/s)
  })
})
