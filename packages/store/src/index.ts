/** @module Where the record is kept: facts, devices, blobs and documents of one data directory. */
export * from './contract/index.ts'
export { type OpenOptions, openStore } from './open.ts'
