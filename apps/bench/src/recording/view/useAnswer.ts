import { startTransition, useEffect, useRef, useState } from 'react'
import type { LogAnswer, LogQuestion } from '../log-messages.ts'
import type { OpenLog } from '../open-log.ts'

/**
 * What a log answers to the present question. While a finger moves, questions come faster than answers: only the newest
 * is asked next, and the last answer stays until then.
 */
export function useAnswer(log: OpenLog, question: LogQuestion): LogAnswer | null {
  const [answer, setAnswer] = useState<LogAnswer | null>(null)
  const wanted = useRef(question)
  const busy = useRef(false)
  const { from, to, filter, words, slices } = question
  useEffect(() => {
    wanted.current = { from, to, filter, words, slices }
    if (busy.current) return
    busy.current = true
    const askNewest = async () => {
      let asked: LogQuestion | undefined
      while (asked !== wanted.current) {
        asked = wanted.current
        const came = await log.ask(asked)
        startTransition(() => setAnswer(came))
      }
    }
    // The worker answers every question; only its end leaves one open, and then nobody waits any more.
    void askNewest().finally(() => {
      busy.current = false
    })
  }, [log, from, to, filter, words, slices])
  return answer
}
