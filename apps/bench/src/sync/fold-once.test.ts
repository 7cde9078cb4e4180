import type { Fact } from '@shearline/jobfile'
import { describe, expect, it } from 'vitest'
import { foldOnce } from './fold-once.ts'

const note = (seq: number, text = `note ${seq}`): Fact => ({
  v: 1,
  id: `fact-${seq}`,
  job: 'job-1',
  device: 'device-1',
  seq,
  at: `2026-01-05T08:0${seq}:00.000Z`,
  by: 'technician',
  kind: 'note-written',
  body: { text },
  prev: null,
  sig: `sig-${seq}`,
})

describe('a job folded for several who want it', () => {
  it('is folded once for two reads that say the same', () => {
    const state = foldOnce('job-1', [note(1), note(2)])
    expect(state.notes.map(({ text }) => text)).toEqual(['note 1', 'note 2'])
    expect(foldOnce('job-1', [note(1), note(2)])).toBe(state)
  })

  it('is folded anew with a new fact', () => {
    foldOnce('job-1', [note(1)])
    expect(foldOnce('job-1', [note(1), note(2)]).notes).toHaveLength(2)
  })

  it('is folded anew when what a fact says was changed in the store', () => {
    foldOnce('job-1', [note(1)])
    expect(foldOnce('job-1', [note(1, 'something else')]).notes[0]?.text).toBe('something else')
  })

  it('is folded anew when its chain turned out to be broken', () => {
    expect(foldOnce('job-1', [note(1)], false).chainBroken).toBe(false)
    expect(foldOnce('job-1', [note(1)], true).chainBroken).toBe(true)
  })

  it('is not taken for another job', () => {
    const one = foldOnce('job-1', [note(1)])
    const other = foldOnce('job-2', [note(1)])
    expect(other).not.toBe(one)
    expect(other.notes).toEqual([])
  })
})
