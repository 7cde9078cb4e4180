import type { PolicyPack } from './pack.ts'
import { europeanUnionPack } from './packs/european-union.ts'
import { neutralPack } from './packs/neutral.ts'
import { unitedKingdomPack } from './packs/united-kingdom.ts'
import { unitedStatesPack } from './packs/united-states.ts'

export { europeanUnionPack, neutralPack, unitedKingdomPack, unitedStatesPack }

/** The packs that come with the program: the neutral default first, then examples to check and change. */
export const shippedPacks: readonly PolicyPack[] = [
  neutralPack,
  europeanUnionPack,
  unitedKingdomPack,
  unitedStatesPack,
]
