/** @module Vehicle secrets: sealed with age to the firm's recipients before they touch a disk or the network. */
export { SecretDigest } from './digest.ts'
export * from './errors.ts'
export * from './facts.ts'
export {
  identityText,
  newIdentity,
  readIdentities,
  type VaultIdentity,
  wrapIdentity,
} from './identity.ts'
export { type Opened, type OpenWith, openSecret } from './open.ts'
export { passphraseLeast, readPassphrase } from './passphrase.ts'
export { compareReads, type ReadComparison, type ReadFindingCode, type ReadTaken } from './reads.ts'
export {
  addRecipient,
  readRecipient,
  readRecipients,
  recipientsSetting,
  recipientsText,
  type VaultRecipient,
} from './recipients.ts'
export { type Sealing, type SealTo, sealSecret } from './seal.ts'
export { type SecretClass, type SecretHead, secretClasses, secretHead } from './secret.ts'
export { type ByteSource, streamOf } from './streams.ts'
