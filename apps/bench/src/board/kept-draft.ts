import { useEffect, useState } from 'react'

const place = 'shearline-new-job'

/**
 * What is typed for a new job, kept over a reload: a phone throws away a page that waits behind another one, and the
 * customer is still on the line. Who leaves the form starts the next one empty. `empty` says which fields there are.
 */
export function useKeptDraft<D extends Readonly<Record<string, string>>>(
  empty: D,
): readonly [draft: D, change: (part: Partial<D>) => void] {
  const [draft, setDraft] = useState<D>(() => keptOver(empty))
  useEffect(() => {
    sessionStorage.setItem(place, JSON.stringify(draft))
  }, [draft])
  useEffect(() => () => sessionStorage.removeItem(place), [])
  return [draft, (part) => setDraft((before) => ({ ...before, ...part }))]
}

/** The kept draft on top of the empty one; what cannot be read, or is no field, is left out. */
function keptOver<D extends Readonly<Record<string, string>>>(empty: D): D {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(place) ?? '{}')
    if (typeof kept !== 'object' || kept === null) return empty
    const own = Object.entries(kept).filter(
      ([name, value]) => Object.hasOwn(empty, name) && typeof value === 'string',
    )
    return { ...empty, ...Object.fromEntries(own) }
  } catch {
    return empty
  }
}
