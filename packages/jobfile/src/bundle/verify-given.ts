/** @module Proves what somebody was given, whichever it is by its content. The command and the verify page use this. */
import type { Verifier } from '../chain/index.ts'
import { type HandoverCheck, verifyFile } from '../handover/index.ts'
import type { BundleCheck } from './findings.ts'
import { type ByteAccess, looksLikeZip } from './unzip.ts'
import { verifyBundle } from './verify.ts'

/** What was given, by its content, and what verification says of it. */
export type GivenCheck =
  | { readonly what: 'bundle'; readonly check: BundleCheck }
  | { readonly what: 'file'; readonly check: HandoverCheck }

/**
 * Proves a bundle, a handover document or a bare record. A bundle is read in pieces; a document or record whole.
 * Never throws on malformed bytes; needs no network.
 */
export async function verifyGiven(access: ByteAccess, verifier: Verifier): Promise<GivenCheck> {
  const head = await access.read(0, Math.min(access.size, 4))
  if (looksLikeZip(head)) return { what: 'bundle', check: await verifyBundle(access, verifier) }
  return { what: 'file', check: await verifyFile(await access.read(0, access.size), verifier) }
}
