/** @module A job as one file that a stranger can check with openssl and sha256sum. */
export type { BundleCheck, BundleFinding, BundleFindingCode } from './findings.ts'
export { blobsNamed } from './layout.ts'
export { accessTo, type ByteAccess, looksLikeZip } from './unzip.ts'
export { verifyBundle } from './verify.ts'
export { type GivenCheck, verifyGiven } from './verify-given.ts'
export { type BundleBlob, type BundleInput, BundleRefused, writeBundle } from './write.ts'
