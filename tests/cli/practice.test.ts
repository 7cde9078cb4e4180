/** @module The practice car through the real command. */

import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { shearline } from '../support/shearline.ts'

const folder = mkdtempSync(join(tmpdir(), 'shearline-practice-'))
const at = (name: string): string => join(folder, name)
afterAll(() => rmSync(folder, { recursive: true }))

const MENDED =
  'scan; supply 30; open; show a; show b; open; show a; show b; show n; close; start a; button a; start b; button b; start n; button n; scan'

describe('shearline practice', () => {
  it('lists its exercises', () => {
    const listed = JSON.parse(shearline(['practice', 'list', '--json']).out) as {
      id: string
      story: string
    }[]
    expect(listed.length).toBeGreaterThanOrEqual(6)
    expect(listed.every((each) => each.story.length > 20)).toBe(true)
  })

  it('scores an attempt: 0 and full marks when they got home, 1 and reasons when not', () => {
    const ran = shearline(['practice', 'run', 'dies-after-second-key', '--do', MENDED, '--json'])
    const score = JSON.parse(ran.out) as { points: number; passed: boolean; steps: { said: string }[] }
    expect([ran.code, score.points, score.passed]).toEqual([0, 100, true])
    expect(score.steps.map((step) => step.said).join(' ')).toContain('The supply is gone')
    const left = shearline(['practice', 'run', 'dies-after-second-key'], {
      input: 'open\nshow a\nshow b\ndone\n',
    })
    expect(left.code).toBe(1)
    expect(left.out).toContain('Key N does not start the car.')
  })

  it('answers 2 and says what can be typed for words it does not know', () => {
    const ran = shearline(['practice', 'run', 'one-more-key', '--do', 'dance'])
    expect(ran.code).toBe(2)
    expect(ran.err).toContain('"dance" is no action')
    expect(shearline(['practice', 'run', 'nothing']).code).toBe(2)
  })

  it('writes the same recording twice for the same seed, and decode reads it whole', () => {
    for (const name of ['one.log', 'two.log', 'one.pcapng'])
      expect(shearline(['practice', 'visit', '--seed', '5', '--out', at(name)]).code).toBe(0)
    expect(readFileSync(at('one.log'))).toEqual(readFileSync(at('two.log')))
    const summary = (name: string): { messages: number; incomplete: number } =>
      JSON.parse(shearline(['decode', '--summary', '--json', at(name)]).out) as {
        messages: number
        incomplete: number
      }
    expect(summary('one.log').messages).toBeGreaterThan(50)
    expect(summary('one.log').incomplete).toBe(0)
    expect(summary('one.pcapng').messages).toBe(summary('one.log').messages)
    expect(existsSync(at('one.pcapng'))).toBe(true)
  })
})
