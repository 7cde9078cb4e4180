import { useEffect, useState } from 'react'
import { keepStrip } from '../beside.ts'
import { blobAnywhere } from '../kept-blob.ts'
import { type OpenLog, openLog } from '../open-log.ts'

/** Where opening a recording's messages stands. */
export type Opened =
  | { readonly at: 'fetching' }
  | { readonly at: 'reading'; readonly bytes: number; readonly of: number; readonly messages: number }
  | { readonly at: 'open'; readonly log: OpenLog }
  /** Neither this device nor the server, as far as it can be reached, has the messages. */
  | { readonly at: 'absent' }
  | { readonly at: 'failed'; readonly error: unknown }

/** The kept messages of a recording, by the hash the record knows them by. The worker ends with the page part. */
export function useLog(sha256: string): Opened {
  const [opened, setOpened] = useState<Opened>({ at: 'fetching' })
  useEffect(() => {
    let left = false
    let close: () => void = () => undefined
    const show = (next: Opened) => {
      if (!left) setOpened(next)
    }
    const open = async () => {
      const blob = await blobAnywhere(sha256)
      if (left) return
      if (blob === null) {
        show({ at: 'absent' })
        return
      }
      const opening = openLog(blob, sha256, (bytes, messages) =>
        show({ at: 'reading', bytes, of: blob.size, messages }),
      )
      close = opening.close
      const log = await opening.log
      show({ at: 'open', log })
      await keepStrip(sha256, log.strip).catch(() => undefined)
    }
    setOpened({ at: 'fetching' })
    open().catch((error: unknown) => show({ at: 'failed', error }))
    return () => {
      left = true
      close()
    }
  }, [sha256])
  return opened
}
