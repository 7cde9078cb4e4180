/** @module The photos of a job as they stand on record: withdrawn ones left out, deleted ones named as deleted. */
import { type Body, bodyOf, type Fact, type JobState } from '@shearline/jobfile'

export interface PhotoOnRecord {
  readonly fact: Fact
  readonly body: Body<'photo-attached'>
  /** When its bytes were deleted under retention, or null. */
  readonly deletedAt: string | null
}

/** Photos in the order they were taken. */
export function photosOnRecord(
  facts: readonly Fact[],
  corrections: JobState['corrections'],
): readonly PhotoOnRecord[] {
  const withdrawn = new Set(
    corrections.flatMap(({ fact, stands, action }) =>
      stands === 'applied' && action === 'withdrawn' ? [fact] : [],
    ),
  )
  const deleted = deletions(facts)
  return facts.flatMap((fact) => {
    if (fact.kind !== 'photo-attached' || withdrawn.has(fact.id)) return []
    const read = bodyOf(fact, 'photo-attached')
    return read.ok ? [{ fact, body: read.body, deletedAt: deleted.get(read.body.blob) ?? null }] : []
  })
}

/** When the bytes under each hash were deleted, as proven on record. */
export function deletions(facts: readonly Fact[]): ReadonlyMap<string, string> {
  const deleted = new Map<string, string>()
  for (const fact of facts) {
    const read = fact.kind === 'deletion-proven' ? bodyOf(fact, 'deletion-proven') : null
    if (read?.ok !== true) continue
    for (const item of read.body.items) if (item.what === 'blob') deleted.set(item.sha256, fact.at)
  }
  return deleted
}
