/** @module Who does not know the form of a plan gets one to start from, and it is answered as any other. */

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { shearline } from '../support/shearline.ts'

const folder = mkdtempSync(join(tmpdir(), 'shearline-examples-'))
afterAll(() => rmSync(folder, { recursive: true }))

/** The example of a command, saved as a person would. */
function example(command: string): string {
  const { code, out, err } = shearline([command, '--example'])
  expect([code, err]).toEqual([0, ''])
  // Over several lines: somebody goes on to edit it.
  expect(out.split('\n').length).toBeGreaterThan(10)
  const file = join(folder, `${command}.json`)
  writeFileSync(file, out)
  return file
}

describe('an example to start from', () => {
  it('is a plan: teaching drops the keys that are not taught, and the clone stays', () => {
    const { code, out, err } = shearline(['rehearse', example('rehearse'), '--json'])
    expect([code, err]).toEqual([0, ''])
    // What follows from rules ENR-05 to ENR-10 of the rehearsal model for a list that is replaced at the close.
    expect(JSON.parse(out).end).toMatchObject({
      starts: ['A', 'A-clone', 'N'],
      dropped: ['B', 'C', 'X', 'Y'],
      stranded: false,
    })
  })

  it('is a battery: tired and cold, it wants a supply', () => {
    const { code, out } = shearline(['power', example('power'), '--json'])
    expect(code).toBe(0)
    expect(JSON.parse(out).verdict).toBe('connect-supply')
  })

  it.each(['rehearse', 'power'])('is named by %s when no file is', (command) => {
    const { code, out, err } = shearline([command])
    expect([code, out]).toEqual([2, ''])
    expect(err).toContain(`shearline ${command} --example`)
  })
})

it('ends what a warning of the supply says before it says what to do', () => {
  const { err } = shearline(['power', example('power')])
  expect(err).toMatch(/not on the post\. Otherwise the monitor/)
})
