import type { Fact } from '@shearline/jobfile'
import { describe, expect, it } from 'vitest'
import type { JobFacts } from '../sync/read.ts'
import { sharing } from './sharing.ts'

const fact = (seq: number, body: Fact['body'] = { text: `note ${seq}` }): Fact => ({
  v: 1,
  id: `fact-${seq}`,
  job: 'job-1',
  device: 'device-1',
  seq,
  at: `2026-01-05T08:0${seq}:00.000Z`,
  by: 'technician',
  kind: 'note-written',
  body,
  prev: null,
  sig: `sig-${seq}`,
})
const read = (facts: readonly Fact[], unsent: readonly string[] = []): JobFacts => ({
  facts,
  unsent: new Set(unsent),
  devices: [{ device: 'device-1', name: 'Tablet', publicKey: 'key' }],
})

describe('two reads of a job', () => {
  it('that say the same are one and the same object', () => {
    const before = read([fact(1), fact(2)], ['fact-2'])
    expect(sharing(before, read([fact(1), fact(2)], ['fact-2']))).toBe(before)
  })

  it('keep the facts when only sending went on', () => {
    const before = read([fact(1), fact(2)], ['fact-2'])
    const shared = sharing(before, read([fact(1), fact(2)]))
    expect(shared.facts).toBe(before.facts)
    expect(shared.devices).toBe(before.devices)
    expect([...shared.unsent]).toEqual([])
  })

  it('take over a new fact', () => {
    const before = read([fact(1)])
    expect(sharing(before, read([fact(1), fact(2)])).facts.map(({ id }) => id)).toEqual(['fact-1', 'fact-2'])
  })

  it('take over that the content of a fact was erased', () => {
    const before = read([fact(1)])
    const erased = read([fact(1, { erased: 'hash' })])
    expect(sharing(before, erased).facts).toBe(erased.facts)
  })

  it('take over a fact whose signature is another one', () => {
    const before = read([fact(1)])
    const other = read([{ ...fact(1), sig: 'forged' }])
    expect(sharing(before, other).facts).toBe(other.facts)
  })

  it('take over a fact whose content was changed in the store', () => {
    const before = read([fact(1)])
    const other = read([fact(1, { text: 'something else' })])
    expect(sharing(before, other).facts).toBe(other.facts)
  })
})
