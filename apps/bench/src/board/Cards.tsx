import type { JobSummary } from '@shearline/jobfile'
import { startTransition, useEffect, useRef, useState } from 'react'
import { t } from '../words/index.ts'
import css from './board.module.css'
import { JobCard } from './JobCard.tsx'

/** Cards drawn at first, and how many more each time their end comes near. */
const drawn = 24

/** Jobs as cards. Hundreds of them are drawn as they are scrolled to; the button does the same by keyboard. */
export function Cards({
  jobs,
  unsent,
}: {
  readonly jobs: readonly JobSummary[]
  readonly unsent: ReadonlyMap<string, number>
}) {
  const [shown, setShown] = useState(drawn)
  const end = useRef<HTMLButtonElement>(null)
  const left = jobs.length - shown
  // biome-ignore lint/correctness/useExhaustiveDependencies: watched anew when the end has moved on
  useEffect(() => {
    if (end.current === null) return
    const watcher = new IntersectionObserver(
      (entries) => {
        if (entries.some((entry) => entry.isIntersecting))
          startTransition(() => setShown((count) => count + drawn))
      },
      { rootMargin: '600px' },
    )
    watcher.observe(end.current)
    return () => watcher.disconnect()
  }, [shown, left > 0])
  if (jobs.length === 0) return null
  return (
    <>
      <ul className={css.cards}>
        {jobs.slice(0, shown).map((job) => (
          <li key={job.job}>
            <JobCard summary={job} unsent={unsent.get(job.job) ?? 0} />
          </li>
        ))}
      </ul>
      {left > 0 && (
        <button
          ref={end}
          type="button"
          className={css.more}
          onClick={() => startTransition(() => setShown((count) => count + drawn))}
        >
          {t('board.more', { count: left })}
        </button>
      )}
    </>
  )
}
