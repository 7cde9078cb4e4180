import { useEffect, useState } from 'react'

/** The present instant, milliseconds since 1970, moving on each second. Clocks count from instants on record. */
export function useNow(): number {
  const [now, setNow] = useState(() => Date.now())
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), 1000)
    return () => clearInterval(timer)
  }, [])
  return now
}
