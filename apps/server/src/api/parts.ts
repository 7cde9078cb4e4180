import type { Store } from '@shearline/store'
import type { Board } from '../board/index.ts'

/** What the addresses of the API work with. */
export interface ApiParts {
  readonly store: Store
  readonly board: Board
  readonly version: string
  /** The present instant, milliseconds since 1970 UTC. */
  readonly clock: () => number
  /** Largest blob that is accepted, bytes. */
  readonly maxBlobBytes: number
  /** Folder for the bytes of blobs that are still arriving. */
  readonly partsFolder: string
}
