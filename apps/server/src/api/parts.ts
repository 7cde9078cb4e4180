import type { Store } from '@shearline/store'
import type { Board } from '../board/index.ts'
import type { SealParts } from '../seal/index.ts'

/** What the addresses of the API work with. */
export interface ApiParts extends SealParts {
  readonly store: Store
  readonly board: Board
  readonly version: string
  /** Largest blob that is accepted, bytes. */
  readonly maxBlobBytes: number
}
