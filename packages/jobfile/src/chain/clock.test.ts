import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Fact } from '../facts/index.ts'
import { TestDevice } from '../testing/device.ts'
import { checkClocks, contradictions } from './index.ts'

const at = (minutes: number) => new Date(Date.UTC(2026, 0, 12, 8) + minutes * 60_000).toISOString()
const codes = (found: { readonly findings: readonly { readonly code: string }[] }) =>
  found.findings.map((one) => one.code)

describe('clocks', () => {
  it('of a quiet job say nothing, whatever the order of arrival', async () => {
    const [a, b] = [await TestDevice.create(), await TestDevice.create()]
    for (let minute = 0; minute < 20; minute += 2) {
      await a.write('note-written', { text: 'a' }, { at: at(minute) })
      await b.write('note-written', { text: 'b' }, { at: at(minute + 1) })
    }
    const facts = [...b.facts, ...a.facts]
    const received = new Map(facts.map((fact) => [fact.id, at(21)]))
    expect(checkClocks(facts, { received, now: Date.parse(at(22)) }).findings).toEqual([])
  })

  it('that were set back are found: a fact older than the one before it on its device', async () => {
    const a = await TestDevice.create()
    await a.write('note-written', { text: 'one' }, { at: at(60) })
    const back = await a.write('note-written', { text: 'two' }, { at: at(10) })
    const found = checkClocks(a.facts)
    expect(codes(found)).toEqual(['before-its-predecessor'])
    expect(found.findings[0]).toMatchObject({ params: { minutes: 50, fact: back.id } })
    await a.write('note-written', { text: 'three' }, { at: at(58) })
    expect(codes(checkClocks(a.facts.slice(0, 1).concat(a.facts.slice(2))))).toEqual([])
  })

  it('are bounded from below by receipts and from above by what was known before', async () => {
    const [server, tablet] = [await TestDevice.create('server'), await TestDevice.create('tablet')]
    const said = await server.write('keys-said', { count: 4 }, { at: at(30) })
    // The tablet runs 40 minutes ahead: at 31 real minutes it writes 71, received at 32.
    const fix = await tablet.write(
      'corrected',
      { fact: said.id, action: 'withdrawn', reason: 'Counted again.' },
      { at: at(71) },
    )
    const received = new Map([[fix.id, at(32)]])
    const found = checkClocks([said, fix], { received, reference: server.device.device })
    expect(found.devices.find((one) => one.device === tablet.device.device)).toEqual({
      device: tablet.device.device,
      atLeast: 39 * 60_000,
      atMost: 41 * 60_000,
    })
    expect(codes(found)).toEqual(['written-after-receipt', 'clock-ahead'])
  })

  it('that run behind are found by a fact they name', async () => {
    const [server, tablet] = [await TestDevice.create(), await TestDevice.create()]
    const said = await server.write('keys-said', { count: 4 }, { at: at(60) })
    const fix = await tablet.write(
      'corrected',
      { fact: said.id, action: 'withdrawn', reason: 'Counted again.' },
      { at: at(20) },
    )
    expect(codes(checkClocks([said, fix], { reference: server.device.device }))).toEqual([
      'before-what-it-names',
      'clock-behind',
    ])
    expect(codes(checkClocks([fix, said], { now: Date.parse(at(0)) }))).toEqual([
      'before-what-it-names',
      'in-the-future',
      'in-the-future',
    ])
  })

  it('hold the true error of random clocks between their bounds', async () => {
    const devices = [await TestDevice.create('server'), await TestDevice.create(), await TestDevice.create()]
    const moves = fc.array(
      fc.record({ who: fc.nat(2), gap: fc.integer({ min: 1, max: 600 }), names: fc.boolean() }),
      {
        minLength: 4,
        maxLength: 25,
      },
    )
    const hour = 3600
    const error = fc.integer({ min: -hour, max: hour })
    fc.assert(
      fc.property(moves, error, error, fc.nat(90), (steps, first, second, delay) => {
        const errors = [0, first, second]
        const facts: Fact[] = []
        const received = new Map<string, string>()
        let now = Date.UTC(2026, 0, 12, 8)
        for (const [index, { who, gap, names }] of steps.entries()) {
          now += gap * 1000
          const device = devices[who]?.device.device ?? ''
          // A device can only name what it has seen: here, the fact just before.
          const named = names ? facts.at(-1)?.id : undefined
          const id = `00000000-0000-4000-8000-${String(index).padStart(12, '0')}`
          facts.push({
            v: 1,
            id,
            job: 'test-job',
            device,
            seq: index + 1,
            at: new Date(now + (errors[who] ?? 0) * 1000).toISOString(),
            by: 'technician',
            kind: named === undefined ? 'note-written' : 'corrected',
            body: named === undefined ? { text: 'x' } : { fact: named, action: 'withdrawn', reason: 'r' },
            prev: null,
            sig: '',
          })
          received.set(id, new Date(now + delay * 1000).toISOString())
        }
        const reference = devices[0]?.device.device ?? ''
        for (const { device, atLeast, atMost } of checkClocks(facts, { received, reference }).devices) {
          const truth = (errors[devices.findIndex((one) => one.device.device === device)] ?? 0) * 1000
          expect(atLeast ?? truth).toBeLessThanOrEqual(truth)
          expect(atMost ?? truth).toBeGreaterThanOrEqual(truth)
        }
      }),
      { numRuns: 200 },
    )
  })

  it('find contradictions from facts alone, so that a job shows them without a server', async () => {
    const a = await TestDevice.create()
    await a.write('note-written', { text: 'one' }, { at: at(60) })
    await a.write('note-written', { text: 'two' }, { at: at(10) })
    expect(contradictions([...a.facts].reverse()).map((one) => one.code)).toEqual(['before-its-predecessor'])
  })
})
