import { useEffect, useState } from 'react'
import { keepStrip, keptStrip } from './beside.ts'
import { blobHere } from './kept-blob.ts'
import { openLog } from './open-log.ts'
import type { Strip } from './strip.ts'

/**
 * The strip of a recording: as it was kept beside the record, else made anew from the messages kept on this device.
 * Null as long as neither is there; messages that only the server holds are not fetched for a small picture.
 */
export function useStrip(sha256: string): Strip | null {
  const [strip, setStrip] = useState<Strip | null>(null)
  useEffect(() => {
    let left = false
    let close: () => void = () => undefined
    const find = async () => {
      const kept = await keptStrip(sha256)
      if (kept !== undefined) return kept
      const blob = await blobHere(sha256)
      if (blob === null || left) return null
      const opening = openLog(blob, sha256)
      close = opening.close
      const made = (await opening.log).strip
      opening.close()
      await keepStrip(sha256, made)
      return made
    }
    // Without a strip the events on record are still drawn.
    find().then(
      (found) => {
        if (!left) setStrip(found)
      },
      () => undefined,
    )
    return () => {
      left = true
      close()
    }
  }, [sha256])
  return strip
}
