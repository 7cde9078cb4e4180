import { useEffect, useState } from 'react'
import { onChange } from '../sync/changes.ts'
import { unsentByJob } from '../sync/read.ts'

const none: ReadonlyMap<string, number> = new Map()

/** How many facts of each job are saved on this device and not sent yet; follows what is kept and sent. */
export function useUnsent(): ReadonlyMap<string, number> {
  const [unsent, setUnsent] = useState(none)
  useEffect(() => {
    let live = true
    const read = () => {
      void unsentByJob().then((counts) => {
        if (live) setUnsent(counts)
      })
    }
    read()
    const stop = onChange((change) => {
      if (change.what !== 'jobs') read()
    })
    return () => {
      live = false
      stop()
    }
  }, [])
  return unsent
}
