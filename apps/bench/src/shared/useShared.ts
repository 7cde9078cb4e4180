import { useEffect, useState } from 'react'
import { type SharedItem, sharedItems, watchShared } from './store.ts'

/** What was shared and waits; null while it is first read. */
export function useShared(): readonly SharedItem[] | null {
  const [items, setItems] = useState<readonly SharedItem[] | null>(null)
  useEffect(() => {
    let live = true
    const read = () =>
      sharedItems().then(
        (found) => live && setItems(found),
        () => live && setItems([]),
      )
    void read()
    const stop = watchShared(() => void read())
    return () => {
      live = false
      stop()
    }
  }, [])
  return items
}

/** The first report that a person said is for this job. */
export function useSharedFor(job: string): SharedItem | null {
  return useShared()?.find((item) => item.job === job) ?? null
}
