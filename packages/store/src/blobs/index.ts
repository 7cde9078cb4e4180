/** @module The bytes of blobs by their SHA-256: as files beside the database, or in pieces inside it. */
export * from './files.ts'
export type * from './place.ts'
export * from './rows.ts'
