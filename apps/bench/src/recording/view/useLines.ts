import type { MessageLine } from '@shearline/bus'
import { useEffect, useRef, useState } from 'react'
import type { OpenLog } from '../open-log.ts'

/** Lines kept on the page; beyond these the ones out of sight are let go. */
const mostLines = 2000

/** The lines of the messages in sight, as far as they have come; the rest follows. */
export function useLines(
  log: OpenLog,
  inSight: readonly number[],
): (message: number) => MessageLine | undefined {
  const lines = useRef(new Map<number, MessageLine>())
  const wanted = useRef(inSight)
  const busy = useRef(false)
  const [, setCame] = useState(0)
  useEffect(() => {
    wanted.current = inSight
    if (busy.current) return
    busy.current = true
    const fetchNewest = async () => {
      for (;;) {
        const missing = wanted.current.filter((message) => !lines.current.has(message))
        if (missing.length === 0) return
        const came = await log.lines(missing)
        if (lines.current.size > mostLines) lines.current.clear()
        came.forEach((line, index) => {
          const message = missing[index]
          if (message !== undefined) lines.current.set(message, line)
        })
        setCame((count) => count + 1)
      }
    }
    void fetchNewest().finally(() => {
      busy.current = false
    })
  })
  return (message) => lines.current.get(message)
}
