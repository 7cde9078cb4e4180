import { describe, expect, it } from 'vitest'
import { type Action, Attempt, exercises } from './index.ts'

const exercise = (id: string): ReturnType<typeof exercises>[number] => {
  const found = exercises().find((each) => each.id === id)
  if (found === undefined) throw new Error(`no exercise ${id}`)
  return found
}

function play(id: string, actions: readonly Action[]): { codes: string[]; points: number; attempt: Attempt } {
  const attempt = new Attempt(exercise(id))
  const codes = actions.flatMap((action) => {
    const { code, incident } = attempt.act(action)
    return incident === undefined ? [code] : [code, incident.code]
  })
  return { codes, points: attempt.score().points, attempt }
}

const prove = (...keys: string[]): Action[] =>
  keys.flatMap((key): Action[] => [
    { do: 'start', key },
    { do: 'button', key },
  ])
const show = (key: string): Action => ({ do: 'show', key })

describe('exercises', () => {
  it('give full marks to who scans, teaches, proves every key and scans again', () => {
    const { points, codes } = play('one-more-key', [
      { do: 'scan' },
      { do: 'open' },
      show('N'),
      { do: 'close' },
      ...prove('A', 'B', 'N'),
      { do: 'scan' },
    ])
    expect(codes.slice(0, 4)).toEqual(['scanned', 'session-opened', 'show-taken', 'session-closed'])
    expect(points).toBe(100)
  })

  it('take points for the key that was left at home and no longer starts the car', () => {
    const { attempt } = play('forgotten-at-home', [
      { do: 'scan' },
      { do: 'open' },
      show('A'),
      show('N'),
      { do: 'close' },
      ...prove('A', 'N'),
      { do: 'scan' },
    ])
    expect(attempt.score().marks).toEqual([{ code: 'key-does-not-start', points: -20, values: { key: 'B' } }])
    const fetched = play('forgotten-at-home', [
      { do: 'scan' },
      { do: 'fetch', key: 'B' },
      { do: 'open' },
      show('A'),
      show('B'),
      show('N'),
      { do: 'close' },
      ...prove('A', 'B', 'N'),
      { do: 'scan' },
    ])
    expect(fetched.points).toBe(100)
  })

  it('let the session die after the second key, and let it be mended by teaching again', () => {
    const cut: Action[] = [
      { do: 'scan' },
      { do: 'supply', amperes: 30 },
      { do: 'open' },
      show('A'),
      show('B'),
    ]
    const left = play('dies-after-second-key', cut)
    expect(left.codes.at(-1)).toBe('incident-supply-lost')
    expect(left.points).toBeLessThan(70)
    const mended = play('dies-after-second-key', [
      ...cut,
      { do: 'open' },
      show('A'),
      show('B'),
      show('N'),
      { do: 'close' },
      ...prove('A', 'B', 'N'),
      { do: 'scan' },
    ])
    expect(mended.points).toBe(100)
  })

  it('leave the car stranded when the list was erased and the link went, until the backup is put back', () => {
    const cut: Action[] = [{ do: 'scan' }, { do: 'supply', amperes: 30 }, { do: 'open' }]
    const left = play('erased-and-cut', cut)
    expect(left.attempt.score().marks.map((mark) => mark.code)).toContain('stranded')
    const mended = play('erased-and-cut', [...cut, { do: 'restore' }, { do: 'cell', key: 'B' }])
    expect(mended.codes.at(-2)).toBe('restored')
    expect(mended.attempt.score().marks.map((mark) => mark.code)).not.toContain('stranded')
  })

  it('do not open with a clone as the second key', () => {
    expect(play('clone-on-the-ring', [{ do: 'open' }]).codes).toEqual(['session-refused'])
    expect(play('clone-on-the-ring', [{ do: 'fetch', key: 'B' }, { do: 'open' }]).codes.at(-1)).toBe(
      'session-opened',
    )
  })

  it('drop the oldest entry of a full list without a word', () => {
    const { attempt } = play('list-is-full', [{ do: 'open' }, show('N'), { do: 'close' }])
    expect(attempt.score().startsAtEnd).toEqual(['B', 'N'])
  })

  it('take no code for twenty minutes after a wrong one, and one code for one session', () => {
    const wrong: Action[] = [{ do: 'scan' }, { do: 'open' }, { do: 'code' }, { do: 'code' }]
    expect(play('misread-code', wrong).codes.slice(1)).toEqual([
      'session-wants-code',
      'code-refused',
      'code-wait',
    ])
    const { codes } = play('misread-code', [
      ...wrong,
      { do: 'wait', minutes: 20 },
      { do: 'code' },
      { do: 'open' },
      { do: 'stop' },
      { do: 'open' },
    ])
    expect(codes.slice(5)).toEqual(['code-accepted', 'session-opened', 'stopped', 'session-wants-code'])
  })

  it('name an unknown key instead of failing', () => {
    expect(play('one-more-key', [show('Z')]).codes).toEqual(['no-such-key'])
  })
})
