import { RULE_ARCHETYPES } from '@shearline/keywork'
import { describe, expect, it } from 'vitest'
import { codes } from './index.ts'

describe('words for teaching rules', () => {
  it('has a name and a sentence about absent keys for every behaviour of the catalogue, and no other', () => {
    const known = RULE_ARCHETYPES.map((each) => each.code).sort()
    for (const family of ['archetype.', 'archetype-absent.'])
      expect(
        codes
          .filter((code) => code.startsWith(family))
          .map((code) => code.slice(family.length))
          .sort(),
      ).toEqual(known)
  })
})
