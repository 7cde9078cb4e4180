/** @module Defects the fuzzer found, each as the smallest input that shows it. Bytes are invented. */

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { readBytes, showsSecret } from './examine.ts'

const HEADER = 'time,id,extended,channel,length,data'
const GOOD = Array.from({ length: 30 }, (_, at) => `0.${at + 10},738,0,can1,8,027E000000000000`)

function table(...lines: readonly string[]) {
  const bytes = new TextEncoder().encode(`${[HEADER, ...GOOD, ...lines].join('\n')}\n`)
  return readBytes(bytes, bytes.length)
}

describe('a damaged table', () => {
  it.each([
    ['a lost delimiter puts data into the length', '0.5,738,0,can1,8066701F7E5D3B955'],
    ['a lost row end puts words behind the data', '0.5,738,0,can1,8,066701F7E5D3B955time'],
    ['a lost column puts data into the time', '066701F7E5D3B9ZZ,738,0,can1,8,00'],
    ['a lost column puts data into the identifier', '0.5,066701F7E5D3B955,0,can1,8,00'],
    ['a lost column puts data into the flag', '0.5,738,066701F7E5D3B955,can1,8,00'],
    [
      'binary bytes stand where the channel does',
      `0.5,738,0,${String.fromCharCode(1, 0xf7, 0xe5, 0xd3, 0xb9)},2,027E`,
    ],
    ['half a file stands where the channel does', `0.5,738,0,${'066701F7E5D3B955'.repeat(9)},2,027E`],
  ])('%s: it is told by line and column, and not quoted', (_, line) => {
    const read = table(line)
    const bad = read.findings.filter(({ code }) => code === 'csv-bad-line')
    expect(bad.map(({ where }) => where.line)).toEqual([32])
    expect(bad[0]?.what).toMatch(/column \d/)
    expect(showsSecret(JSON.stringify(read))).toBe(false)
    expect(read.summary.frames).toBe(30)
  })

  it('whose end was never written (zeros) keeps what came before', () => {
    const bytes = new Uint8Array(200_000)
    bytes.set(new TextEncoder().encode(`${[HEADER, ...GOOD].join('\n')}\n`))
    const read = readBytes(bytes, 4096)
    expect(read.summary.frames).toBe(30)
  })

  it('with many bad lines counts them all', () => {
    const read = table(...GOOD, ...GOOD, ...GOOD, ...GOOD, ...new Array<string>(150).fill('x,y,z'))
    expect(read.summary.findings['csv-bad-line']).toBe(150)
    expect(read.findings.filter(({ code }) => code === 'csv-bad-line')).toHaveLength(150)
  })
})

describe('a damaged pcapng', () => {
  it('whose block type is made of secret bytes does not have it quoted', () => {
    const file = 'pcapng-block-type-of-secret-bytes-is-quoted.pcapng'
    const bytes = readFileSync(join(import.meta.dirname, 'fixtures', file))
    const read = readBytes(bytes, bytes.length)
    expect(read.findings.map(({ code }) => code)).toContain('block-unknown')
    expect(showsSecret(JSON.stringify(read))).toBe(false)
  })
})
