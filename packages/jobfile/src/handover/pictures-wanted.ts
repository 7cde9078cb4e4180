import { Collected } from '../fold/collect.ts'
import { foldJob } from '../fold/index.ts'
import type { JobRecord } from '../record/index.ts'
import { latestEdition } from './document/index.ts'
import { photoOf } from './document/keys.ts'
import type { Pictures } from './page/index.ts'
import { jpegSize } from './page/jpeg.ts'

/** All photos of a document together, in bytes: it must still fit a message. Own choice. */
const mostBytes = 2_500_000

/**
 * The pictures a document of this record carries: photos it names, in the order of its keys, as long as there is room.
 * The others are drawn as outlines; the pages name them by their hash all the same.
 */
export function picturesCarried(record: JobRecord, atHand: Pictures): Pictures {
  const carried = new Map<string, Uint8Array>()
  let room = mostBytes
  for (const sha256 of picturesWanted(record)) {
    const bytes = atHand.get(sha256)
    if (bytes === undefined || bytes.length > room || jpegSize(bytes) === null) continue
    carried.set(sha256, bytes)
    room -= bytes.length
  }
  return carried
}

/** SHA-256 of the photos that a document of this record shows when it is given their bytes: the latest of each key. */
export function picturesWanted(record: JobRecord): readonly string[] {
  const facts = new Collected(record.facts)
  const { keys } = foldJob(record.job, record.facts)
  const found = keys.map((key) => photoOf({ facts, edition: latestEdition }, key.id))
  return [...new Set(found.filter((sha256) => sha256 !== null))]
}
