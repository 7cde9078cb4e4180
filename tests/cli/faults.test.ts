/** @module Fault reports that are no recordings, through the real command; the PDF is printed by Debian's Chromium. */

import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { chromiumPath } from '../support/served.ts'
import { shearline } from '../support/shearline.ts'

const folder = mkdtempSync(join(tmpdir(), 'shearline-faults-'))
afterAll(() => rmSync(folder, { recursive: true, force: true, maxRetries: 5 }))

function file(name: string, text: string): string {
  writeFileSync(join(folder, name), text)
  return join(folder, name)
}

const before = file(
  'before.txt',
  'Engine\n  P0420-00 stored\nBody: no faults stored\nBrakes: no faults stored\n',
)
const after = file(
  'after.csv',
  'unit,code,description\nEngine,P0420-00,old\nBrakes,U0140-87,missing\nBody,,no faults\n',
)

interface Answer {
  readonly faults: readonly { readonly unit: string; readonly code: string; readonly class: string }[]
  readonly complaints: readonly { readonly from: string; readonly about: string }[]
}

const compare = (...args: readonly string[]): Answer => {
  const ran = shearline(['faults', ...args, '--json'])
  expect([ran.code, ran.err]).toEqual([0, ''])
  return JSON.parse(ran.out) as Answer
}

describe('shearline faults', () => {
  it('compares a pasted text with a table', () => {
    const answer = compare('--before', before, '--after', after)
    expect(answer.faults.map((fault) => [fault.unit, fault.code, fault.class])).toEqual([
      ['Engine', 'P0420-00', 'there-before-still'],
      ['Brakes', 'U0140-87', 'new-unexplained'],
    ])
    expect(answer.complaints).toMatchObject([{ from: 'Brakes', about: 'body' }])
  })

  it.skipIf(chromiumPath === null)('reads the text of a PDF, line by line, across columns and pages', () => {
    const page = file(
      'report.html',
      `<h1>Report</h1><h2>Engine</h2><table><tr><td>P0420-00</td><td>stored</td></tr></table>
         <h2 style="break-before: page">Brakes</h2><p>U0140-87 <b>missing</b></p><h2>Body</h2><p>No faults stored</p>`,
    )
    const pdf = join(folder, 'report.pdf')
    execFileSync(
      chromiumPath ?? '',
      [
        '--headless',
        '--no-sandbox',
        '--disable-gpu',
        '--no-pdf-header-footer',
        `--user-data-dir=${join(folder, 'profile')}`,
        `--print-to-pdf=${pdf}`,
        `file://${page}`,
      ],
      { stdio: 'ignore' },
    )
    const answer = compare('--before', before, '--after', pdf)
    expect(answer.faults.map((fault) => [fault.unit, fault.code])).toEqual([
      ['Engine', 'P0420-00'],
      ['Brakes', 'U0140-87'],
    ])
  })

  it('says what is wrong with a PDF that is none, and where a report is not sure', () => {
    const broken = shearline([
      'faults',
      '--before',
      file('broken.pdf', '%PDF-1.7\nnothing'),
      '--after',
      after,
    ])
    expect(broken.code).toBe(2)
    expect(broken.err).toContain('cannot be read as a PDF')
    const unsure = shearline(['faults', '--before', file('unsure.txt', 'PO420'), '--after', after])
    expect(unsure.err).toContain('line 1: P0420 (code-mended, unit-not-named)')
  })
})
