/**
 * @module The handover document: made from a signed record, verifiable by anyone, offline, years later.
 */
export { type ComposedSeal, composeSeal, type SealBasis } from './compose-seal.ts'
export { type HandoverBasis, type HandoverText, handoverText, printedTexts } from './document/index.ts'
export { type HandoverInput, makeHandover } from './make.ts'
export type { Fonts, Pictures } from './page/index.ts'
export { picturesWanted } from './pictures-wanted.ts'
export { HandoverRefused } from './refused.ts'
export {
  type Coverage,
  type CoveredPart,
  type HandoverCheck,
  type HandoverFinding,
  type HandoverFindingCode,
  verifyFile,
  verifyHandover,
} from './verify/index.ts'
