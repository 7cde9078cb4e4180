/** @module Where the record is kept: facts, devices, blobs and documents of one data directory. */
export * from './backup/index.ts'
export * from './contract/index.ts'
export * from './doctor/index.ts'
export { type OpenOptions, openStore } from './open.ts'
export {
  approve,
  enrolDevice,
  type Revocation,
  registerOf,
  revoke,
  standingsOf,
} from './register/index.ts'
export { rotateKey } from './register/rotate.ts'
export { documentFonts } from './sealing/fonts.ts'
export {
  chainBroken,
  recordOf,
  type Sealed,
  type SealOutcome,
  type SealRefusal,
  type SealWish,
  sealJob,
  writersOf,
} from './sealing/index.ts'
