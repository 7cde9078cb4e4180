import { describe, expect, it } from 'vitest'
import type { Draft } from '../sync/write.ts'
import { actOf } from './acts.ts'

const test = (outcome: 'works' | 'fails' | 'not-tested', name: 'start' | 'lock' | 'blade-door' = 'start') =>
  actOf({ kind: 'function-tested', body: { key: 'A', function: name, phase: 'after', outcome } })
const step = (code: string, outcome: 'done' | 'failed' = 'done', key?: string): Draft => ({
  kind: 'step-done',
  body: { step: 'x', of: { code, ...(key === undefined ? {} : { key }) }, outcome },
})

describe('noting a fact at the practice car', () => {
  it('tries the key, and agrees only with what the car does', () => {
    const said = (code: string) => ({ code, values: {} })
    expect(test('works')?.action).toEqual({ do: 'start', key: 'A' })
    expect(test('works')?.agrees(said('start-started'))).toBe(true)
    expect(test('works')?.agrees(said('start-key-not-accepted'))).toBe(false)
    expect(test('fails')?.agrees(said('start-key-not-accepted'))).toBe(true)
    expect(test('fails', 'lock')?.agrees(said('button-works'))).toBe(false)
  })

  it('does nothing at the car for what is not tried there', () => {
    expect([test('not-tested'), test('works', 'blade-door')]).toEqual([null, null])
    expect(actOf(step('recovery.wait'))).toBeNull()
    expect(actOf(step('cause.wrong-code', 'failed'))).toBeNull()
    expect(actOf(step('recovery.restore', 'failed'))).toBeNull()
  })

  it('does the steps of a way back by their code, in whatever language they are noted', () => {
    expect(actOf(step('recovery.restore'))?.action).toEqual({ do: 'restore' })
    expect(actOf(step('recovery.fetch', 'done', 'B'))?.action).toEqual({ do: 'fetch', key: 'B' })
    expect(actOf(step('recovery.enter-code'))?.action).toEqual({ do: 'code' })
  })
})
