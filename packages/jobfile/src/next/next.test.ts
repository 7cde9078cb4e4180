import { describe, expect, it } from 'vitest'
import type { chapterNames, Tumbler } from '../fold/state.ts'
import { nextStep } from './index.ts'

const none = { handedOver: false, blankOpen: false }
const low = (
  ...needs: readonly [code: Tumbler['needs'][number]['code'], chapter: (typeof chapterNames)[number]][]
): Tumbler => ({
  name: 'record',
  state: 'low',
  done: 0,
  of: needs.length,
  needs: needs.map(([code, chapter]) => ({ code, chapter, params: {}, conflict: false })),
})

describe('the next step', () => {
  it('NXT-02 comes from the earliest chapter that wants something, whatever the tumbler', () => {
    const step = nextStep([low(['price-not-agreed', 'handover']), low(['vin-missing', 'arrival'])], none)
    expect(step).toMatchObject({ code: 'vin-missing', chapter: 'arrival' })
  })

  it('NXT-04 stays with an open session, and only with an open one', () => {
    const earlier = low(['vin-missing', 'arrival'])
    const teaching = low(['key-not-taught', 'teach'], ['session-not-closed', 'teach'])
    expect(nextStep([earlier, teaching], none).code).toBe('key-not-taught')
    expect(nextStep([earlier, low(['session-not-closed', 'teach'])], none).code).toBe('session-not-closed')
    const before = low(
      ['session-not-opened', 'teach'],
      ['key-not-taught', 'teach'],
      ['session-not-closed', 'teach'],
    )
    expect(nextStep([earlier, before], none).code).toBe('vin-missing')
  })

  it('NXT-03 seals last, then hands over, then asks what became of the blank, then has nothing left', () => {
    expect(nextStep([low(['not-sealed', 'handover'])], none).code).toBe('seal-the-document')
    expect(nextStep([], none).code).toBe('hand-over')
    expect(nextStep([], { handedOver: true, blankOpen: true })).toMatchObject({
      code: 'note-the-blank',
      chapter: 'close',
    })
    expect(nextStep([], { handedOver: true, blankOpen: false }).code).toBe('nothing-left')
  })
})
