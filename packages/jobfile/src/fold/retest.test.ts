import { describe, expect, it } from 'vitest'
import { type SceneFact, vanAfterSession, vanUntilSession } from '../demo/index.ts'
import type { BodyInput, Kind } from '../facts/index.ts'
import { playScene } from '../testing/scene.ts'
import { foldJob, type JobState } from './index.ts'

function scene<K extends Kind>(minute: number, kind: K, body: BodyInput<K>): SceneFact {
  return { minute, kind, body } as unknown as SceneFact
}

const fold = async (scenes: readonly SceneFact[]) => foldJob('test-job', (await playScene(scenes)).facts)
const wanted = (state: JobState) =>
  state.tumblers
    .flatMap((tumbler) => tumbler.needs)
    .filter((need) => need.code === 'retest-after-break')
    .map((need) => need.params.key)
const started = (minute: number, key: string) =>
  scene(minute, 'function-tested', { key, function: 'start', phase: 'after', outcome: 'works' })

// What an interruption left "must say which was observed, by testing every key" (practice notes 1.2.7).
const broken = [...vanUntilSession(), scene(59, 'broke-off', { why: 'supply', after: 'A', step: 'A' })]

describe('TUM-05 tests after a break-off', () => {
  it('wants no key tried again where no session broke off', async () => {
    expect((await fold([...vanUntilSession(), ...vanAfterSession()])).retest).toEqual([])
  })

  it('wants every key on the bench tried, and each leaves when it was', async () => {
    expect(wanted(await fold(broken))).toEqual(['A', 'B', 'C', 'D', 'E'])
    expect(wanted(await fold([...broken, started(60, 'A'), started(60.5, 'C')]))).toEqual(['B', 'D', 'E'])
  })

  it('forgets starts and buttons tried before the list was touched again, but no blade', async () => {
    const whole = [...vanUntilSession(), ...vanAfterSession()]
    const late = scene(80, 'broke-off', { why: 'link', after: 'E' })
    const state = await fold([...whole, late])
    const row = state.grid.rows.find((one) => one.key === 'A')?.after ?? []
    const answer = (name: string) => row.find((cell) => cell.function === name)?.outcome
    expect([answer('start'), answer('lock'), answer('blade-door')]).toEqual(['open', 'open', 'works'])
    const reopened = [...broken, started(60, 'A'), scene(61, 'session-opened', { rehearsed: true })]
    expect(wanted(await fold(reopened))).toContain('A')
  })

  it('knows when it broke off and which steps were noted since', async () => {
    const step = scene(60, 'step-done', { step: 'Wait', outcome: 'done' })
    const { teaching } = await fold([...broken, step])
    expect(teaching.brokeAt).toBe('2026-01-12T08:59:00.000Z')
    expect(teaching.stepsSince.map((one) => [one.step, one.at])).toEqual([
      ['Wait', '2026-01-12T09:00:00.000Z'],
    ])
  })
})
