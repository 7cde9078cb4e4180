import { beforeEach, describe, expect, it, vi } from 'vitest'
import { emptyParty, keepSeller, keptSeller, partyOf } from './seller.ts'

const kept = new Map<string, string>()
beforeEach(() => {
  kept.clear()
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => kept.set(key, text),
  })
})

describe('the seller kept on this device', () => {
  it('comes back as it was typed', () => {
    const seller = { ...emptyParty, name: 'Harbour Keys', country: 'PT' }
    keepSeller(seller)
    expect(keptSeller()).toEqual(seller)
  })

  it('is empty when nothing or nonsense is kept', () => {
    expect(keptSeller()).toEqual(emptyParty)
    for (const nonsense of ['{', '7', 'null', '{"name":3,"other":"x"}']) {
      kept.set('shearline-seller', nonsense)
      expect(keptSeller()).toEqual(emptyParty)
    }
  })

  it('goes into a fact without what was left empty', () => {
    expect(partyOf({ ...emptyParty, name: ' Harbour Keys ', country: 'PT', vatId: ' ' })).toEqual({
      name: 'Harbour Keys',
      country: 'PT',
    })
  })
})
