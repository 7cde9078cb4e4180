import type { MessageLine } from '@shearline/bus'
import { useEffect, useRef, useState } from 'react'
import type { OpenLog } from '../open-log.ts'

/** The lines of the messages in sight, as far as they have come; the rest follows. */
export function useLines(
  log: OpenLog,
  inSight: readonly number[],
): (message: number) => MessageLine | undefined {
  const wanted = useRef(inSight)
  const busy = useRef(false)
  const [, setCame] = useState(0)
  useEffect(() => {
    wanted.current = inSight
    if (busy.current) return
    busy.current = true
    const fetchNewest = async () => {
      for (;;) {
        const missing = wanted.current.filter((message) => log.known(message) === undefined)
        if (missing.length === 0) return
        await log.lines(missing)
        setCame((count) => count + 1)
      }
    }
    void fetchNewest().finally(() => {
      busy.current = false
    })
  })
  return log.known
}
