import { useEffect, useRef, useState } from 'react'
import { askPower, type PowerAsk, type PowerTold } from './work.ts'

/** An answer and whether a newer question is still open. */
export interface Computed<T> {
  readonly told: T | null
  readonly busy: boolean
}

/** Steppers are tapped in bursts. */
const PAUSE_MS = 120

/**
 * The engine's answer to a question, computed beside the page. The earlier answer stays while a newer one is computed;
 * only the latest question waits, so that a slow device never falls behind a meter. Null asks nothing.
 */
export function usePower<A extends PowerAsk>(ask: A | null): Computed<PowerTold[A['what']]> {
  const name = ask === null ? '' : JSON.stringify(ask)
  const wanted = useRef(name)
  const running = useRef(false)
  const [answer, setAnswer] = useState<{
    readonly name: string
    readonly told: PowerTold[A['what']]
  } | null>(null)
  useEffect(() => {
    wanted.current = name
    if (name === '') return
    const go = async () => {
      if (running.current) return
      running.current = true
      for (let asked = ''; wanted.current !== '' && wanted.current !== asked; ) {
        asked = wanted.current
        try {
          const told = await askPower(JSON.parse(asked) as A)
          setAnswer({ name: asked, told })
        } catch {
          // Without a worker there is no answer; the page says that it is computing.
          break
        }
      }
      running.current = false
    }
    const timer = setTimeout(() => void go(), PAUSE_MS)
    return () => clearTimeout(timer)
  }, [name])
  useEffect(
    () => () => {
      wanted.current = ''
    },
    [],
  )
  return { told: name === '' ? null : (answer?.told ?? null), busy: name !== (answer?.name ?? '') }
}
