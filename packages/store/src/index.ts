/** @module Where the record is kept: facts, devices, blobs and documents of one data directory. */
export * from './contract/index.ts'
export { type OpenOptions, openStore } from './open.ts'
export {
  chainBroken,
  type Sealed,
  type SealOutcome,
  type SealRefusal,
  type SealWish,
  sealJob,
  writersOf,
} from './sealing/index.ts'
