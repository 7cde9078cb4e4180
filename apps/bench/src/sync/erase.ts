/** @module Follows deletions that are proven on record: what the firm deleted does not live on in this browser. */
import { bodyHash, erasedFact, type Fact, readBody, signedText, Verifier } from '@shearline/jobfile'
import { database, settled, strict } from './database.ts'

const verifier = new Verifier(crypto.subtle)

/**
 * Erases here what rightly signed `deletion-proven` facts of a job name: contents of facts, blobs, documents. A proof
 * whose signature does not hold, or whose hash is not that of what is here, erases nothing. True when something went.
 */
export async function followDeletions(facts: readonly Fact[]): Promise<boolean> {
  const db = await database()
  const self = await db.get('self', 'self')
  const items = []
  for (const fact of facts) {
    if (fact.kind !== 'deletion-proven') continue
    const key = fact.device === self?.device ? self : await db.get('devices', fact.device)
    const text = new Uint8Array(new TextEncoder().encode(signedText(fact)))
    if (key === undefined || !(await verifier.verify(key.publicKey, fact.sig, text))) continue
    const body = readBody('deletion-proven', fact.body)
    if (body.ok) items.push(...body.body.items)
  }
  if (items.length === 0) return false
  const tx = db.transaction(['facts', 'blobs', 'documents'], 'readwrite', strict)
  const asked: Promise<unknown>[] = []
  for (const { fact: id, what, sha256 } of items) {
    const fact = facts.find((one) => one.id === id)
    if (fact === undefined) continue
    if (what === 'body' && !('erased' in fact.body) && bodyHash(fact.body) === sha256)
      asked.push(tx.objectStore('facts').put(erasedFact(fact)))
    if (what !== 'body') asked.push(tx.objectStore('blobs').delete(sha256))
    if (what === 'document') asked.push(tx.objectStore('documents').delete(id))
  }
  await settled(tx, asked)
  return asked.length > 0
}
