import { createContext, useContext, useEffect, useState } from 'react'

const Ahead = createContext(0)

/** How far the clock of this part of the page runs ahead of the real one, milliseconds: practice lets time pass. */
export const ClockAhead = Ahead.Provider

/** The present instant, milliseconds since 1970, moving on each second. Clocks count from instants on record. */
export function useNow(): number {
  const ahead = useContext(Ahead)
  const [now, setNow] = useState(() => Date.now())
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), 1000)
    return () => clearInterval(timer)
  }, [])
  return now + ahead
}
